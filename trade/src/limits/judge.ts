/** Judging a measured value against a limit: pass, watch, fail, or cannot tell where the instrument's doubt reaches over it. */
import { Refusal } from '@legwork/engine'
import type { Limit } from '../sheets/sheet.ts'

export type Verdict = 'pass' | 'watch' | 'fail' | 'cannot-tell'
const order: readonly Verdict[] = ['pass', 'watch', 'fail']

/** One zone of a strip of limits: from `from` upwards it is so judged. */
export interface Zone {
  from: number
  verdict: 'pass' | 'watch' | 'fail'
}

/** A sheet's limit (larger is worse) as zones. */
export function zonesOf(limit: Pick<Limit, 'watch' | 'fail'>): readonly Zone[] {
  return [
    { from: Number.NEGATIVE_INFINITY, verdict: 'pass' },
    { from: limit.watch, verdict: 'watch' },
    { from: limit.fail, verdict: 'fail' },
  ]
}

function at(value: number, zones: readonly Zone[]): 'pass' | 'watch' | 'fail' {
  // A limit itself still belongs to the better zone: 2 mm short of '≤ 2 mm' passes. A billionth is rounding.
  const found = zones.findLast(
    (zone) => value - zone.from > 1e-9 * Math.max(1, Math.abs(zone.from)) || zone.from === Number.NEGATIVE_INFINITY,
  )
  return found?.verdict ?? 'pass'
}

/**
 * The verdict on a value, with the instrument's doubt.
 *
 * @param value  [SI]
 * @param halfWidth  half of the band that the instrument leaves [SI], 0 where it does not matter
 * @param zones  rising; the first from −∞
 * @returns cannot-tell where both ends of the band are judged differently
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
  const low = at(value - halfWidth, zones)
  const high = at(value + halfWidth, zones)
  return low === high ? low : 'cannot-tell'
}

/** The worst of several verdicts; cannot tell counts less than watch, because it says nothing bad. */
export function worst(verdicts: readonly Verdict[]): Verdict {
  const bad = [...order].reverse().find((verdict) => verdict !== 'pass' && verdicts.includes(verdict))
  return bad ?? (verdicts.includes('cannot-tell') ? 'cannot-tell' : 'pass')
}
