/** Judging a measured value against a limit: pass, watch, fail, or cannot tell where the instrument's doubt reaches over it. */
import { Refusal } from '@legwork/engine'
import type { Bounds } from '../sheets/sheet.ts'

export type Verdict = 'pass' | 'watch' | 'fail' | 'cannot-tell'
const order: readonly Verdict[] = ['pass', 'watch', 'fail']

/** One zone of a strip of limits: from `from` upwards it is so judged. */
export interface Zone {
  from: number
  verdict: 'pass' | 'watch' | 'fail'
}

/**
 * Bounds as zones, rising. Above `watch` and `fail` it is too much, below `watchBelow` and `failBelow` too little.
 *
 * @example zonesOf({ failBelow: 1.3, watchBelow: 2 }).map((zone) => zone.verdict) // ['fail', 'watch', 'pass']
 */
export function zonesOf(bounds: Bounds): readonly Zone[] {
  const { watch, fail, watchBelow, failBelow } = bounds
  const zones: Zone[] = []
  let from = Number.NEGATIVE_INFINITY
  const upTo = (limit: number | undefined, verdict: Zone['verdict']): void => {
    if (limit === undefined) return
    zones.push({ from, verdict })
    from = limit
  }
  upTo(failBelow, 'fail')
  upTo(watchBelow, 'watch')
  zones.push({ from, verdict: 'pass' })
  if (watch !== undefined) zones.push({ from: watch, verdict: 'watch' })
  if (fail !== undefined) zones.push({ from: fail, verdict: 'fail' })
  return zones
}

/** How far a value lies into a zone whose limit is `from`; a billionth is rounding. */
function isIn(zones: readonly Zone[], index: number, value: number): boolean {
  const zone = zones[index]
  if (!zone) return false
  const slack = 1e-9 * Math.max(1, Math.abs(zone.from))
  const before = zones[index - 1]
  // A limit itself belongs to the better of its two zones: 2 mm short of '≤ 2 mm' passes.
  const better = before !== undefined && order.indexOf(zone.verdict) < order.indexOf(before.verdict)
  return before === undefined || (better ? value >= zone.from - slack : value > zone.from + slack)
}

function zoneAt(zones: readonly Zone[], value: number): number {
  return zones.findLastIndex((_, index) => isIn(zones, index, value))
}

/**
 * The verdict on a value, with the instrument's doubt.
 *
 * @param value  [SI]
 * @param zones  rising; the first from −∞
 * @param halfWidth  half of the band that the instrument leaves [SI], 0 where it does not matter
 * @returns cannot-tell where the band lies in zones that are judged differently
 * @throws Refusal for a value that is no number
 * @example judge(0.00015, zonesOf({ watch: 0.00012, fail: 0.0002 }), 0) // 'watch'
 */
export function judge(value: number, zones: readonly Zone[], halfWidth = 0): Verdict {
  if (!Number.isFinite(value) || !(halfWidth >= 0))
    throw new Refusal([
      {
        field: 'value',
        code: 'not-a-number',
        came: `${value} ± ${halfWidth}`,
        allowed: 'a number, with a doubt of 0 or more',
        next: 'Measure again.',
      },
    ])
  const touched = zones.slice(zoneAt(zones, value - halfWidth), zoneAt(zones, value + halfWidth) + 1)
  const [first, ...rest] = new Set(touched.map((zone) => zone.verdict))
  return first !== undefined && rest.length === 0 ? first : 'cannot-tell'
}

/** The worst of several verdicts; cannot tell counts less than watch, because it says nothing bad. */
export function worst(verdicts: readonly Verdict[]): Verdict {
  const bad = [...order].reverse().find((verdict) => verdict !== 'pass' && verdicts.includes(verdict))
  return bad ?? (verdicts.includes('cannot-tell') ? 'cannot-tell' : 'pass')
}
