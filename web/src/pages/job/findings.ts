/** Measurements judged, worst first. */
import {
  type Finding,
  halfWidthOf,
  type Instrument,
  judgeMeasured,
  type MeasuredEntry,
  type Reading,
  type Sheet,
} from '@legwork/trade'

/** What can be measured before the strip, and what it is read in. */
export const measurable = {
  'return-time': { measure: 's', fine: false, legs: false },
  clearance: { measure: 'm', fine: true, legs: true },
  friction: { measure: 'N', fine: false, legs: false },
  breakaway: { measure: 'N', fine: false, legs: false },
  'short-of-length': { measure: 'm', fine: false, legs: false },
} as const satisfies Record<string, { measure: Reading['measure']; fine: boolean; legs: boolean }>
export type Measurable = keyof typeof measurable
export const measurables: readonly Measurable[] = [
  'return-time',
  'clearance',
  'friction',
  'breakaway',
  'short-of-length',
]
export const isMeasurable = (what: string): what is Measurable => Object.hasOwn(measurable, what)

export interface JudgedMeasurement {
  entry: MeasuredEntry
  what: Measurable
  finding: Finding
  /** What the instrument leaves open, either way [SI]. */
  halfWidth: number
}

const order = ['fail', 'watch', 'cannot-tell', 'pass'] as const

/** The last reading of each kind, leg and phase, judged by the sheet or by common practice. */
export function judgedMeasurements(
  measured: readonly MeasuredEntry[],
  sheet: Sheet | null,
  instruments: readonly Instrument[],
  phase: MeasuredEntry['phase'],
): readonly JudgedMeasurement[] {
  const last = new Map<string, MeasuredEntry>()
  for (const entry of measured) if (entry.phase === phase) last.set(`${entry.what} ${entry.leg}`, entry)
  return [...last.values()]
    .flatMap((entry) => {
      if (!isMeasurable(entry.what)) return []
      const instrument = instruments.find((one) => one.id === entry.reading.instrument)
      const halfWidth = halfWidthOf(instrument, entry.reading.value)
      const finding = judgeMeasured(entry.what, entry.reading.value, sheet, halfWidth)
      return [{ entry, what: entry.what, finding, halfWidth }]
    })
    .sort((one, other) => order.indexOf(one.finding.verdict) - order.indexOf(other.finding.verdict))
}
