/**
 * Limits of bench measurements where the sheet has none: common practice, no source. 'Fail' means talk about it, not scrap.
 */
import type { KindName } from '@legwork/engine'
import type { Bounds, Sheet, Source, UnitKind } from '../sheets/sheet.ts'
import { judge, type Verdict, type Zone, zonesOf } from './judge.ts'

export const commonPractice: Source = {
  kind: 'common-practice',
  document: null,
  revision: null,
  page: null,
  person: null,
  at: null,
  instrument: null,
}

interface BenchLimit {
  /** What the measurement is, so that it is read and written in its own measure. */
  kind: KindName
  /** [SI] for every kind of unit, or for each kind that has one. */
  bounds: Bounds | { [K in UnitKind]?: Bounds }
}

const mm = 1e-3
const forks = (bounds: Bounds) => ({ 'fork-air': bounds, 'fork-coil': bounds })
const shocks = (bounds: Bounds) => ({ 'shock-air': bounds, 'shock-coil': bounds })
const above = (watch: number, fail: number): Bounds => ({ watch, fail })
/** There is no zone to watch: it is good or it is not. */
const failAbove = (fail: number): Bounds => ({ fail })

/** Common practice, no source. */
export const benchLimits = {
  'spring-load-off': { kind: 'fraction', bounds: above(0.1, 0.15) },
  friction: {
    kind: 'force',
    bounds: {
      'fork-air': above(25, 45),
      'fork-coil': above(15, 30),
      'shock-air': above(70, 120),
      'shock-coil': above(15, 30),
    },
  },
  breakaway: { kind: 'force', bounds: forks(above(40, 70)) },
  'breakaway-ratio': { kind: 'number', bounds: above(1.5, 2) },
  'leak-10-min': { kind: 'fraction', bounds: above(0.01, 0.02) },
  'leak-24-h': { kind: 'fraction', bounds: above(0.03, 0.06) },
  'short-of-length': {
    kind: 'length',
    bounds: { ...forks(above(2 * mm, 5 * mm)), ...shocks(above(1 * mm, 5 * mm)) },
  },
  'travel-off': { kind: 'length', bounds: above(3 * mm, 6 * mm) },
  /** A fork from 110 to 10 mm at the card's setting; a shock from 70 to 10 % of its stroke. */
  'return-time': {
    kind: 'duration',
    bounds: {
      ...forks({ failBelow: 0.1, watchBelow: 0.14, watch: 0.24, fail: 0.4 }),
      ...shocks({ failBelow: 0.05, watchBelow: 0.07, watch: 0.2, fail: 0.3 }),
    },
  },
  'return-closed-over-open': { kind: 'number', bounds: { failBelow: 1.3, watchBelow: 2 } },
  'return-warm-over-cold': { kind: 'number', bounds: { failBelow: 0.65, watchBelow: 0.8 } },
  'repeat-spread': { kind: 'fraction', bounds: above(0.08, 0.15) },
  'lock-out-creep': { kind: 'length', bounds: above(5 * mm, 10 * mm) },
  'dead-zone': { kind: 'length', bounds: above(2 * mm, 4 * mm) },
  clearance: { kind: 'length', bounds: forks(above(0.12 * mm, 0.2 * mm)) },
  'stanchion-out-of-round': { kind: 'length', bounds: forks(above(0.02 * mm, 0.04 * mm)) },
  'stanchion-run-out': { kind: 'length', bounds: forks(above(0.1 * mm, 0.15 * mm)) },
  'bare-patch': { kind: 'length', bounds: failAbove(3 * mm) },
  'air-shaft-run-out': { kind: 'length', bounds: failAbove(0.15 * mm) },
  'damper-shaft-run-out': { kind: 'length', bounds: above(0.05 * mm, 0.1 * mm) },
  'shock-shaft-run-out': { kind: 'length', bounds: shocks(above(0.03 * mm, 0.08 * mm)) },
  'mount-play': { kind: 'length', bounds: shocks(above(0.2 * mm, 0.4 * mm)) },
  'bumper-shortened': { kind: 'fraction', bounds: failAbove(0.15) },
  'coil-rate-off': { kind: 'fraction', bounds: above(0.05, 0.08) },
  'coil-shortened': { kind: 'fraction', bounds: failAbove(0.02) },
} as const satisfies Record<string, BenchLimit>

export type Judgeable = keyof typeof benchLimits
/** Object.keys widens the keys of a constant table to string. */
export const judgeables = Object.keys(benchLimits) as readonly Judgeable[]
export const isJudgeable = (what: string): what is Judgeable => Object.hasOwn(benchLimits, what)

const isOfKinds = (bounds: BenchLimit['bounds']): bounds is { [K in UnitKind]?: Bounds } =>
  Object.keys(bounds).some((key) => key.startsWith('fork-') || key.startsWith('shock-'))

/**
 * The limit of common practice for a measurement on a kind of unit, or null where there is none.
 *
 * @example boundsFor('friction', 'fork-coil') // { watch: 15, fail: 30 }
 */
export function boundsFor(what: string, kind: UnitKind): Bounds | null {
  if (!isJudgeable(what)) return null
  const { bounds }: BenchLimit = benchLimits[what]
  return isOfKinds(bounds) ? (bounds[kind] ?? null) : bounds
}

export interface Finding {
  what: string
  value: number
  verdict: Verdict
  zones: readonly Zone[]
  /** Null where there is no limit: then nobody judges. */
  source: Source | null
}

/**
 * Judges a measurement: by the sheet's limit, else by common practice for its kind of unit, else not at all (cannot tell).
 *
 * @param value  [SI]
 * @param sheet  null: judged as an air fork
 * @param halfWidth  what the instrument leaves open [SI]
 * @example judgeMeasured('friction', 52, null).verdict // 'fail'
 */
export function judgeMeasured(what: string, value: number, sheet: Sheet | null, halfWidth = 0): Finding {
  const own = sheet?.limits[what]
  const bounds = own ?? boundsFor(what, sheet?.kind ?? 'fork-air')
  if (!bounds) return { what, value, verdict: 'cannot-tell', zones: [], source: null }
  const zones = zonesOf(bounds)
  return { what, value, verdict: judge(value, zones, halfWidth), zones, source: own?.source ?? commonPractice }
}
