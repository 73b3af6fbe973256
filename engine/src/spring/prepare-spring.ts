import type { Metre, Newton, Pascal } from '../quantities/si.ts'
import { refuseOne, stopAt } from '../refusal/found.ts'
import { type ChamberPressures, pressuresAt } from './chamber-pressures.ts'
import { strokeWithin } from './check-conditions.ts'
import type { Process, Spring } from './spring.ts'
import { type ForceAndRate, force, forceAt } from './spring-force.ts'
import { springState } from './spring-state.ts'

/** A spring at one pressure, made ready to be asked at many strokes. */
export interface PreparedSpring {
  /** How far the leg can go [m]. */
  readonly fullStroke: Metre
  /** Force at a stroke, without friction [N]. */
  force(stroke: Metre): Newton
  /** Force [N] and rate [N/m] at a stroke. */
  at(stroke: Metre): ForceAndRate
  /** Gauge of every chamber at a stroke [Pa]. */
  pressures(stroke: Metre): ChamberPressures
}

/**
 * A spring at one pressure, to be asked at single strokes.
 *
 * @param spring    dimensions
 * @param pressure  gauge [Pa]; not used by a coil
 * @param process   air around, slow or fast
 * @returns force [N], rate [N/m] and gauge pressures [Pa] at any stroke, and where the stroke ends [m]
 * @throws Refusal naming every field that can't be; asked beyond fullStroke, `stroke`
 * @source force balance on the leg; ideal gas, as springCurve
 * @example prepareSpring({ kind: 'coil', rate: 9000, stroke: 0.15 }, 0, {}).force(0.1) // 900
 */
export function prepareSpring(
  spring: Spring,
  pressure: Pascal,
  process: Omit<Process, 'pressure'> = {},
): PreparedSpring {
  const state = springState(spring, { ...process, pressure })
  const inside = (stroke: Metre) => {
    if (stroke >= 0 && stroke <= state.fullStroke) return
    stopAt(strokeWithin(null, 'stroke', stroke, state.fullStroke))
    refuseOne('stroke', 'not-a-number', String(stroke), 'a finite number', 'Give a stroke from full length.')
  }
  return {
    fullStroke: state.fullStroke,
    force(stroke) {
      inside(stroke)
      return force(state, stroke)
    },
    at(stroke) {
      inside(stroke)
      const out: ForceAndRate = { force: 0, rate: 0 }
      forceAt(state, stroke, out)
      return out
    },
    pressures(stroke) {
      inside(stroke)
      return pressuresAt(state, stroke)
    },
  }
}
