/** What comes round on a unit: of every service that was done here, the last time, and when it is due again. */

import type { Id } from '../journal/entry.ts'
import type { JobState } from '../journal/job-state.ts'
import { type NextService, nextServices } from './next-services.ts'

export interface DueOfUnit extends NextService {
  /** When it was done last, ISO 8601 day. */
  since: string
}

/**
 * From the jobs that are here, the soonest first; a service counts from the hand-over of the last job that had it.
 *
 * @param jobs   of any unit, in any order
 * @param rider  hours a week [h] and mass with kit [kg], null where nobody said
 * @returns      nothing for a unit that was never serviced here
 * @source hours between services: common practice, no source
 * @example dueOfUnit(jobs, unit.id, rider)[0]?.due?.date // '2026-07-04'
 */
export function dueOfUnit(
  jobs: readonly { state: Pick<JobState, 'opened' | 'handedOver' | 'plan' | 'steps'> }[],
  unit: Id,
  rider: { hoursPerWeek: number | null; mass: number | null },
): readonly DueOfUnit[] {
  const last = new Map<string, DueOfUnit>()
  const ended = jobs
    .flatMap(({ state }) => (state.opened?.unit === unit && state.handedOver ? [state] : []))
    .sort((one, other) => (one.handedOver?.at ?? '').localeCompare(other.handedOver?.at ?? ''))
  for (const state of ended) {
    const since = (state.handedOver?.at ?? '').slice(0, 10)
    for (const next of nextServices(state, rider, since)) last.set(next.service, { ...next, since })
  }
  const dayOf = ({ due, since }: DueOfUnit): string => due?.date ?? since
  return [...last.values()].sort((one, other) => dayOf(one).localeCompare(dayOf(other)))
}
