/** What of a job's work comes round again: its hours, and the day where the rider's hours a week are known. */
import type { JobState } from '../journal/job-state.ts'
import { isServiceId, type ServiceId } from '../procedures/procedures.ts'
import { type Due, dueFrom } from './due-from.ts'
import { type Condition, conditionFactors, intervals } from './intervals.ts'

export interface NextService {
  service: ServiceId
  /** From now [h]. */
  hours: { low: number; high: number }
  /** Null where nobody said how many hours a week. */
  due: Due | null
  /** What shortened it. */
  conditions: readonly Condition[]
}

/** Heavier than this with kit, a fork is due sooner [kg] (common practice, no source). */
const heavy = 95

/**
 * The services to come after this job, the soonest first: those that were agreed to, and the lower legs wherever fresh bath
 * oil went in.
 *
 * @param rider  hours a week [h] and mass with kit [kg], null where nobody said
 * @param from   day of reckoning, ISO 8601
 * @example nextServices(state, { hoursPerWeek: 5, mass: 82 }, '2026-05-02')[0].hours // { low: 30, high: 60 }
 */
export function nextServices(
  { plan, steps }: Pick<JobState, 'plan' | 'steps'>,
  rider: { hoursPerWeek: number | null; mass: number | null },
  from: string,
): NextService[] {
  if (!plan || plan.answer === 'no') return []
  const oiled = steps.some((one) => one.step === 'oil-in')
  const services = new Set([...plan.services.filter(isServiceId), ...(oiled ? (['lower-legs'] as const) : [])])
  const conditions: readonly Condition[] = rider.mass !== null && rider.mass > heavy ? ['over-95-kg'] : []
  const factor = conditions.reduce((product, one) => product * conditionFactors[one], 1)
  const { hoursPerWeek } = rider
  return [...services]
    .map((service): NextService => {
      const { low, high } = intervals[service]
      return {
        service,
        hours: { low: Math.round(low * factor), high: Math.round(high * factor) },
        due: hoursPerWeek ? dueFrom({ service, hoursPerWeek, from, conditions }) : null,
        conditions,
      }
    })
    .sort((one, other) => one.hours.low - other.hours.low)
}
