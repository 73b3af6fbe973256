import { describe, expect, it } from 'vitest'
import { geodesicDistance, wgs84 } from './geodesic.ts'

const place = (latitude: number, longitude: number) => ({ latitude, longitude })
const dms = (d: number, m: number, s: number) => Math.sign(d) * (Math.abs(d) + m / 60 + s / 3600)
/** Moritz, Geodetic Reference System 1980. */
const grs80 = { equator: 6_378_137, flattening: 1 / 298.257222101 }

describe('distances that others have published', () => {
  it('Geocentric Datum of Australia, technical manual: Flinders Peak to Buninyong, 54972.271 m', () => {
    const flinders = place(dms(-37, 57, 3.7203), dms(144, 25, 29.5244))
    const buninyong = place(dms(-37, 39, 10.1561), dms(143, 55, 35.3839))
    expect(Math.abs(geodesicDistance(flinders, buninyong, grs80) - 54_972.271)).toBeLessThanOrEqual(0.0005)
  })

  it.each([
    // Karney, GeographicLib, TestData (two of its cases), and its printed examples.
    [35.60777, -139.44815, -11.17491, -69.95921, 8_935_244.56048183, 5e-8],
    [55.52454, 106.05087, 77.03196, 197.18234, 4_105_086.171392441, 5e-8],
    [-41.32, 174.81, 40.96, -5.5, 19_959_679.26735382, 5e-8],
    // Asked of GeodSolve 2.1.2.
    [40.6, -73.8, dms(49, 1, 0), dms(2, 33, 0), 5_853_226.256, 5e-4],
    [50.06632, -5.71475, 58.64402, -3.07009, 969_954.166, 5e-4],
    [0, 0, 0, 1, 111_319.490793, 5e-7],
    [0, 0, 1, 0, 110_574.388558, 5e-7],
    [45, 7, 45.001, 7, 111.131787, 5e-7],
    [45, 7, 45, 7.001, 78.846835, 5e-7],
  ])('%f %f to %f %f: %f m', (latitude, longitude, latitude2, longitude2, printed, tolerance) => {
    const there = geodesicDistance(place(latitude, longitude), place(latitude2, longitude2))
    expect(Math.abs(there - printed)).toBeLessThanOrEqual(tolerance)
    const back = geodesicDistance(place(latitude2, longitude2), place(latitude, longitude))
    expect(Math.abs(back - printed)).toBeLessThanOrEqual(tolerance)
  })
})

describe('places that iterations stumble over', () => {
  it('the same place is no way off, nor is one a full turn round', () => {
    expect(geodesicDistance(place(47, 8), place(47, 8))).toBe(0)
    expect(geodesicDistance(place(90, 8), place(90, 100))).toBeLessThan(1e-8)
    expect(geodesicDistance(place(1, -180), place(1, 180))).toBe(0)
  })

  it('half round along the equator goes over a pole: twice the quarter meridian, 10001965.729 m (Moritz’ method, WGS 84)', () => {
    // Quarter meridian by its series in n = f/(2 − f): a/(1 + n)·(1 + n²/4 + n⁴/64)·π/2.
    const n = wgs84.flattening / (2 - wgs84.flattening)
    const quarter = ((wgs84.equator / (1 + n)) * (1 + n ** 2 / 4 + n ** 4 / 64) * Math.PI) / 2
    expect(quarter).toBeCloseTo(10_001_965.729, 3)
    expect(geodesicDistance(place(0, 0), place(0, 180))).toBeCloseTo(2 * quarter, 6)
    expect(geodesicDistance(place(-90, 0), place(90, 77))).toBeCloseTo(2 * quarter, 6)
    expect(geodesicDistance(place(30, 0), place(-30, 180))).toBeCloseTo(2 * quarter, 6)
  })

  it('a millimetre is a millimetre: the curvatures at 45°', () => {
    // M = a(1 − e²)/(1 − e² sin²φ)^1.5 and N = a/√(1 − e² sin²φ).
    const e2 = wgs84.flattening * (2 - wgs84.flattening)
    const small = 1e-8
    const north = (wgs84.equator * (1 - e2)) / (1 - e2 / 2) ** 1.5
    const east = (wgs84.equator / Math.sqrt(1 - e2 / 2)) * Math.SQRT1_2
    const radian = Math.PI / 180
    expect(geodesicDistance(place(45, 7), place(45 + small, 7))).toBeCloseTo(north * small * radian, 8)
    expect(geodesicDistance(place(45, 7), place(45, 7 + small))).toBeCloseTo(east * small * radian, 8)
  })
})
