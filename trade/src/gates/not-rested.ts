/** What is said where something has not rested long enough, or where no clock can tell how long it has. */
import type { Rested } from '../rests/rested.ts'
import { type Message, message } from '../words/words.ts'

/**
 * Null where it has rested.
 *
 * @param rested  null where nothing was put to rest
 * @param wanted  [min]
 * @example notRested({ minutes: 3, by: 'station', apart: null }, 5) // 2 min to wait.
 */
export function notRested(rested: Rested | null, wanted: number): Message | null {
  if (rested === null) return message('gate.rest.none')
  const { minutes, apart } = rested
  if (minutes !== null)
    return minutes >= wanted ? null : message('gate.rest.early', { minutes: Math.ceil(wanted - minutes) })
  return apart === null ? message('gate.rest.no-clock') : message('gate.rest.apart', { minutes: Math.round(apart) })
}
