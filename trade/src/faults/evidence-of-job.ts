/** What a job says of signs and tests: what was looked at part by part, measured and judged, asked and seen. */

import type { JobState } from '../journal/job-state.ts'
import type { Verdict } from '../limits/judge.ts'
import type { UnitKind } from '../sheets/sheet.ts'
import { faultNetwork } from './fault-network.ts'

export interface JobEvidence {
  readonly present: readonly string[]
  readonly absent: readonly string[]
}

/** A measurement that is such a sign or test where it fails, and is not where it passes. */
const measuredAs: Readonly<Record<string, string>> = {
  'short-of-length': 'S03',
  'dead-zone': 'S26',
  'leak-24-h': 'T03',
  'return-closed-over-open': 'T18',
  'return-warm-over-cold': 'T19',
  'lock-out-creep': 'T21',
  friction: 'T28',
  clearance: 'T30',
  'stanchion-run-out': 'T32',
  'mount-play': 'T34',
}

/** A part found sound was looked at for this: the marker line across the crown, the axle in the dropouts. */
const soundMeans = { crown: 'T33', dropouts: 'S33' } as const

function shows(kind: UnitKind, id: string): boolean {
  const has = ({ kinds }: { readonly kinds?: readonly string[] }) => kinds?.includes(kind) ?? true
  const sign = faultNetwork.signs.find((one) => one.id === id)
  if (sign) return has(sign)
  const test = faultNetwork.tests.find((one) => one.id === id)
  return faultNetwork.causes.some((cause) => has(cause) && test !== undefined && Object.hasOwn(test.links, cause.id))
}

/**
 * Signs and tests of a job that its kind of unit shows. What was noted last counts; what was noted as not looked at, and
 * what nobody noted, is unknown.
 */
export function evidenceOf(
  kind: UnitKind,
  state: Pick<JobState, 'signs' | 'chassis'>,
  judged: readonly { readonly what: string; readonly verdict: Verdict }[],
): JobEvidence {
  const found = new Map<string, 'present' | 'absent' | 'unknown'>()
  for (const [part, id] of Object.entries(soundMeans) as [keyof typeof soundMeans, string][]) {
    // The keys of the table above.
    if (state.chassis[part]?.verdict === 'sound') found.set(id, 'absent')
  }
  for (const { what, verdict } of judged) {
    const id = Object.hasOwn(measuredAs, what) ? measuredAs[what] : undefined
    if (id === undefined) continue
    // Of two legs the worse one is the sign.
    if (verdict === 'fail') found.set(id, 'present')
    else if (verdict === 'pass' && found.get(id) !== 'present') found.set(id, 'absent')
  }
  for (const { sign, state: noted } of state.signs) found.set(sign, noted)
  const ids = (wanted: 'present' | 'absent') =>
    [...found].flatMap(([id, is]) => (is === wanted && shows(kind, id) ? [id] : []))
  return { present: ids('present'), absent: ids('absent') }
}
