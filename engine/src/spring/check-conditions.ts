import { figure } from '../quantities/kinds.ts'
import { ambientWithin, type Found, refuse, stopAt, within, withinIfGiven } from '../refusal/found.ts'
import { largestPressure } from './check-gas.ts'
import { checkSpring } from './check-spring.ts'
import { fullStroke } from './dimensions.ts'
import type { Process, Spring } from './spring.ts'

/** A stroke the unit can be at: 0 … fullStroke. */
export function strokeWithin(found: Found, name: string, value: number | undefined, end: number): Found {
  if (value === undefined || (value >= 0 && value <= end)) return found
  if (!Number.isFinite(value) || value < 0)
    return within(found, '', name, value, 'length', 0, end, 'Give a stroke from full length.')
  const allowed = `at most the end of the stroke (${figure(end, 'length')})`
  return refuse(
    found,
    name,
    'beyond-end',
    figure(value, 'length'),
    allowed,
    'Check the stroke; an overfilled leg ends early.',
  )
}

/**
 * The spring and the conditions it is asked under.
 *
 * @param spring   dimensions
 * @param process  pressure, air around, slow or fast
 * @param at       path of the spring, ending in a dot; the other fields stand beside the spring
 * @throws Refusal naming every field that can't be
 */
export function checkConditions(spring: Spring, process: Process, at: string): void {
  let found = checkSpring(null, spring, at)
  const beside = at.slice(0, Math.max(0, at.length - 'spring.'.length))
  if (process.ambient !== undefined) found = ambientWithin(found, beside, 'ambient', process.ambient)
  if (spring.kind === 'air') {
    const next = 'Give what the gauge shows, like "80 psi".'
    found = within(found, beside, 'pressure', process.pressure, 'pressure', 0, largestPressure, next)
  }
  found = withinIfGiven(
    found,
    beside,
    'exponent',
    process.exponent,
    'number',
    1,
    1.4,
    'Use 1 for slow, 1.3 for riding.',
  )
  if (found === null) {
    const end = fullStroke(spring)
    found = strokeWithin(found, `${beside}pressureAt`, process.pressureAt, end)
    found = strokeWithin(found, `${beside}startStroke`, process.startStroke, end)
    if (
      spring.kind === 'air' &&
      spring.second &&
      process.pressure !== undefined &&
      spring.second.pressure < process.pressure
    ) {
      const allowed = `at least the pressure of the first (${figure(process.pressure, 'pressure')})`
      const came = figure(spring.second.pressure, 'pressure')
      found = refuse(
        found,
        `${at}second.pressure`,
        'does-not-fit',
        came,
        allowed,
        'Fill the second chamber first, with the piston at rest.',
      )
    }
  }
  stopAt(found)
}
