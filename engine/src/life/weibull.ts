import { brent } from '../numerics/brent.ts'
import { type Life, stopAtLives, z90 } from './lives.ts'

export interface Weibull {
  /** β: under 1 early failures, 1 by chance, over 1 wear. */
  readonly shape: number
  /** η, by which 63.2 % have failed [h]. */
  readonly scale: number
  readonly logLikelihood: number
  /** Of ln η and 1/β, from the observed information. */
  readonly covariance: { readonly location: number; readonly spread: number; readonly both: number }
}

/** Sums over all lives of w, w·x and w·x², w = e^{βx}, x = ln(t/longest). */
function powerSums(logs: Float64Array, shape: number): [number, number, number] {
  let zeroth = 0
  let first = 0
  let second = 0
  for (const x of logs) {
    const weight = Math.exp(shape * x)
    zeroth += weight
    first += weight * x
    second += weight * x * x
  }
  return [zeroth, first, second]
}

/**
 * Weibull distribution by maximum likelihood, lives still running counted as censored on the right.
 *
 * Shape β: Σtᵝ·ln t/Σtᵝ − 1/β = mean of ln t of the failed; scale η = (Σtᵝ/failed)^(1/β). Covariance: inverse of the second
 * derivatives of −ln L in ln η and 1/β.
 *
 * @param lives  1 … 100 000
 * @returns null under two failures, and where the failed do not vary: all at the longest life, or β over 10 000
 * @throws Refusal naming lives that can't be
 * @source W. Q. Meeker, L. A. Escobar, Statistical Methods for Reliability Data (1998), chapter 8
 * @example weibull([{ hours: 80, failed: true }, { hours: 120, failed: true }, { hours: 150, failed: false }]).shape // 3.24424
 */
export function weibull(lives: readonly Life[]): Weibull | null {
  stopAtLives(lives)
  const failed = lives.filter((life) => life.failed)
  const failures = failed.length
  const longest = lives.reduce((most, { hours }) => Math.max(most, hours), 0)
  if (failures < 2) return null
  // Against the longest, no power overflows.
  const logs = Float64Array.from(lives, ({ hours }) => Math.log(hours / longest))
  const mean = failed.reduce((sum, { hours }) => sum + Math.log(hours / longest), 0) / failures
  const slope = (logShape: number) => {
    const shape = Math.exp(logShape)
    const [zeroth, first] = powerSums(logs, shape)
    return first / zeroth - 1 / shape - mean
  }
  // Lives differ by 10⁸ at most, so that 1/β stays under ln 10⁸ = 18.4.
  const logShape = brent(slope, Math.log(0.05), Math.log(1e4), 1e-13)
  if (logShape === null) return null
  const shape = Math.exp(logShape)
  const [zeroth, first, second] = powerSums(logs, shape)
  const perFailure = zeroth / failures
  const scale = longest * perFailure ** (1 / shape)
  const logLikelihood =
    failures * (Math.log(shape) - Math.log(longest) - Math.log(perFailure)) + (shape - 1) * failures * mean - failures
  // With z = β·ln(t/η), the information in (ln η, 1/β) is β²·[failures, Σz·eᶻ; Σz·eᶻ, failures + Σz²·eᶻ].
  const shift = Math.log(perFailure)
  const sumZ = (shape * first - shift * zeroth) / perFailure
  const sumZ2 = (shape * shape * second - 2 * shape * shift * first + shift * shift * zeroth) / perFailure
  const size = shape * shape * (failures * (failures + sumZ2) - sumZ * sumZ)
  const covariance = { location: (failures + sumZ2) / size, spread: failures / size, both: -sumZ / size }
  return { shape, scale, logLikelihood, covariance }
}

/** By when a share has failed [h], with its 90 % band. */
export interface FailedBy {
  readonly hours: number
  readonly low: number
  readonly high: number
}

/**
 * Hours by which a share has failed: t = η·(−ln(1 − share))^(1/β), band exp(ln t ± 1.645·u(ln t)), u from the covariance.
 *
 * @param fit    of `weibull`
 * @param share  over 0 and under 1
 * @returns hours, low, high [h]
 * @source W. Q. Meeker, L. A. Escobar, Statistical Methods for Reliability Data (1998), chapter 8
 * @example failedBy({ shape: 2, scale: 100, logLikelihood: 0, covariance: { location: 0.01, spread: 0.01, both: 0 } }, 0.1).hours // 32.459
 */
export function failedBy({ shape, scale, covariance }: Weibull, share: number): FailedBy {
  const z = Math.log(-Math.log1p(-share))
  const location = Math.log(scale) + z / shape
  const variance = covariance.location + z * z * covariance.spread + 2 * z * covariance.both
  const half = z90 * Math.sqrt(variance)
  return { hours: Math.exp(location), low: Math.exp(location - half), high: Math.exp(location + half) }
}
