/** When the next service is due: hours left over the rider's hours a week. */
import { Refusal } from '@legwork/engine'
import { type Condition, conditionFactors, type DueService, intervals } from './intervals.ts'

export interface Due {
  /** Hours from the service to the next [h]. */
  interval: number
  /** Of those, still to ride [h]. */
  hoursLeft: number
  /** Days, ISO 8601: half of riders alike are due by `date`, one in ten by `early`, nine in ten by `late`. */
  date: string
  early: string
  late: string
  source: 'makers-sheet' | 'common-practice'
}

const day = 86_400_000
/** How far a rider's own hours a week are off: a tenth rides less, a tenth more than twice (common practice, no source). */
const spread = { slow: 0.7, fast: 1.5 }

function dayAfter(from: number, days: number): string {
  return new Date(from + Math.max(0, Math.ceil(days - 1e-9)) * day).toISOString().slice(0, 10)
}

/**
 * The next due date of a service.
 *
 * Hours left = interval · Π factors − hours since; date = from + hours left ÷ hours a week, in whole days. Interval: the
 * sheet's where it has one, else the middle of the usual range.
 *
 * @param hoursPerWeek  as the rider says [h], above 0 up to 60
 * @param since         hours ridden since the service [h], 0 or more
 * @param from          day of reckoning, ISO 8601
 * @param sheetInterval what the maker's sheet says [h]
 * @throws Refusal naming the field, what came and what is allowed
 * @source hours between services: common practice, no source
 * @example dueFrom({ service: 'lower-legs', hoursPerWeek: 5, from: '2026-05-02' }).date // '2026-07-04'
 */
export function dueFrom(given: {
  service: DueService
  hoursPerWeek: number
  from: string
  since?: number
  conditions?: readonly Condition[]
  sheetInterval?: number | null
}): Due {
  const { service, hoursPerWeek, since = 0, conditions = [], sheetInterval = null } = given
  if (!(hoursPerWeek > 0 && hoursPerWeek <= 60))
    throw new Refusal([
      {
        field: 'hoursPerWeek',
        code: 'out-of-range',
        came: `${hoursPerWeek} h`,
        allowed: 'above 0 up to 60 h',
        next: 'Ask the rider again.',
      },
    ])
  if (!(since >= 0 && Number.isFinite(since)))
    throw new Refusal([
      {
        field: 'since',
        code: 'out-of-range',
        came: `${since} h`,
        allowed: '0 h or more',
        next: 'Ask when it was last serviced.',
      },
    ])
  if (sheetInterval !== null && !(sheetInterval > 0 && Number.isFinite(sheetInterval)))
    throw new Refusal([
      {
        field: 'sheetInterval',
        code: 'out-of-range',
        came: `${sheetInterval} h`,
        allowed: 'above 0 h',
        next: 'Look at the sheet once more.',
      },
    ])
  const from = Date.parse(given.from.length === 10 ? `${given.from}T00:00:00.000Z` : given.from)
  if (Number.isNaN(from))
    throw new Refusal([
      {
        field: 'from',
        code: 'not-a-number',
        came: given.from,
        allowed: 'a day like 2026-05-02',
        next: 'Give the day of the service.',
      },
    ])
  const { low, high } = intervals[service]
  const factor = conditions.reduce((product, condition) => product * conditionFactors[condition], 1)
  const interval = (sheetInterval ?? (low + high) / 2) * factor
  const hoursLeft = Math.max(0, interval - since)
  const days = (hoursLeft / hoursPerWeek) * 7
  return {
    interval,
    hoursLeft,
    date: dayAfter(from, days),
    early: dayAfter(from, days / spread.fast),
    late: dayAfter(from, days / spread.slow),
    source: sheetInterval === null ? 'common-practice' : 'makers-sheet',
  }
}
