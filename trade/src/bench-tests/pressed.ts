/** What was read in the press: fillings, each with its stops, out of a job's measurements. */
import type { MeasuredEntry } from '../journal/job-state.ts'

export interface PressedStop {
  /** [m] */
  stroke: number
  pressing: MeasuredEntry | null
  releasing: MeasuredEntry | null
}

/** One pass through the stroke at one filling. */
export interface Pressed {
  filling: MeasuredEntry
  temperature: MeasuredEntry | null
  /** From full length on. */
  stops: readonly PressedStop[]
}

/** A stop read both ways: only such ones tell spring and friction apart. */
export interface ReadStop extends PressedStop {
  pressing: MeasuredEntry
  releasing: MeasuredEntry
}

const minute = 60_000
/** A reading of a stop to a tenth of a millimetre is of the same stop. */
const keyOf = (stroke: number): number => Math.round(stroke * 1e4)

function stopsOf(filling: MeasuredEntry, measured: readonly MeasuredEntry[]): readonly PressedStop[] {
  const stops = new Map<number, PressedStop>()
  for (const one of measured) {
    if (one.what !== 'press-force' || one.press?.of !== filling.entry) continue
    const { stroke, way } = one.press
    const key = keyOf(stroke)
    const before = stops.get(key) ?? { stroke, pressing: null, releasing: null }
    // Read once more at the same stop, the later one counts.
    stops.set(key, { ...before, [way]: one })
  }
  return [...stops.values()].sort((one, other) => one.stroke - other.stroke)
}

/** The fillings that were pressed in a phase, in their order. Struck readings are not among the measurements. */
export function pressesIn(measured: readonly MeasuredEntry[], phase: MeasuredEntry['phase']): readonly Pressed[] {
  return measured
    .filter((one) => one.what === 'press-pressure' && one.phase === phase)
    .map((filling) => ({
      filling,
      temperature:
        measured.find(
          (one) =>
            one.what === 'press-temperature' &&
            one.phase === phase &&
            Math.abs(Date.parse(one.at) - Date.parse(filling.at)) < minute,
        ) ?? null,
      stops: stopsOf(filling, measured),
    }))
}

/** The stops that were read both ways. */
export function readStops({ stops }: Pressed): readonly ReadStop[] {
  return stops.flatMap((stop) => {
    const { pressing, releasing } = stop
    return pressing && releasing ? [{ ...stop, pressing, releasing }] : []
  })
}

export interface NextStop {
  stroke: number
  way: 'pressing' | 'releasing'
}

/**
 * Where the press goes next: down from stop to stop, then back up through the ones that were read; null when it is through.
 *
 * @param planned  strokes going down [m]
 * @param passed   strokes that are left out [m]
 */
export function nextStop(planned: readonly number[], pressed: Pressed, passed: ReadonlySet<number>): NextStop | null {
  const { stops } = pressed
  const isBack = stops.some(({ releasing }) => releasing !== null)
  const deepest = Math.max(0, ...stops.filter(({ pressing }) => pressing).map(({ stroke }) => stroke))
  const down = isBack ? undefined : planned.find((stroke) => stroke > deepest + 1e-6 && !passed.has(keyOf(stroke)))
  if (down !== undefined) return { stroke: down, way: 'pressing' }
  const back = stops.findLast(({ pressing, releasing }) => pressing && !releasing)
  return back ? { stroke: back.stroke, way: 'releasing' } : null
}

/** What `passed` of `nextStop` holds for a stroke. */
export const passedKey = keyOf
