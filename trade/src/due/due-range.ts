/** When the next service is due, where hours are known as ranges: dates by which one, five and nine in ten are due. */
import { type DueDates, dueDates, dueDraws, Refusal, seededDraws } from '@legwork/engine'
import { type DueService, intervals } from './intervals.ts'

/** From … to, both ends as likely as what is between [h]. */
export interface HoursRange {
  low: number
  high: number
}

function checked(field: string, { low, high }: HoursRange, least: number, most: number): void {
  if (Number.isFinite(low) && Number.isFinite(high) && low >= least && low <= high && high <= most) return
  const next = 'Ask the rider for a range.'
  const allowed = `a range inside ${least} … ${most} h, low before high`
  throw new Refusal([{ field, code: 'out-of-range', came: `${low} … ${high} h`, allowed, next }])
}

/**
 * Draws hours a week, hours since and the interval from their ranges: date = from + 7·(interval − since)/hours a week days,
 * none before `from`; the dates are those that 10, 50 and 90 % of the draws reach, in whole days, null beyond five years.
 * Where the rider's own weeks are known, `due` of the engine draws them instead.
 *
 * @param hoursPerWeek  [h], 0.1 … 60
 * @param since         ridden since the service [h], 0 … 10 000
 * @param interval      the sheet's, or the usual range [h], 1 … 1000
 * @param seed          a whole number; the same seed gives the same dates
 * @throws Refusal naming the range that is none
 * @source rectangular ranges; usual hours between services are common practice, no source
 * @example dueRange({ service: 'lower-legs', hoursPerWeek: { low: 3, high: 6 }, from: '2026-05-02', seed: 1 }).p50
 */
export function dueRange(given: {
  service: DueService
  hoursPerWeek: HoursRange
  from: string
  seed: number
  since?: HoursRange
  interval?: HoursRange
}): DueDates {
  const { hoursPerWeek, since = { low: 0, high: 0 }, interval = intervals[given.service], seed } = given
  checked('hoursPerWeek', hoursPerWeek, 0.1, 60)
  checked('since', since, 0, 10_000)
  checked('interval', interval, 1, 1000)
  const from = Date.parse(`${given.from.slice(0, 10)}T00:00:00.000Z`)
  if (Number.isNaN(from)) {
    const next = 'Give the day of the service.'
    throw new Refusal([
      { field: 'from', code: 'not-a-number', came: given.from, allowed: 'a day like 2026-05-02', next },
    ])
  }
  const chance = seededDraws(seed)
  const drawn = ({ low, high }: HoursRange): number => low + (high - low) * chance()
  const days = Array.from({ length: dueDraws }, () => {
    const left = Math.max(0, drawn(interval) - drawn(since))
    return (left / drawn(hoursPerWeek)) * 7
  })
  return dueDates(days, from)
}
