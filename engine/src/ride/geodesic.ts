import { brent } from '../numerics/brent.ts'
import { gaussLegendre } from '../numerics/gauss-legendre.ts'
import type { Metre } from '../quantities/si.ts'

export interface Ellipsoid {
  /** Half the diameter of the equator [m]. */
  readonly equator: Metre
  readonly flattening: number
}

/** NIMA TR8350.2, table 3.1. */
export const wgs84: Ellipsoid = { equator: 6_378_137, flattening: 1 / 298.257223563 }

/** Both to rounding: a short arc needs fewer nodes, and a ride is made of short ones. */
const rules = { short: gaussLegendre(4), long: gaussLegendre(12) }
const degree = Math.PI / 180

/** A geodesic on the auxiliary sphere: where it crosses the equator is σ = 0. */
interface Arc {
  sinAzimuth0: number
  from: number
  length: number
  longitude: number
}

/** Integral over an arc of a function of 1 + k²·sin²σ. */
function along({ from, length, sinAzimuth0 }: Arc, ellipsoid: Ellipsoid, of: (root: number) => number): number {
  const { flattening } = ellipsoid
  const second = (flattening * (2 - flattening)) / (1 - flattening) ** 2
  const k2 = second * (1 - sinAzimuth0) * (1 + sinAzimuth0)
  const rule = length < 0.1 ? rules.short : rules.long
  let sum = 0
  for (let index = 0; index < rule.nodes.length; index += 1) {
    const sine = Math.sin(from + (length / 2) * (1 + (rule.nodes[index] ?? 0)))
    sum += (rule.weights[index] ?? 0) * of(Math.sqrt(1 + k2 * sine * sine))
  }
  return (sum * length) / 2
}

/** What the longitude on the ellipsoid falls behind that on the sphere. */
function behind(arc: Arc, ellipsoid: Ellipsoid): number {
  const { flattening } = ellipsoid
  const inner = along(arc, ellipsoid, (root) => (2 - flattening) / (1 + (1 - flattening) * root))
  return flattening * arc.sinAzimuth0 * inner
}

function lengthOf(arc: Arc, ellipsoid: Ellipsoid): Metre {
  return ellipsoid.equator * (1 - ellipsoid.flattening) * along(arc, ellipsoid, (root) => root)
}

interface Latitude {
  sine: number
  cosine: number
}

function reduced(latitude: number, flattening: number): Latitude {
  const sine = (1 - flattening) * Math.sin(latitude * degree)
  const cosine = Math.abs(latitude) === 90 ? 0 : Math.cos(latitude * degree)
  const size = Math.hypot(sine, cosine)
  return { sine: sine / size, cosine: cosine / size }
}

/** The great circle between two latitudes a longitude apart. */
function bySphere(one: Latitude, other: Latitude, longitude: number): Arc {
  const east = other.cosine * Math.sin(longitude)
  // cosU1·sinU2 − sinU1·cosU2·cos λ without its cancellation for near points.
  const turn = Math.sin(longitude / 2) ** 2
  const north = one.cosine * other.sine - one.sine * other.cosine + 2 * one.sine * other.cosine * turn
  const sine = Math.hypot(east, north)
  const length = Math.atan2(sine, one.sine * other.sine + one.cosine * other.cosine * Math.cos(longitude))
  const sinAzimuth0 = sine === 0 ? 0 : (east / sine) * one.cosine
  return { sinAzimuth0, from: Math.atan2(one.sine * sine, north * one.cosine), length, longitude }
}

/** The geodesic that leaves latitude `one` at an azimuth and comes to latitude `other` northward. */
function byAzimuth(one: Latitude, other: Latitude, azimuth: number): Arc {
  const sine = Math.sin(azimuth)
  const cosine = Math.cos(azimuth)
  const sinAzimuth0 = sine * one.cosine
  const north1 = cosine * one.cosine
  const wider =
    one.cosine < -one.sine
      ? (other.cosine - one.cosine) * (other.cosine + one.cosine)
      : (one.sine - other.sine) * (one.sine + other.sine)
  const north2 = Math.sqrt(Math.max(0, north1 * north1 + wider))
  const from = Math.atan2(one.sine, north1)
  const upTo = Math.atan2(other.sine, north2)
  const longitude = Math.atan2(sinAzimuth0 * other.sine, north2) - Math.atan2(sinAzimuth0 * one.sine, north1)
  return { sinAzimuth0, from, length: upTo - from, longitude }
}

/**
 * Shortest distance of two places on an ellipsoid.
 *
 * s = b·∫√(1 + k²·sin²σ) dσ over the arc σ of the auxiliary sphere, k² = e′²·cos²α₀; the arc by Vincenty's iteration of
 * the longitude, nearly opposite places by a root of the longitude over the first azimuth. To about 10 nm.
 *
 * @param one    latitude and longitude [°]
 * @param other  the same; any longitudes, they count modulo 360°
 * @source T. Vincenty, Survey Review 23 (1975) 88; C. F. F. Karney, J. Geodesy 87 (2013) 43
 * @example geodesicDistance({ latitude: 0, longitude: 0 }, { latitude: 0, longitude: 1 }) // 111319.490793
 */
export function geodesicDistance(
  one: { readonly latitude: number; readonly longitude: number },
  other: { readonly latitude: number; readonly longitude: number },
  ellipsoid: Ellipsoid = wgs84,
): Metre {
  const { flattening } = ellipsoid
  const turn = Math.abs(other.longitude - one.longitude) % 360
  const wanted = Math.min(turn, 360 - turn) * degree
  const first = reduced(one.latitude, flattening)
  const second = reduced(other.latitude, flattening)
  let longitude = wanted
  for (let round = 0; round < 20; round += 1) {
    const arc = bySphere(first, second, longitude)
    const next = wanted + behind(arc, ellipsoid)
    if (next > Math.PI) break
    if (Math.abs(next - longitude) <= 1e-15 * Math.max(longitude, 1e-3)) {
      return lengthOf(bySphere(first, second, next), ellipsoid)
    }
    longitude = next
  }
  // South and further from the equator first, so that the longitude grows with the azimuth.
  const swapped = Math.abs(first.sine) < Math.abs(second.sine)
  const [far, near] = swapped ? [second, first] : [first, second]
  const flip = far.sine > 0 ? -1 : 1
  const south = { sine: -Math.abs(far.sine), cosine: far.cosine }
  const north = { sine: near.sine * flip, cosine: near.cosine }
  const missed = (azimuth: number) => {
    const arc = byAzimuth(south, north, azimuth)
    return arc.longitude - behind(arc, ellipsoid) - wanted
  }
  const azimuth = brent(missed, 0, Math.PI, 1e-16) ?? Math.PI
  return lengthOf(byAzimuth(south, north, azimuth), ellipsoid)
}
