import { levenbergMarquardt } from '../numerics/levenberg-marquardt.ts'
import type { Metre, Newton, Pascal } from '../quantities/si.ts'
import { ambientWithin, refuseOne, stopAt, within } from '../refusal/found.ts'
import { checkSpring } from '../spring/check-spring.ts'
import { fullStroke } from '../spring/dimensions.ts'
import { prepareSpring } from '../spring/prepare-spring.ts'
import type { AirSpring, Spring } from '../spring/spring.ts'

export interface MeasuredPoint {
  readonly pressure: Pascal
  readonly load: Newton
  readonly stroke: Metre
  /** Standard uncertainty of the load; 10 N by default. */
  readonly u?: Newton
}

export interface CalibrateQuestion {
  readonly points: readonly MeasuredPoint[]
  readonly fit?: 'negativeVolume' | 'equalisingStroke'
  readonly ambient?: Pascal
}

export interface Calibration {
  /** negativeVolume [m³] or equalisingStroke [m]. */
  value: number
  /** 90 %. */
  band: [number, number]
  /** Root mean square of what is left, as a load. */
  residual: Newton
}

/**
 * Fits one doubtful dimension to measured points: least squares of (F(stroke) − load)/u; band ±1.645·u(value) through
 * the slopes, u(value)² = (JᵀJ)⁻¹ = 1/Σ(∂F/∂value/u)².
 *
 * @param spring    an air spring with a port
 * @param question  1 … 1000 points: gauge pressure [Pa], load [N], stroke [m], u [N]; which dimension
 * @returns value [m³ or m], band, residual [N]
 * @throws Refusal naming every field that can't be; `no-answer` where no value in reach fits best
 * @source weighted least squares, e.g. JCGM 100:2008 5.1
 * @example calibrate({ kind: 'air', bore: 0.032, shaft: 0.01, stroke: 0.15, positiveVolume: 0.000197, negativeVolume: 0.00003, equalisingStroke: 0.0025 }, { points: [{ pressure: 678034, load: 351, stroke: 0.03 }] }).value // 0.0000310
 */
export function calibrate(spring: Spring, question: CalibrateQuestion): Calibration {
  const { points, fit = 'negativeVolume', ambient = 101_325 } = question
  if (spring.kind === 'coil') {
    return refuseOne('spring.kind', 'coil-has-no-pressure', 'coil', 'air', 'A coil is weighed, not calibrated.')
  }
  const kind = spring.negative?.kind ?? 'port'
  if (kind !== 'port' && !(kind === 'valve' && fit === 'negativeVolume')) {
    refuseOne('spring.negative.kind', 'no-answer', kind, 'port', `There is no ${fit} to fit.`)
  }
  if (points.length < 1 || points.length > 1000) {
    refuseOne(
      'points',
      'wrong-count',
      `${points.length} points`,
      '1 to 1000 points',
      'Measure pressure, load and stroke.',
    )
  }
  stopAt(checkSpring(null, spring, 'spring.'))
  const end = fullStroke(spring)
  let found = ambientWithin(null, '', 'ambient', ambient)
  points.forEach((point, index) => {
    const at = `points[${index}].`
    found = within(
      found,
      at,
      'pressure',
      point.pressure,
      'pressure',
      0,
      2e7,
      'Give what the gauge showed at full length.',
    )
    found = within(found, at, 'load', point.load, 'force', 0, 50_000, 'Give the load along the leg.')
    found = within(found, at, 'stroke', point.stroke, 'length', 0, end, 'Give the stroke it rested at.')
    found = within(found, at, 'u', point.u ?? 10, 'force', 0.01, 10_000, 'Give the doubt of the load.')
  })
  stopAt(found)
  const modelled = (value: number, point: MeasuredPoint) => {
    const tried: AirSpring = { ...spring, [fit]: value }
    return prepareSpring(tried, point.pressure, { ambient }).force(point.stroke)
  }
  const sheet = fit === 'negativeVolume' ? (spring.negativeVolume ?? 3e-5) : (spring.equalisingStroke ?? 0)
  const low = fit === 'negativeVolume' ? Math.max(1e-7, sheet / 10) : 0
  const high = fit === 'negativeVolume' ? Math.min(0.01, sheet * 10) : spring.stroke / 3
  // In shares of the largest value, so that a volume and a stroke are searched alike.
  const fitted = levenbergMarquardt({
    residuals: ([share = Number.NaN], out) => {
      out.set(points.map((point) => (modelled(share * high, point) - point.load) / (point.u ?? 10)))
    },
    count: points.length,
    start: [Math.min(Math.max(sheet / high, 0.02), 0.98)],
    lower: [low / high],
    upper: [1],
  })
  const [share = Number.NaN] = fitted.parameters
  const variance = fitted.covariance?.[0]?.[0]
  const value = share * high
  // At an end of what is searched the best fit lies beyond it.
  if (!fitted.converged || variance === undefined || !(value > low && share < 1)) {
    const allowed = `points that a ${fit} between a tenth of and ten times the sheet's fits`
    return refuseOne(
      'points',
      'no-answer',
      `${points.length} points`,
      allowed,
      'Check pressure, load and stroke; measure at a third of the stroke.',
    )
  }
  const half = 1.645 * Math.sqrt(variance) * high
  const residual = Math.sqrt(points.reduce((sum, p) => sum + (modelled(value, p) - p.load) ** 2, 0) / points.length)
  return { value, band: [value - half, value + half], residual }
}
