import type { Metre, Newton, NewtonPerMetre, Pascal } from '../quantities/si.ts'
import { stopAt, whole } from '../refusal/found.ts'
import { pressuresAt } from './chamber-pressures.ts'
import { freeStroke } from './free-stroke.ts'
import type { Process, Spring } from './spring.ts'
import { type ForceAndRate, forceAt } from './spring-force.ts'
import { springState, stateOfChecked } from './spring-state.ts'

export interface CurvePoint {
  stroke: Metre
  force: Newton
  rate: NewtonPerMetre
  /** Gauge; only of an air spring. */
  positivePressure?: Pascal
  /** Gauge; only where a negative chamber holds air. */
  negativePressure?: Pascal
  /** Gauge, one a leg; only where the lower legs are given. */
  lowerPressures?: Pascal[]
}

export interface SpringCurve {
  freeStroke: Metre
  fullStroke: Metre
  points: CurvePoint[]
}

export interface CurveOptions extends Process {
  /** How many, from 0 to fullStroke; 61 by default, 2 … 10,001. */
  readonly points?: number
}

/**
 * Force, rate and pressures over the stroke, without friction, evenly spaced from 0 to fullStroke.
 *
 * @param spring   dimensions
 * @param options  pressure, air around, slow or fast, how many points
 * @returns strokes [m], forces [N], rates [N/m], gauge pressures [Pa]
 * @throws Refusal naming every field that can't be
 * @source engine model: ideal gas in every chamber, force balance on the leg
 * @example springCurve({ kind: 'coil', rate: 9000, stroke: 0.15 }, { points: 2 }).points[1].force // 1350
 */
export function springCurve(spring: Spring, options: CurveOptions): SpringCurve {
  const count = options.points ?? 61
  stopAt(whole(null, '', 'points', count, 2, 10_001, 'Ask for 61 points.'))
  const state = springState(spring, options)
  const slow = state.exponent === 1 ? state : stateOfChecked(spring, { ...options, exponent: 1 })
  const { fullStroke } = state
  const points: CurvePoint[] = []
  const out: ForceAndRate = { force: 0, rate: 0 }
  for (let index = 0; index < count; index += 1) {
    const stroke = (fullStroke * index) / (count - 1)
    forceAt(state, stroke, out)
    const point: CurvePoint = { stroke, force: out.force, rate: out.rate }
    const { positive, negative, lower } = pressuresAt(state, stroke)
    if (positive !== undefined) point.positivePressure = positive
    if (negative !== undefined) point.negativePressure = negative
    if (lower.length > 0) point.lowerPressures = lower
    points.push(point)
  }
  return { freeStroke: freeStroke(slow), fullStroke, points }
}
