/** How well one hypothesis at one value of its parameter explains the readings, friction and pressure scale at their best. */
import { normalShare } from '../numerics/normal-distribution.ts'
import type { Foreseen, Stops } from './press-model.ts'

export interface Doubts {
  readonly forceSd: number
  readonly strokeSd: number
  /** Prior of the pressure scale: N(1, scaleSd). Null where nothing is filled. */
  readonly scaleSd: number | null
}

export interface Explained {
  scale: number
  /** 0 and more. */
  friction: number
  frictionSd: number
  /** Σ (reading − foreseen)²/σ², and the scale's own term. */
  chiSquare: number
  /** −2 ln of the likelihood times the prior density of the scale. */
  minusTwoLog: number
  /** ln of the same with scale and friction integrated out, but for a constant. */
  logMarginal: number
}

const lnTwoPi = Math.log(2 * Math.PI)

/** Sums over all stops at one scale. */
interface Sums {
  chiSquare: number
  /** Of the readings alone: Σ 2·ln σ². */
  logVariance: number
  friction: number
  frictionUncut: number
  /** Σ 2/σ². */
  frictionWeight: number
  /** Half of what letting the friction below 0 would gain of χ². */
  cut: number
  slope: number
  curvature: number
}

function sumsAt(foreseen: Foreseen, stops: Stops, doubts: Doubts, scale: number): Sums {
  const { force, rate, forceByScale, rateByScale } = foreseen
  const { mean, half, count } = stops
  const floor = doubts.forceSd ** 2
  const stretch = doubts.strokeSd ** 2
  let weights = 0
  let weighted = 0
  for (let i = 0; i < count; i += 1) {
    const r = rate[i] ?? 0
    const w = 2 / (floor + r * r * stretch)
    weights += w
    weighted += w * (half[i] ?? 0)
  }
  const frictionUncut = weighted / weights
  const friction = Math.max(0, frictionUncut)
  let chiSquare = 0
  let logVariance = 0
  let slope = 0
  let curvature = 0
  for (let i = 0; i < count; i += 1) {
    const r = rate[i] ?? 0
    const variance = floor + r * r * stretch
    const off = (mean[i] ?? 0) - (force[i] ?? 0)
    const rub = (half[i] ?? 0) - friction
    const squares = (2 * (off * off + rub * rub)) / variance
    const byScale = forceByScale[i] ?? 0
    // σ² changes with the slope of the hypothesis, and the slope with the scale.
    const widening = (2 * r * (rateByScale[i] ?? 0) * stretch) / variance
    chiSquare += squares
    logVariance += 2 * Math.log(variance)
    slope += (-4 * off * byScale) / variance + (2 - squares) * widening
    curvature += (4 * byScale * byScale) / variance + 2 * widening * widening
  }
  if (doubts.scaleSd !== null) {
    const share = (scale - 1) / doubts.scaleSd
    chiSquare += share * share
    slope += (2 * share) / doubts.scaleSd
    curvature += 2 / doubts.scaleSd ** 2
  }
  const cut = (weights * (friction - frictionUncut) ** 2) / 2
  return { chiSquare, logVariance, friction, frictionUncut, frictionWeight: weights, cut, slope, curvature }
}

function explainedBy(sums: Sums, stops: Stops, doubts: Doubts, scale: number, free: boolean): Explained {
  const prior = doubts.scaleSd === null ? 0 : lnTwoPi + 2 * Math.log(doubts.scaleSd)
  const minusTwoLog = sums.chiSquare + sums.logVariance + 2 * stops.count * lnTwoPi + prior
  const frictionSd = 1 / Math.sqrt(sums.frictionWeight)
  // Scale and friction do not pull on each other: the one hangs on the means, the other on the halves.
  const logMarginal =
    -minusTwoLog / 2 +
    sums.cut +
    Math.log(Math.max(normalShare(sums.frictionUncut / frictionSd), Number.MIN_VALUE)) +
    Math.log(frictionSd) -
    (free ? Math.log(sums.curvature / 2) / 2 : 0)
  return { scale, friction: sums.friction, frictionSd, chiSquare: sums.chiSquare, minusTwoLog, logMarginal }
}

/** The likelihood at a scale that is the parameter itself, or where nothing is filled. */
export function explainedAt(foreseen: Foreseen, stops: Stops, doubts: Doubts, scale: number): Explained {
  return explainedBy(sumsAt(foreseen, stops, doubts, scale), stops, doubts, scale, false)
}

/**
 * The likelihood at its best scale, by Fisher's scoring: steps of slope over expected curvature, halved where they
 * would not go down.
 *
 * @param from  a scale to begin with
 */
export function explainedBest(
  foreseen: (scale: number) => Foreseen,
  stops: Stops,
  doubts: Doubts,
  from: number,
): Explained {
  let scale = from
  let sums = sumsAt(foreseen(scale), stops, doubts, scale)
  for (let round = 0; round < 50; round += 1) {
    let step = Math.min(Math.max(-sums.slope / sums.curvature, -0.2), 0.2)
    let tried = sums
    for (let halving = 0; halving < 20; halving += 1, step /= 2) {
      const there = Math.max(scale + step, 0.05)
      tried = sumsAt(foreseen(there), stops, doubts, there)
      if (tried.chiSquare + tried.logVariance <= sums.chiSquare + sums.logVariance + 1e-12) break
    }
    scale = Math.max(scale + step, 0.05)
    sums = tried
    if (Math.abs(step) < 1e-9) break
  }
  return explainedBy(sums, stops, doubts, scale, true)
}
