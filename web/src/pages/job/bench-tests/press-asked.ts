/** The question that a press puts to the engine: the sheet's spring, true pressures, the stops read both ways. */
import { type PressQuestion, Refusal, type Spring, springCurve } from '@legwork/engine'
import {
  type Instrument,
  type JobState,
  type MeasuredEntry,
  type Pressed,
  pressesIn,
  pressStops,
  readStops,
  type Sheet,
  springOf,
} from '@legwork/trade'
import { missingForSpring } from '../sheet-fields.ts'

/** Of a hand on a lever press, a scale of 0.2 kg and a tape: an estimate. */
const forceSd = 4
const strokeSd = 0.7e-3

export interface PressAsked extends PressQuestion {
  spring: Spring
}

/** The spring by the sheet with the pieces that are in it in this phase; null where the sheet lacks a value for it. */
export function pressedSpring(sheet: Sheet | null, state: JobState, phase: MeasuredEntry['phase']): Spring | null {
  if (!sheet || missingForSpring(sheet).length > 0) return null
  const spacers = phase === 'done' ? (state.setting?.spacers ?? state.setUp?.spacers) : undefined
  return springOf(sheet, spacers === undefined ? {} : { spacers })
}

/** What a gauge means by what it shows: its own error taken out [Pa]. */
export function trueOf(shown: number, id: string | null, instruments: readonly Instrument[]): number {
  const gauge = instruments.find((one) => one.id === id)
  const offset = gauge?.kind === 'pump' || gauge?.kind === 'gauge' ? gauge.offset : 0
  return shown / (1 + offset)
}

/** What is really in the chamber [Pa]. */
export function truePressure({ reading }: MeasuredEntry, instruments: readonly Instrument[]): number {
  return trueOf(reading.value, reading.instrument, instruments)
}

/** The stops that this filling is pressed at; none where the spring can't be filled so: a number that was mistyped. */
export function plannedStops(spring: Spring, pressure: number | null, sag: number | null): readonly number[] {
  try {
    return pressStops(spring, pressure, sag)
  } catch (error) {
    if (error instanceof Refusal) return []
    throw error
  }
}

/** Three stops at least; null before. */
export function pressAsked(
  spring: Spring | null,
  presses: readonly Pressed[],
  instruments: readonly Instrument[],
): PressAsked | null {
  if (!spring) return null
  const asked = presses.flatMap((one) => {
    const readings = readStops(one).map(({ stroke, pressing, releasing }) => ({
      stroke,
      pressing: pressing.reading.value,
      releasing: releasing.reading.value,
    }))
    const pressure = truePressure(one.filling, instruments)
    return readings.length < 3 ? [] : [spring.kind === 'coil' ? { readings } : { pressure, readings }]
  })
  return asked.length === 0 ? null : { spring, presses: asked, forceSd, strokeSd }
}

/** All that was pressed in a phase as one question. */
export function askedIn(
  state: JobState,
  sheet: Sheet | null,
  instruments: readonly Instrument[],
  phase: MeasuredEntry['phase'],
): PressAsked | null {
  return pressAsked(pressedSpring(sheet, state, phase), pressesIn(state.measured, phase), instruments)
}

/** What the sheet foresees at a stop, slow and without friction [N]. */
export function foreseen(spring: Spring, pressure: number | null, stroke: number): number {
  const { points } = springCurve({ ...spring, stroke }, { ...(pressure === null ? {} : { pressure }), points: 2 })
  return points[1]?.force ?? 0
}

export interface OffSheet {
  stroke: number
  /** Half the sum of both readings [N]. */
  mean: number
  /** By the sheet [N]. */
  sheet: number
  pressure: number | null
  /** Mean over sheet, less 1. */
  off: number
}

/** The stop between 20 and 60 % of the travel whose mean is furthest from the sheet; null where none was read there. */
export function furthestOff({ spring, presses }: PressAsked): OffSheet | null {
  const all = presses.flatMap(({ pressure = null, readings }) =>
    readings
      .filter(({ stroke }) => stroke >= 0.2 * spring.stroke && stroke <= 0.6 * spring.stroke)
      .map(({ stroke, pressing, releasing }): OffSheet => {
        const [mean, sheet] = [(pressing + releasing) / 2, foreseen(spring, pressure, stroke)]
        return { stroke, mean, sheet, pressure, off: mean / sheet - 1 }
      }),
  )
  return all.sort((one, other) => Math.abs(other.off) - Math.abs(one.off))[0] ?? null
}
