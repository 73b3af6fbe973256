/**
 * Limits of bench measurements where the sheet has none: common practice, no source. 'Fail' means talk about it, not scrap.
 */
import type { Sheet, Source } from '../sheets/sheet.ts'
import { judge, type Verdict, type Zone, zonesOf } from './judge.ts'

const commonPractice: Source = {
  kind: 'common-practice',
  document: null,
  revision: null,
  page: null,
  person: null,
  at: null,
  instrument: null,
}

type What =
  | 'friction'
  | 'breakaway'
  | 'clearance'
  | 'short-of-length'
  | 'travel-off'
  | 'leak-10-min'
  | 'leak-24-h'
  | 'lock-out-creep'
  | 'dead-zone'
  | 'mount-play'
  | 'stanchion-run-out'
  | 'stanchion-out-of-round'

/** [SI]: N, m, or a share of what was there. Those of an air fork under pressure where it matters. */
export const benchLimits: Readonly<Record<What, { watch: number; fail: number }>> = {
  friction: { watch: 25, fail: 45 },
  breakaway: { watch: 40, fail: 70 },
  clearance: { watch: 0.12e-3, fail: 0.2e-3 },
  'short-of-length': { watch: 0.002, fail: 0.005 },
  'travel-off': { watch: 0.003, fail: 0.006 },
  'leak-10-min': { watch: 0.01, fail: 0.02 },
  'leak-24-h': { watch: 0.03, fail: 0.06 },
  'lock-out-creep': { watch: 0.005, fail: 0.01 },
  'dead-zone': { watch: 0.002, fail: 0.004 },
  'mount-play': { watch: 0.2e-3, fail: 0.4e-3 },
  'stanchion-run-out': { watch: 0.1e-3, fail: 0.15e-3 },
  'stanchion-out-of-round': { watch: 0.02e-3, fail: 0.04e-3 },
}

/** Return of a fork from 110 to 10 mm at the card's setting [s]: too fast and too slow are both worse. */
export const returnTimeZones: readonly Zone[] = [
  { from: Number.NEGATIVE_INFINITY, verdict: 'fail' },
  { from: 0.1, verdict: 'watch' },
  { from: 0.14, verdict: 'pass' },
  { from: 0.24, verdict: 'watch' },
  { from: 0.4, verdict: 'fail' },
]

export interface Finding {
  what: string
  value: number
  verdict: Verdict
  zones: readonly Zone[]
  /** Null where there is no limit: then nobody judges. */
  source: Source | null
}

const isBench = (what: string): what is What => Object.hasOwn(benchLimits, what)

/**
 * Judges a measurement: by the sheet's limit, else by common practice, else not at all (cannot tell).
 *
 * @param value  [SI]
 * @param halfWidth  what the instrument leaves open [SI]
 * @example judgeMeasured('friction', 52, null).verdict // 'fail'
 */
export function judgeMeasured(what: string, value: number, sheet: Sheet | null, halfWidth = 0): Finding {
  const limit = sheet?.limits[what] ?? (isBench(what) ? { ...benchLimits[what], source: commonPractice } : null)
  const zones = limit ? zonesOf(limit) : what === 'return-time' ? returnTimeZones : null
  if (!zones) return { what, value, verdict: 'cannot-tell', zones: [], source: null }
  return { what, value, verdict: judge(value, zones, halfWidth), zones, source: limit?.source ?? commonPractice }
}
