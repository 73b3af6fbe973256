/** Returns that were timed, by the clicks they were timed at, out of a job's measurements. */
import type { ReleasedFrom } from '../journal/entry.ts'
import type { MeasuredEntry } from '../journal/job-state.ts'
import type { UnitKind } from '../sheets/sheet.ts'

export interface Released extends MeasuredEntry {
  release: ReleasedFrom
}

/** Repeats at one setting, over one stretch. */
export interface ReleasedAt {
  clicks: number | null
  from: number
  to: number
  readings: readonly Released[]
  /** Mean [s]. */
  time: number
  /** Largest less smallest over the mean; null for one reading. */
  spread: number | null
  /** The smallest difference that the film or the clock tells [s]. */
  resolution: number
}

/** A thumb on a stopwatch (common practice, no source) [s]. */
export const thumb = 0.1

/**
 * Where a return is timed: a fork from 110 to 10 mm, a shock from 70 to 10 % of its stroke (common practice, no source). A
 * fork too short for that is let go at 70 % too.
 *
 * @example returnMarks('shock-air', 0.06) // { from: 0.042, to: 0.006 }
 */
export function returnMarks(kind: UnitKind, stroke: number): { from: number; to: number } {
  if (kind.startsWith('fork-') && stroke >= 0.12) return { from: 0.11, to: 0.01 }
  const at = (share: number) => Math.round(share * stroke * 1e4) / 1e4
  return { from: at(0.7), to: at(0.1) }
}

const isReleased = (one: MeasuredEntry): one is Released => one.release !== undefined

/** The returns of a phase, most open first and closed last; of other marks than the last ones apart. */
export function releasesIn(measured: readonly MeasuredEntry[], phase: MeasuredEntry['phase']): readonly ReleasedAt[] {
  const groups = new Map<string, Released[]>()
  for (const one of measured.filter(isReleased)) {
    if (one.phase !== phase) continue
    const { clicks, from, to } = one.release
    const key = `${clicks} ${from} ${to}`
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return [...groups.values()]
    .flatMap((readings) => {
      const [first] = readings
      if (!first) return []
      const times = readings.map(({ reading }) => reading.value)
      const time = times.reduce((sum, one) => sum + one, 0) / times.length
      const steps = readings.map(({ release: { film } }) => (film ? 1 / film.perSecond : thumb))
      return [
        {
          ...first.release,
          readings,
          time,
          spread: times.length > 1 ? (Math.max(...times) - Math.min(...times)) / time : null,
          resolution: Math.max(...steps) / Math.sqrt(times.length),
        },
      ]
    })
    .sort((one, other) => (other.clicks ?? 0) - (one.clicks ?? 0))
}
