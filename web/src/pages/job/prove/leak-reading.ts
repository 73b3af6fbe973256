/** What the gauge should show when it is put on again, and what was lost: the engine's leak-down on this unit's sheet. */
import { type LeakDown, type LeakQuestion, leakDown, Refusal } from '@legwork/engine'
import { type JobState, type MeasuredEntry, type Sheet, springOf } from '@legwork/trade'
import type { Pump } from '../step-figure.ts'

/** Taken where nobody read a thermometer: a workshop's own. */
export const benchTemperature = 293.15
const minute = 60

/** Of the chamber that the pump is put on at full length [m³]; null where the sheet gives none. */
function chamberOf(sheet: Sheet | null, spacers: number): number | null {
  const spring = sheet && springOf(sheet, { spacers })
  if (spring?.kind !== 'air') return null
  return spring.positiveVolume - spacers * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
}

interface LeakPair {
  start: MeasuredEntry | null
  end: MeasuredEntry | null
  /** Read beside each; null where it was not. */
  startTemperature: MeasuredEntry | null
  endTemperature: MeasuredEntry | null
}

/** The pair of readings since the air last went in, with the temperatures read with them. */
export function leakPair(state: JobState): LeakPair {
  const { leakDown: standing } = state.facts
  const last = (what: string) => state.measured.findLast((one) => one.what === what) ?? null
  const start = standing === 'none' ? null : last('leak-down-start')
  const end = standing === 'finished' ? last('leak-down-end') : null
  // A temperature is written just before its reading: an older one belongs to an earlier test.
  const beside = (reading: MeasuredEntry | null, what: string) => {
    const found = reading && last(what)
    return found && Math.abs(Date.parse(found.at) - Date.parse(reading.at)) < minute * 1000 ? found : null
  }
  return {
    start,
    end,
    startTemperature: beside(start, 'leak-down-start-temperature'),
    endTemperature: beside(end, 'leak-down-end-temperature'),
  }
}

export interface LeakAsked {
  sheet: Sheet | null
  spacers: number
  pump: Pump | null
  /** Gauge readings [Pa]; without the second, what it should show. */
  start: number
  end?: number
  /** Where they were taken [K]; the bench's own where nobody read it. */
  startTemperature?: number | null
  endTemperature?: number | null
  minutes: number
}

/** The question as the engine asks it, in true readings, and what one of them is times to be the pump's own. */
export function leakQuestion(asked: LeakAsked): { question: LeakQuestion; error: number } | null {
  const { sheet, spacers, pump, start, end = start, minutes } = asked
  const from = asked.startTemperature ?? benchTemperature
  const to = asked.endTemperature ?? from
  const volume = chamberOf(sheet, spacers)
  if (volume === null) return null
  const error = 1 + (pump?.offset ?? 0)
  return {
    error,
    question: {
      volume,
      hoseVolume: pump?.hoseVolume ?? 0,
      start: { reading: start / error, temperature: from },
      end: { reading: end / error, temperature: to, how: 'attached' },
      duration: Math.max(1, minutes * minute),
      ...(pump ? { gaugeResolution: pump.resolution } : {}),
    },
  }
}

/** Readings as their own pump shows them; null where the sheet gives no chamber, or for readings that can't be. */
export function leakOf(asked: LeakAsked): LeakDown | null {
  const put = leakQuestion(asked)
  if (!put) return null
  try {
    const found = leakDown(put.question)
    return { ...found, expectedReading: found.expectedReading * put.error }
  } catch (error) {
    if (error instanceof Refusal) return null
    throw error
  }
}

export interface LeakShare {
  what: 'leak-10-min' | 'leak-24-h'
  /** Of the pressure at the start; what came out warmer than it went in has lost nothing. */
  share: number
  /** What both readings of the gauge leave open, nine times in ten. */
  halfWidth: number
}

/** A gauge's step where no pump is named: 1 psi [Pa]. */
export const gaugeStep = 6894.757293168
/** 5 % of a normal density lie beyond it on either side. */
const nineInTen = 1.645

/**
 * The share that was lost, by the limit that is made for such a rest: up to half an hour, or about a day. Null between them.
 *
 * @source u of a reading: its step over √12 (JCGM 100:2008, F.2.2.1), two readings; limits: common practice, no source
 */
export function leakShare(found: LeakDown, minutes: number, pump: Pump | null): LeakShare | null {
  const what = minutes <= 30 ? 'leak-10-min' : minutes >= 20 * 60 ? 'leak-24-h' : null
  if (!what || found.pressureStart <= 0) return null
  const { pressureStart, pressureEnd } = found
  const resolution = pump?.resolution ?? gaugeStep
  return {
    what,
    share: Math.max(0, (pressureStart - pressureEnd) / pressureStart),
    halfWidth: (nineInTen * Math.SQRT2 * resolution) / Math.sqrt(12) / pressureStart,
  }
}
