/** What the gauge should show when it is put on again, and what was lost: the engine's leak-down on this unit's sheet. */
import { type LeakDown, leakDown } from '@legwork/engine'
import { type JobState, type MeasuredEntry, type Sheet, springOf } from '@legwork/trade'
import type { Pump } from './step-figure.ts'

/** Both readings are taken at the bench. */
const bench = 293.15
const minute = 60

/** Of the chamber that the pump is put on at full length [m³]; null where the sheet gives none. */
function chamberOf(sheet: Sheet | null, spacers: number): number | null {
  const spring = sheet && springOf(sheet, { spacers })
  if (spring?.kind !== 'air') return null
  return spring.positiveVolume - spacers * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
}

/** The pair of readings since the air last went in. */
export function leakPair(state: JobState): { start: MeasuredEntry | null; end: MeasuredEntry | null } {
  const { leakDown: standing } = state.facts
  const last = (what: string) => state.measured.findLast((one) => one.what === what) ?? null
  return {
    start: standing === 'none' ? null : last('leak-down-start'),
    end: standing === 'finished' ? last('leak-down-end') : null,
  }
}

interface LeakAsked {
  sheet: Sheet | null
  spacers: number
  pump: Pump | null
  /** Gauge readings [Pa]; without the second, what it should show. */
  start: number
  end?: number
  minutes: number
}

/** Readings as their own pump shows them; null where the sheet gives no chamber. */
export function leakOf({ sheet, spacers, pump, start, end = start, minutes }: LeakAsked): LeakDown | null {
  const volume = chamberOf(sheet, spacers)
  if (volume === null) return null
  const error = 1 + (pump?.offset ?? 0)
  const found = leakDown({
    volume,
    hoseVolume: pump?.hoseVolume ?? 0,
    start: { reading: start / error, temperature: bench },
    end: { reading: end / error, temperature: bench, how: 'attached' },
    duration: Math.max(1, minutes * minute),
    ...(pump ? { gaugeResolution: pump.resolution } : {}),
  })
  return { ...found, expectedReading: found.expectedReading * error }
}
