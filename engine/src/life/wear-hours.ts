import type { Second } from '../quantities/si.ts'
import { type Found, refuse, stopAt, within } from '../refusal/found.ts'

export interface Ride {
  readonly movingTime: Second
  /** Names of conditions; each counts once. */
  readonly conditions: readonly string[]
}

export interface WearHours {
  /** [h] */
  hours: number
}

/**
 * Hours as they wear: Σ moving time/Π condition factors. A factor of 0.5 halves the interval, so an hour counts as two.
 *
 * @param rides    up to 100 000; moving time 0 … 10 000 h [s]
 * @param factors  what a condition does to an interval, 0.01 … 100
 * @returns hours [h]
 * @throws Refusal naming every field that can't be; a condition without a factor is refused
 * @source proportional wear; the factors are common practice, no source
 * @example wearHours([{ movingTime: 7200, conditions: ['wet-mud'] }], { 'wet-mud': 0.6 }).hours // 3.3333
 */
export function wearHours(rides: readonly Ride[], factors: Readonly<Record<string, number>>): WearHours {
  let found: Found = null
  if (rides.length > 100_000) {
    const next = 'Add up older rides first.'
    found = refuse(found, 'rides', 'wrong-count', `${rides.length} rides`, 'at most 100,000 rides', next)
    stopAt(found)
  }
  for (const [condition, factor] of Object.entries(factors)) {
    found = within(found, 'factors.', condition, factor, 'number', 0.01, 100, 'Give what it does to an interval.')
  }
  const known = Object.keys(factors).join(', ')
  let hours = 0
  for (const [index, { movingTime, conditions }] of rides.entries()) {
    const at = `rides[${index}].`
    found = within(found, at, 'movingTime', movingTime, 'duration', 0, 3.6e7, 'Give a time like "1:25:30".')
    let factor = 1
    for (const condition of new Set(conditions)) {
      const own = Object.hasOwn(factors, condition) ? factors[condition] : undefined
      if (own !== undefined) factor *= own
      else {
        const field = `${at}conditions[${conditions.indexOf(condition)}]`
        found = refuse(
          found,
          field,
          'not-a-choice',
          JSON.stringify(condition),
          `one of ${known}`,
          'Choose one of these.',
        )
      }
    }
    hours += movingTime / 3600 / factor
  }
  stopAt(found)
  return { hours }
}
