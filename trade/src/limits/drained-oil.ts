/** Drained oil as evidence of how late a service is: the share that was left (common practice, no source). */
import { Refusal } from '@legwork/engine'
import { type Message, message } from '../words/words.ts'
import type { Verdict } from './judge.ts'

export interface DrainedFinding {
  /** Drained over the sheet's [-]. */
  share: number
  verdict: Verdict
  says: Message
}

/**
 * What the drained volume of a leg tells: 80 % and more is in its interval, 50–80 % due, 20–50 % late by half again to
 * three times, under 20 % three times or more; over 150 % an earlier mis-fill or a leaking damper.
 *
 * @param drained  [m³]
 * @param filled   what the sheet says [m³], above 0
 * @throws Refusal where a volume is impossible
 * @example judgeDrained(7e-6, 10e-6).verdict // 'watch'
 */
export function judgeDrained(drained: number, filled: number): DrainedFinding {
  if (!(drained >= 0) || !(filled > 0) || !Number.isFinite(drained))
    throw new Refusal([
      {
        field: 'drained',
        code: 'out-of-range',
        came: `${drained} of ${filled} m³`,
        allowed: 'volumes of 0 or more',
        next: 'Read the measure once more.',
      },
    ])
  const share = drained / filled
  if (share > 1.5 + 1e-9) return { share, verdict: 'fail', says: message('drained.over') }
  if (share < 0.2 - 1e-9) return { share, verdict: 'fail', says: message('drained.far-too-late') }
  if (share < 0.5 - 1e-9) return { share, verdict: 'fail', says: message('drained.late') }
  if (share < 0.8 - 1e-9) return { share, verdict: 'watch', says: message('drained.due') }
  return { share, verdict: 'pass', says: message('drained.in-interval') }
}

export interface OilLook {
  sign: string
  verdict: Verdict
  says: Message
}

/** Signs of oil that came out, and what each tells beside its volume. */
const looks: readonly { sign: string; verdict: Verdict; says: Message }[] = [
  { sign: 'S29', verdict: 'fail', says: message('drained.look.milky') },
  { sign: 'S27', verdict: 'watch', says: message('drained.look.dark') },
]

/**
 * What the look of drained oil tells, by the signs that were seen; worst first (common practice, no source).
 *
 * @param isPresent  whether a sign was noted as present
 * @example judgeOilLook((sign) => sign === 'S29')[0]?.verdict // 'fail'
 */
export function judgeOilLook(isPresent: (sign: string) => boolean): readonly OilLook[] {
  return looks.filter(({ sign }) => isPresent(sign))
}
