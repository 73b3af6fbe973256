/** Measurements judged, worst first. */
import {
  boundsFor,
  type Finding,
  halfWidthOf,
  type Instrument,
  judgeMeasured,
  type MeasuredEntry,
  type Reading,
  type Sheet,
  type UnitKind,
} from '@legwork/trade'

interface Manner {
  measure: Reading['measure']
  /** In hundredths of a millimetre. */
  fine: boolean
  /** Read in per cent. */
  share: boolean
  /** On one leg or the other. */
  legs: boolean
}
const plain = { fine: false, share: false, legs: false } as const

/** What can be measured before the strip, and what it is read in. */
export const measurable = {
  'short-of-length': { ...plain, measure: 'm' },
  'return-time': { ...plain, measure: 's' },
  'return-closed-over-open': { ...plain, measure: '1' },
  'return-warm-over-cold': { ...plain, measure: '1' },
  friction: { ...plain, measure: 'N' },
  breakaway: { ...plain, measure: 'N' },
  'lock-out-creep': { ...plain, measure: 'm' },
  'dead-zone': { ...plain, measure: 'm' },
  'leak-24-h': { ...plain, measure: '1', share: true },
  clearance: { ...plain, measure: 'm', fine: true, legs: true },
  'mount-play': { ...plain, measure: 'm', fine: true },
} as const satisfies Record<string, Manner>
export type Measurable = keyof typeof measurable
/** Those that such a unit has a limit for; a coil has no air to lose. */
export function measurablesOf(kind: UnitKind): readonly Measurable[] {
  // Object.keys widens the keys of a constant table to string.
  return (Object.keys(measurable) as Measurable[]).filter(
    (what) => boundsFor(what, kind) !== null && (what !== 'leak-24-h' || kind.endsWith('air')),
  )
}
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
