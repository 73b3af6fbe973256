import { dormandPrince, type OdeEvent, type Rates } from '../numerics/dormand-prince.ts'
import { figure } from '../quantities/kinds.ts'
import type { Kilogram, Metre, Newton, NewtonSecondPerMetre, Second } from '../quantities/si.ts'
import { type Found, refuseOne, stopAt, within, withinIfGiven } from '../refusal/found.ts'
import { strokeWithin } from '../spring/check-conditions.ts'
import { fullStroke } from '../spring/dimensions.ts'
import type { Process, Spring } from '../spring/spring.ts'
import { energyBetween } from '../spring/spring-energy.ts'
import { force } from '../spring/spring-force.ts'
import { type SpringState, springState } from '../spring/spring-state.ts'

/** A leg that is let go: all but its damping. */
export interface ReturnMotion extends Process {
  /** What moves, as the leg feels it: m·sin²(head angle) of a fork, m·leverage² of a shock. */
  readonly mass: Kilogram
  /** Against the motion, the same at every speed. */
  readonly friction: Newton
  /** Held there, then let go. */
  readonly from: Metre
  /** The clock stops there. */
  readonly to: Metre
  /** Steady axial weight against extension; 0 by default. */
  readonly load?: Newton
}

export interface ReturnQuestion extends ReturnMotion {
  /** Low-speed rebound damping at the leg or shaft. */
  readonly damping: NewtonSecondPerMetre
}

/** A spring made ready with what moves on it. */
export interface Release {
  readonly state: SpringState
  readonly motion: ReturnMotion
  readonly load: Newton
}

export const largestDamping = 100_000
const longest = 600

/** What `too-many-steps` asks for. */
export const motionAllowed = `what lets the leg arrive within ${longest} s and 20,000 steps`

/** Damping at a leg or shaft, 0 … 100,000 N·s/m. */
export function dampingWithin(found: Found, name: string, damping: number | undefined, low = 0): Found {
  const next = 'Give the damping force over the speed, at the leg or shaft, like "800 N·s/m".'
  return within(found, '', name, damping, 'damping', low, largestDamping, next)
}

/**
 * A release made ready, checked first.
 *
 * @throws Refusal naming every field that can't be; a leg that friction and weight hold at `from` too
 */
export function release(spring: Spring, motion: ReturnMotion, found: Found = null): Release {
  const { mass, friction, from, to, load = 0 } = motion
  let wrong = within(found, '', 'mass', mass, 'mass', 0.05, 500, 'Weigh what moves; a shock feels m·leverage².')
  wrong = within(wrong, '', 'friction', friction, 'force', 0, 10_000, 'Give half the difference of a slow press.')
  wrong = withinIfGiven(wrong, '', 'load', motion.load, 'force', 0, 50_000, 'Give the weight along the leg.')
  stopAt(wrong)
  const state = springState(spring, motion)
  const end = fullStroke(spring)
  stopAt(strokeWithin(strokeWithin(null, 'from', from, end), 'to', to, end))
  if (!(from > to)) {
    const allowed = `further in than to (${figure(to, 'length')})`
    refuseOne('from', 'does-not-fit', figure(from, 'length'), allowed, 'Hold the leg in, let go, time it to a mark.')
  }
  const push = force(state, from)
  if (push - load <= friction) {
    const came = `${figure(from, 'length')}, where the spring pushes ${figure(push, 'force')}`
    const allowed = `where the spring overcomes load and friction (${figure(load + friction, 'force')})`
    refuseOne('from', 'no-answer', came, allowed, 'Hold the leg further in, or take weight off it.')
  }
  return { state, motion, load }
}

/**
 * Seconds from `from` to `to`; null where the leg stops before.
 *
 * While spring less weight and friction still pushes at `to` it pushes all the way, and the leg must arrive. Otherwise only
 * its swing carries it there, and a leg that creeps towards where it rests is never seen to stop: so its energy over `to`,
 * ½·m·x′² + ∫(F − W − F_f)dx, is carried along, and the motion ends once it is used up.
 *
 * @param tooLong  refuses a motion that takes too many steps
 */
export function timeOf(
  { state, motion, load }: Release,
  damping: NewtonSecondPerMetre,
  tooLong: () => never,
): Second | null {
  const { mass, friction, from, to } = motion
  const against = load + friction
  const arrives = force(state, to) > against
  const energy = arrives ? 0 : energyBetween(state, against, to, from)
  if (!arrives && energy <= 0) return null
  const rates: Rates = (_time, now, change) => {
    const speed = now[1] ?? 0
    const push = force(state, now[0] ?? 0) - against
    change[0] = speed
    change[1] = -(push + damping * speed) / mass
    if (!arrives) change[2] = push * speed
  }
  const there: OdeEvent = { value: (_time, now) => (now[0] ?? 0) - to, direction: -1, terminal: true }
  const spent: OdeEvent = {
    value: (_time, now) => (mass / 2) * (now[1] ?? 0) ** 2 + (now[2] ?? 0),
    direction: -1,
    terminal: true,
  }
  const start = arrives ? Float64Array.of(from, 0) : Float64Array.of(from, 0, energy)
  const { ended, time, happened } = dormandPrince(rates, start, 0, longest, {
    relative: 1e-7,
    absolute: 1e-8,
    events: arrives ? [there] : [there, spent],
  })
  if (ended === 'event') return happened.at(-1)?.event === 0 ? time : null
  return tooLong()
}

/** The refusal of a leg that stops on its way. */
export function stopsBefore(to: Metre): never {
  const allowed = 'where the leg arrives by itself: it stops before'
  return refuseOne(
    'to',
    'no-answer',
    figure(to, 'length'),
    allowed,
    'Time it to a mark further in, or lift weight off.',
  )
}

/**
 * Time a leg needs from rest at `from` to `to`: m·x″ = −(F(x) − W) + F_f − c·x′, x′ < 0.
 *
 * @param spring    dimensions
 * @param question  pressure, mass [kg], friction [N], damping c [N·s/m], from, to [m], load W [N], slow or fast
 * @returns [s]
 * @throws Refusal naming every field that can't be; `no-answer` where the leg stops before `to`
 * @source Newton's second law with a force balance on the leg; in closed form for a coil, e.g. Rao, Mechanical Vibrations, 2.6
 * @example returnTime({ kind: 'coil', rate: 9000, stroke: 0.15 }, { mass: 10, friction: 0, damping: 0, from: 0.1, to: 0 }).time // 0.05236
 */
export function returnTime(spring: Spring, question: ReturnQuestion): { time: Second } {
  const ready = release(spring, question, dampingWithin(null, 'damping', question.damping))
  const tooLong = (): never => {
    const came = figure(question.damping, 'damping')
    return refuseOne('damping', 'too-many-steps', came, motionAllowed, 'Check damping and mass.')
  }
  return { time: timeOf(ready, question.damping, tooLong) ?? stopsBefore(question.to) }
}
