/** The last time a unit's lower legs were done here, and how much was ridden since. */
import type { Id, JobState } from '@legwork/trade'

export interface LastService {
  /** ISO 8601 day. */
  day: string
  /** Ridden since, as the rider reckons it [h]; null where the rider has not said how much is ridden. */
  hours: number | null
}

const week = 7 * 86_400_000

/**
 * From the jobs that are here: the unit's last one that was handed over with its lower legs done.
 *
 * @param hoursPerWeek  as the rider says [h]
 * @param now           ISO 8601
 * @returns null where no such job is here
 */
export function lastService(
  jobs: readonly { state: JobState }[],
  unit: Id | null,
  hoursPerWeek: number | null,
  now: string,
): LastService | null {
  const done = jobs
    .map(({ state }) => state)
    .filter(
      ({ opened, handedOver, plan }) => opened?.unit === unit && handedOver && plan?.services.includes('lower-legs'),
    )
    .map((state) => state.handedOver?.at ?? '')
    .sort()
    .at(-1)
  if (!done || unit === null) return null
  const day = done.slice(0, 10)
  if (hoursPerWeek === null || !(hoursPerWeek > 0 && hoursPerWeek <= 60)) return { day, hours: null }
  const hours = Math.max(0, ((Date.parse(now) - Date.parse(done)) / week) * hoursPerWeek)
  return { day, hours }
}
