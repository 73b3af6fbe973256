/** When a unit's lower legs are due again, reckoned from the last job here that did them. */
import { dueFrom, type Id, type JobState } from '@legwork/trade'

export interface BenchDue {
  /** ISO 8601 day. */
  date: string
  over: boolean
}

/**
 * The due date of a unit that is on the bench or booked, from its last finished job with that service.
 *
 * @returns null where no such job is here, or the rider has not said how much is ridden
 */
export function benchDue(
  jobs: readonly { state: JobState }[],
  unit: Id | null,
  hoursPerWeek: number | null,
  now: string,
): BenchDue | null {
  if (unit === null || hoursPerWeek === null || !(hoursPerWeek > 0 && hoursPerWeek <= 60)) return null
  const done = jobs
    .map(({ state }) => state)
    .filter((state) => state.opened?.unit === unit && state.handedOver && state.plan?.services.includes('lower-legs'))
    .map((state) => state.handedOver?.at ?? '')
    .sort()
    .at(-1)
  if (!done) return null
  const { date } = dueFrom({ service: 'lower-legs', hoursPerWeek, from: done.slice(0, 10) })
  return { date, over: date <= now.slice(0, 10) }
}
