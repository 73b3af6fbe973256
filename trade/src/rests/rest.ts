/** A rest as pages show it, and how it stands at a moment. */
import type { Id } from '../journal/entry.ts'
import type { RestKind } from './rest-kinds.ts'
import { type Moment, type RestClock, type Rested, rested } from './rested.ts'

export interface Rest {
  kind: RestKind
  entry: Id
  /** At least so long [min]. */
  wanted: number
  clock: RestClock
  /** How long it was; null while it rests. */
  over: Rested | null
}

/**
 * How a rest stands for a station that looks at it.
 *
 * @returns the minutes that are left, 0 where it is over; null where no clock here can tell: it is waited for again
 * @example restNow(rest, { station, clock: { boot, reading }, madeAt: now, receivedAt: null }) // 4.2
 */
export function restNow({ clock, wanted, over }: Rest, now: Moment, offline = false): number | null {
  const { minutes } = over ?? rested(clock, now, offline)
  return minutes === null ? null : Math.max(0, wanted - minutes)
}
