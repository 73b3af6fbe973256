import { seededDraws } from '../numerics/random.ts'
import { type Found, refuse, stopAt, within } from '../refusal/found.ts'
import { dayWithin } from '../ride/instant.ts'

export interface DueQuestion {
  /** Wear hours still to ride [h]; 0 or less is due now. */
  readonly hoursLeft: number
  /** The rider's own weeks, wear hours in each [h]. */
  readonly weeks: readonly number[]
  /** ISO 8601, a day or an instant. */
  readonly from: string
  /** A whole number; the same seed gives the same dates. */
  readonly seed?: number
}

/** Days, ISO 8601; null where it is not within five years. */
export interface DueDates {
  /** One in ten is due by then: the early date. */
  p10: string | null
  p50: string | null
  p90: string | null
}

const day = 86_400_000
const horizonDays = 5 * 365.25
export const dueDraws = 2000

/**
 * Dates by which one, five and nine in ten draws are due: the smallest that so many reach, in whole days from `from`.
 *
 * @param days  of each draw from `from`; beyond five years counts as never
 * @param from  milliseconds since 1970
 * @returns days, ISO 8601; null beyond five years
 * @source R. J. Hyndman, Y. Fan, Am. Stat. 50 (1996) 361, type 1: the k-th of n draws, k = ⌈share·n⌉
 * @example dueDates([9, 1, 8, 2, 7, 3, 6, 4, 5, 10], 0).p50 // "1970-01-06"
 */
export function dueDates(days: readonly number[], from: number): DueDates {
  const sorted = [...days].sort((one, other) => one - other)
  const at = (share: number): string | null => {
    const days = sorted[Math.ceil(share * sorted.length) - 1] ?? Number.POSITIVE_INFINITY
    if (days > horizonDays) return null
    // A hair over a whole day is the rounding of a sum, not a day more.
    return new Date(from + Math.ceil(days - 1e-9) * day).toISOString().slice(0, 10)
  }
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) }
}

/** Days until so many hours are ridden, weeks drawn with replacement, a week's hours even over its days. */
function daysUntil(hoursLeft: number, weeks: readonly number[], chance: () => number): number {
  let left = hoursLeft
  for (let days = 0; days <= horizonDays; days += 7) {
    const hours = weeks[Math.floor(chance() * weeks.length)] ?? 0
    if (hours >= left) return days + (7 * left) / hours
    left -= hours
  }
  return Number.POSITIVE_INFINITY
}

/**
 * When a service is due: the remaining hours ridden through the rider's own weeks, 2,000 bootstrap draws of whole weeks.
 *
 * @param question  hoursLeft −10 000 … 10 000 h; 1 … 520 weeks of 0 … 168 h
 * @returns p10, p50, p90: days
 * @throws Refusal naming every field that can't be
 * @source B. Efron, Ann. Stat. 7 (1979) 1, the bootstrap
 * @example due({ hoursLeft: 45, weeks: [5], from: '2026-05-02' }).dates.p50 // "2026-07-04"
 */
export function due(question: DueQuestion): { dates: DueDates } {
  const { hoursLeft, weeks, seed = 1 } = question
  let found: Found = within(null, '', 'hoursLeft', hoursLeft, 'number', -10_000, 10_000, 'Give hours.')
  if (weeks.length < 1 || weeks.length > 520) {
    const next = 'Give the hours of some recent weeks; 0 for a week without a ride.'
    found = refuse(found, 'weeks', 'wrong-count', `${weeks.length} weeks`, '1 to 520 weeks', next)
  }
  weeks.slice(0, 520).forEach((hours, index) => {
    found = within(found, '', `weeks[${index}]`, hours, 'number', 0, 168, 'Give the hours of one week.')
  })
  if (!Number.isSafeInteger(seed)) {
    found = refuse(found, 'seed', 'not-whole', String(seed), 'a whole number', 'Leave it out for 1.')
  }
  const { found: all, time } = dayWithin(found, 'from', question.from)
  stopAt(all)
  if (hoursLeft <= 0) return { dates: dueDates([0], time) }
  const chance = seededDraws(seed)
  return {
    dates: dueDates(
      Array.from({ length: dueDraws }, () => daysUntil(hoursLeft, weeks, chance)),
      time,
    ),
  }
}
