/**
 * A leg between two masses over a tyre, followed in time. Downwards y is how far the tyre is pressed (negative while it is
 * off the ground) and x the leg's stroke; T is the tyre's force and F the leg's:
 * m_w·y″ = m_w·g + F − T and x″ = (T − F)/m_w − (F + lift)/m_s.
 *
 * Both ends of the leg are stops that take a blow without bouncing. While a stop holds, both masses move as one.
 */
import { dormandPrince, type OdeEvent, type OdeStep, type Rates } from '../numerics/dormand-prince.ts'
import { gravity, type Kilogram, type Metre, type Newton, type Second } from '../quantities/si.ts'

export interface TwoMasses {
  readonly sprungMass: Kilogram
  readonly wheelMass: Kilogram
  /** Carried by something else, upwards on the sprung mass; 0 for a free drop. */
  readonly lift: Newton
  /** Force of the tyre at how far it is pressed; 0 off the ground. */
  readonly tyre: (pressed: Metre) => Newton
  /** Force of the leg at a stroke and a speed, inwards positive. */
  readonly leg: (stroke: Metre, speed: number) => Newton
  readonly fullStroke: Metre
  readonly gravity?: number
}

/** y, y′, x, x′. */
export type Moving = Float64Array

/** Held at full length, free, or held at the end of the stroke. */
type Hold = 'long' | 'free' | 'short'

/** A stretch of time in which nothing is held or let go. */
export interface Stretch {
  readonly hold: Hold
  readonly step: OdeStep
  readonly state: (time: number) => Moving
  /** Force through the leg, stop included. */
  readonly force: (state: Moving) => Newton
}

export interface Followed {
  ended: 'time' | 'too-many-steps'
  /** The leg reached the end of its stroke. */
  bottomed: boolean
}

const mostHolds = 2000

/**
 * Follows the masses from a state, handing on every step.
 *
 * @param onStretch  takes each step as it comes
 * @param budget     most steps
 * @source Newton's second law; the leg held until the load at its lower end overcomes it as in Milwitzky & Cook, NACA Report 1154 (1953)
 */
export function followTwoMasses(
  masses: TwoMasses,
  start: Moving,
  until: Second,
  onStretch: (stretch: Stretch) => void,
  budget = 60_000,
): Followed {
  const { sprungMass, wheelMass, lift, tyre, leg, fullStroke } = masses
  const free = masses.gravity ?? gravity
  const both = sprungMass + wheelMass
  /** Force in a leg that a stop holds: what gives both masses one acceleration. */
  const heldForce = (pressed: Metre) => (tyre(pressed) * sprungMass - lift * wheelMass) / both
  let state = Float64Array.from(start)
  let time = 0
  let steps = 0
  let bottomed = false
  let hold: Hold = (state[2] ?? 0) > 0 ? 'free' : 'long'

  const rates: Rates = (_time, now, out) => {
    const [pressed = 0, sinking = 0, stroke = 0, speed = 0] = now
    const push = tyre(pressed)
    const force = leg(stroke, speed)
    out[0] = sinking
    out[1] = free + (force - push) / wheelMass
    out[2] = speed
    out[3] = (push - force) / wheelMass - (force + lift) / sprungMass
  }
  const heldRates: Rates = (_time, now, out) => {
    out[0] = now[1] ?? 0
    out[1] = free - (tyre(now[0] ?? 0) + lift) / both
    out[2] = 0
    out[3] = 0
  }
  const opens: OdeEvent = { value: (_time, now) => now[2] ?? 0, direction: -1, terminal: true }
  const ends: OdeEvent = { value: (_time, now) => (now[2] ?? 0) - fullStroke, direction: 1, terminal: true }
  /** Positive while a held leg would rather move off its stop. */
  const pull = (now: Moving) => {
    const more = heldForce(now[0] ?? 0) - leg(hold === 'long' ? 0 : fullStroke, 0)
    return hold === 'long' ? more : -more
  }
  const letsGo: OdeEvent = { value: (_time, now) => pull(now), direction: 1, terminal: true }

  for (let holds = 0; holds < mostHolds && steps < budget; holds += 1) {
    if (hold !== 'free' && pull(state) >= 0) hold = 'free'
    const here = hold
    const push = (step: OdeStep) => {
      const at = new Float64Array(4)
      onStretch({
        hold: here,
        step,
        state: (moment) => {
          step.at(moment, at)
          return at
        },
        force: (now) => (here === 'free' ? leg(now[2] ?? 0, now[3] ?? 0) : heldForce(now[0] ?? 0)),
      })
    }
    const solution = dormandPrince(hold === 'free' ? rates : heldRates, state, time, until, {
      relative: 1e-8,
      absolute: 1e-10,
      largestStep: 0.01,
      budget: budget - steps,
      events: hold === 'free' ? [opens, ends] : [letsGo],
      onStep: push,
    })
    steps += solution.steps
    time = solution.time
    state = Float64Array.from(solution.state)
    if (solution.ended === 'time') return { ended: 'time', bottomed }
    if (solution.ended !== 'event') return { ended: 'too-many-steps', bottomed }
    if (hold !== 'free') {
      hold = 'free'
      continue
    }
    // The blow: both masses go on with the speed that keeps their momentum.
    const atEnd = solution.happened.at(-1)?.event === 1
    const [, sinking = 0, , speed = 0] = state
    state[1] = sinking + (sprungMass * speed) / both
    state[2] = atEnd ? fullStroke : 0
    state[3] = 0
    hold = atEnd ? 'short' : 'long'
    bottomed = bottomed || atEnd
  }
  return { ended: 'too-many-steps', bottomed }
}
