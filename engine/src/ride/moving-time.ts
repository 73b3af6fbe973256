import type { Metre, Second } from '../quantities/si.ts'
import { type Found, refuse, stopAt, within, withinIfGiven } from '../refusal/found.ts'
import { geodesicDistance } from './geodesic.ts'
import { instantWithin } from './instant.ts'

export interface TrackPoint {
  /** ISO 8601 with its offset, like 2026-05-02T10:00:00Z. */
  readonly time: string
  /** [°] on WGS 84. */
  readonly latitude: number
  readonly longitude: number
  readonly elevation?: Metre
}

export interface TrackRules {
  /** Slower is standing [m/s]; 1 km/h by default. */
  readonly minSpeed?: number
  /** A longer break between two points is left out; 120 s by default. */
  readonly maxGap?: Second
  /** Smaller changes of height are not counted; 5 m by default. */
  readonly climbThreshold?: Metre
}

export interface MovingTime {
  movingTime: Second
  elapsedTime: Second
  distance: Metre
  /** Null where no two points carry a height. */
  ascent: Metre | null
  descent: Metre | null
}

function pointsWithin(found: Found, points: readonly TrackPoint[]): { found: Found; times: number[] } {
  let all = found
  const times: number[] = []
  for (const [index, point] of points.entries()) {
    const at = `points[${index}].`
    const { found: read, time } = instantWithin(all, `${at}time`, point.time)
    all = within(read, at, 'latitude', point.latitude, 'angle', -90, 90, 'Give degrees north.')
    all = within(all, at, 'longitude', point.longitude, 'angle', -180, 180, 'Give degrees east.')
    const next = 'Give metres above the sea.'
    all = withinIfGiven(all, at, 'elevation', point.elevation, 'altitude', -500, 9000, next)
    const before = times.at(-1)
    if (before !== undefined && time < before) {
      const came = `${point.time}, before ${points[index - 1]?.time}`
      all = refuse(
        all,
        `${at}time`,
        'does-not-fit',
        came,
        'not before the point ahead of it',
        'Sort the points by time.',
      )
    }
    times.push(time)
    // One answer need not name every point of a long track.
    if (all && all.length >= 20) break
  }
  return { found: all, times }
}

/** Climb and descent: the height that counts moves only after a change of the threshold. */
function climber(threshold: Metre) {
  const climbed = { ascent: 0, descent: 0, known: false }
  let reference: number | null = null
  return {
    climbed,
    see(elevation: Metre) {
      if (reference === null) {
        reference = elevation
        return
      }
      climbed.known = true
      const change = elevation - reference
      if (Math.abs(change) < threshold) return
      if (change > 0) climbed.ascent += change
      else climbed.descent -= change
      reference = elevation
    },
    /** What was climbed in a gap was not ridden: a lift, a car. */
    startAgain() {
      reference = null
    },
  }
}

/**
 * Riding time of a track.
 *
 * Two points in a row are a gap where more than maxGap lies between; a gap counts for nothing. Otherwise their distance
 * counts, and their time where distance/time ≥ minSpeed.
 *
 * @param points  2 … 500 000, in order of time
 * @param rules   minSpeed 0 … 10 m/s, maxGap 1 … 86 400 s, climbThreshold 0 … 100 m
 * @returns moving and elapsed time [s], distance, ascent, descent [m]
 * @throws Refusal naming fields that can't be, the first twenty of them
 * @source WGS 84, NIMA TR8350.2; the rules are common practice
 * @example movingTime([{ time: '2026-05-02T10:00:00Z', latitude: 0, longitude: 0 }, { time: '2026-05-02T10:01:00Z', latitude: 0, longitude: 0.003 }]).distance // 333.958
 */
export function movingTime(points: readonly TrackPoint[], rules: TrackRules = {}): MovingTime {
  const { minSpeed = 1 / 3.6, maxGap = 120, climbThreshold = 5 } = rules
  let found = within(null, 'rules.', 'minSpeed', minSpeed, 'speed', 0, 10, 'Give a speed like "1 km/h".')
  found = within(found, 'rules.', 'maxGap', maxGap, 'duration', 1, 86_400, 'Give a time like "2 min".')
  found = within(found, 'rules.', 'climbThreshold', climbThreshold, 'altitude', 0, 100, 'Give a height like "5 m".')
  if (points.length < 2 || points.length > 500_000) {
    const allowed = '2 to 500,000 points'
    found = refuse(found, 'points', 'wrong-count', `${points.length} points`, allowed, 'Send the whole track.')
    stopAt(found)
  }
  const read = pointsWithin(found, points)
  stopAt(read.found)
  const { times } = read
  const { climbed, see, startAgain } = climber(climbThreshold)
  let moving = 0
  let distance = 0
  points.forEach((point, index) => {
    const before = points[index - 1]
    const time = ((times[index] ?? 0) - (times[index - 1] ?? 0)) / 1000
    if (before) {
      if (time > maxGap) startAgain()
      else {
        const way = geodesicDistance(before, point)
        distance += way
        if (way >= minSpeed * time) moving += time
      }
    }
    if (point.elevation !== undefined) see(point.elevation)
  })
  return {
    movingTime: moving,
    elapsedTime: ((times.at(-1) ?? 0) - (times[0] ?? 0)) / 1000,
    distance,
    ascent: climbed.known ? climbed.ascent : null,
    descent: climbed.known ? climbed.descent : null,
  }
}
