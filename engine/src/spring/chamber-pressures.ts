import type { Metre, Pascal } from '../quantities/si.ts'
import { drawnOut, mainPressure, type SpringState, squeezed } from './spring-state.ts'

/** Gauge of every chamber at one stroke. */
export interface ChamberPressures {
  /** Only of an air spring. */
  positive?: Pascal
  /** Only where a negative chamber holds air. */
  negative?: Pascal
  /** One a leg; empty where the lower legs are not given. */
  lower: Pascal[]
}

/** Gauge of every chamber of a spring made ready, at a stroke within its end [Pa]. */
export function pressuresAt(state: SpringState, stroke: Metre): ChamberPressures {
  const { ambient, exponent, main, negative, lower } = state
  const at: ChamberPressures = { lower: lower.map((leg) => squeezed(leg, stroke, exponent) - ambient) }
  if (main.area > 0) at.positive = mainPressure(state, stroke) - ambient
  if (negative.area > 0) at.negative = drawnOut(negative, stroke, exponent) - ambient
  return at
}
