/**
 * How long something has rested: rings in oil, warm air, a leak-down. Told by one station's monotonic clock, or by two
 * receipts of the server; never by the wall clocks of two stations, which may differ by any amount.
 */
import type { AnyEntry, Id, Instant, StationClock } from '../journal/entry.ts'

/** A moment as the book knows it. */
export interface Moment {
  station: Id
  clock: StationClock | null
  madeAt: Instant
  /** Null while it is only on its station. */
  receivedAt: Instant | null
}

export interface RestClock {
  entry: Id
  began: Moment
  /** Said by a person who entered it later or from the paper book. */
  said: Instant | null
  seq: number | null
  /** The first reading of each other station's clock once that station had the beginning in its book, by its boot. */
  known: Readonly<Record<string, number>>
  /** When it was over; null while it rests. */
  ended: Moment | null
}

/** `by`: which clock told the minutes. */
export interface Rested {
  /** At least so long; null where no clock can tell. */
  minutes: number | null
  by: 'station' | 'receipt' | 'said' | null
  /** Minutes between the station's clock and the server's where that is more than one: its receipt then tells nothing. */
  apart: number | null
}

/** Two clocks that differ by more than this are not compared (common practice, no source). */
const clocksAgree = 1
const minute = 60_000

export function momentOf({ station, clock, madeAt, receivedAt }: AnyEntry): Moment {
  return { station, clock: clock ?? null, madeAt, receivedAt }
}

/** A rest begins with this entry. */
export function restBegun(entry: AnyEntry): RestClock {
  const said = entry.standing.mode === 'now' ? null : entry.standing.doneAt
  return { entry: entry.id, began: momentOf(entry), said, seq: entry.seq, known: {}, ended: null }
}

/**
 * Any later entry of a station that had the beginning in its book, as the one that wrote it has: from its reading on, that
 * station's clock can tell too.
 */
export function restKnown(rest: RestClock, entry: AnyEntry): RestClock {
  const { clock, seen, station } = entry
  const knew = station === rest.began.station || (rest.seq !== null && seen >= rest.seq)
  if (!clock || !knew || entry.id === rest.entry) return rest
  if (clock.boot === rest.began.clock?.boot || clock.boot in rest.known) return rest
  return { ...rest, known: { ...rest.known, [clock.boot]: clock.reading } }
}

function byStation(
  { began, known }: RestClock,
  { station, clock }: Moment,
): { minutes: number; exact: boolean } | null {
  if (!clock) return null
  const exact = began.clock?.boot === clock.boot && began.station === station
  const from = exact ? began.clock?.reading : known[clock.boot]
  return from === undefined ? null : { minutes: Math.max(0, (clock.reading - from) / minute), exact }
}

function byReceipt({ began, said }: RestClock, to: Moment, arrived: Instant | null): Rested {
  const nothing: Rested = { minutes: null, by: null, apart: null }
  if (said !== null) {
    const minutes = (Date.parse(arrived ?? to.madeAt) - Date.parse(said)) / minute
    return { minutes: Math.max(0, minutes), by: 'said', apart: null }
  }
  if (arrived === null || began.receivedAt === null) return nothing
  const apart = Math.abs(Date.parse(arrived) - Date.parse(to.madeAt)) / minute
  if (apart > clocksAgree) return { ...nothing, apart }
  return {
    minutes: Math.max(0, (Date.parse(arrived) - Date.parse(began.receivedAt)) / minute),
    by: 'receipt',
    apart: null,
  }
}

/**
 * How long it has rested at least, at a moment [min].
 *
 * One boot of one station: `reading − reading`. Else `receipt − receipt`, where the later line's station and the server
 * agree within a minute: a line that came late, or from a station whose clock is wrong, could have been made at any time
 * before. A station that had the beginning in its book can tell from then on by its own clock. A rest that a person entered
 * later counts from when they say it began.
 *
 * @param to       with `receivedAt` null for a line that is being written
 * @param offline  whether the station that writes it has no line to the server: then nothing tells the server's time
 * @example rested(restBegun(filling), momentOf(leakDownStart)).minutes // 20
 */
export function rested(rest: RestClock, to: Moment, offline = false): Rested {
  const own = byStation(rest, to)
  if (own?.exact) return { minutes: own.minutes, by: 'station', apart: null }
  const shop = byReceipt(rest, to, to.receivedAt ?? (offline ? null : to.madeAt))
  return own && own.minutes >= (shop.minutes ?? 0) ? { minutes: own.minutes, by: 'station', apart: shop.apart } : shop
}
