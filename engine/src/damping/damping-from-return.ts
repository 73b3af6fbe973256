import { brent } from '../numerics/brent.ts'
import { figure } from '../quantities/kinds.ts'
import type { NewtonSecondPerMetre, Second } from '../quantities/si.ts'
import { refuseOne, stopAt, within, withinIfGiven } from '../refusal/found.ts'
import type { Spring } from '../spring/spring.ts'
import { force } from '../spring/spring-force.ts'
import {
  largestDamping,
  motionAllowed,
  type Release,
  type ReturnMotion,
  release,
  stopsBefore,
  timeOf,
} from './return-time.ts'

export interface FromReturnQuestion extends ReturnMotion {
  /** As taken, from letting go to the mark. */
  readonly time: Second
  /** Smallest difference the clock tells; a picture of 240 a second by default. */
  readonly timeResolution?: Second
}

export interface DampingFromReturn {
  /** Null where the time no longer tells. */
  damping: NewtonSecondPerMetre | null
  /** Then it is less than this, else null. */
  below: NewtonSecondPerMetre | null
}

const nearEnough = 1e-8

/**
 * First guess: a slow leg takes c·∫dx/(F − W − F_f), an undamped one its own time; both together as their squares' sum.
 * Null where the leg arrives by its swing only.
 */
function firstGuess({ state, motion, load }: Release, time: Second, undamped: Second): NewtonSecondPerMetre | null {
  const { friction, from, to } = motion
  const panels = 16
  let slowness = 0
  for (let panel = 0; panel < panels; panel += 1) {
    const push = force(state, to + ((from - to) * (panel + 0.5)) / panels) - load - friction
    if (push <= 0) return null
    slowness += (from - to) / panels / push
  }
  return Math.sqrt(time * time - undamped * undamped) / slowness
}

/** Damping with which a leg needs a time that is longer than the undamped one: it grows with the damping. */
function dampingFor(ready: Release, time: Second, undamped: Second, tooLong: () => never): NewtonSecondPerMetre {
  const { mass, from, to } = ready.motion
  const known = new Map<number, number>()
  // A leg that stops on its way counts as far too late. Each motion is followed once, whoever asks again.
  const miss = (damping: number) => {
    const before = known.get(damping)
    if (before !== undefined) return before
    const missed = (timeOf(ready, damping, tooLong) ?? 1e3 * time) - time
    known.set(damping, missed)
    return missed
  }
  let low = 0
  let missLow = undamped - time
  let high = Math.min(largestDamping, firstGuess(ready, time, undamped) ?? (mass * (time - undamped)) / undamped ** 2)
  let missHigh = miss(high)
  // The guess is good to some per cent: the other end of a narrow bracket lies just past where its slope points.
  const steep = time / Math.max(high, 1e-9)
  if (missHigh > 0) {
    const other = Math.max(0, high - (1.5 * missHigh) / steep - 1e-3 * high)
    const missOther = other > 0 ? miss(other) : missLow
    if (missOther <= 0) {
      low = other
      missLow = missOther
    } else {
      high = other
      missHigh = missOther
    }
  }
  while (missHigh < 0) {
    if (high >= largestDamping) {
      const allowed = `at most what ${figure(largestDamping, 'damping')} gives (${figure(time + missHigh, 'duration')})`
      return refuseOne('time', 'no-answer', figure(time, 'duration'), allowed, 'Check mass, pressure and the strokes.')
    }
    const slope = (missHigh - missLow) / (high - low)
    low = high
    missLow = missHigh
    const aimed = slope > 0 ? high - (1.5 * missHigh) / slope : 2 * high
    high = Math.min(largestDamping, Math.max(1.001 * high, Math.min(4 * high, aimed)))
    missHigh = miss(high)
  }
  const found = brent(miss, low, high, nearEnough * high)
  if (found !== null && Math.abs(miss(found)) < 1e-4 * time) return found
  const allowed = `a time at which the leg still arrives at ${figure(to, 'length')}: it would stop before`
  const next = `Time it to a mark further in, nearer ${figure(from, 'length')}.`
  return refuseOne('time', 'no-answer', figure(time, 'duration'), allowed, next)
}

/**
 * Damping of a leg from the time it needs from rest at `from` to `to`: the inverse of `returnTime`.
 *
 * Within three resolutions of the undamped time the clock no longer tells: `damping` is null and `below` the damping whose
 * time lies three resolutions above it.
 *
 * @param spring    dimensions
 * @param question  as returnTime, with time [s] instead of damping; timeResolution 1/240 s by default
 * @returns damping [N·s/m] or null; below [N·s/m] or null
 * @throws Refusal naming every field that can't be; a time shorter than without damping
 * @source as return-time: Newton's second law with a force balance on the leg
 * @example dampingFromReturn({ kind: 'coil', rate: 9000, stroke: 0.15 }, { mass: 10, friction: 0, from: 0.1, to: 0.01, time: 0.214704 }).damping // 900
 */
export function dampingFromReturn(spring: Spring, question: FromReturnQuestion): DampingFromReturn {
  const { time, timeResolution = 1 / 240 } = question
  const next = 'Take it from a picture by picture film, or by a clock.'
  let found = within(null, '', 'time', time, 'duration', 1e-3, 600, next)
  found = withinIfGiven(found, '', 'timeResolution', question.timeResolution, 'duration', 1e-6, 1, next)
  const ready = release(spring, question, found)
  stopAt(found)
  const tooLong = (): never =>
    refuseOne('time', 'too-many-steps', figure(time, 'duration'), motionAllowed, 'Check time, mass and pressure.')
  const undamped = timeOf(ready, 0, tooLong) ?? stopsBefore(question.to)
  if (time < undamped) {
    const allowed = `at least the time without any damping (${figure(undamped, 'duration')})`
    refuseOne('time', 'no-answer', figure(time, 'duration'), allowed, 'Check mass, pressure and the strokes.')
  }
  const told = undamped + 3 * timeResolution
  if (time <= told) return { damping: null, below: dampingFor(ready, told, undamped, tooLong) }
  return { damping: dampingFor(ready, time, undamped, tooLong), below: null }
}
