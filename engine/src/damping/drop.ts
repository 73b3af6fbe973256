import { figure } from '../quantities/kinds.ts'
import { gravity, type Kilogram, type Metre, type Newton, type NewtonPerMetre, type Second } from '../quantities/si.ts'
import { type Found, refuseOne, stopAt, within } from '../refusal/found.ts'
import { loadWithin, restingStroke } from '../sag/sag.ts'
import type { Process, Spring } from '../spring/spring.ts'
import { force } from '../spring/spring-force.ts'
import { springState } from '../spring/spring-state.ts'
import { dampingWithin } from './return-time.ts'
import { followTwoMasses, type Stretch } from './two-masses.ts'

export interface DropQuestion extends Process {
  /** Resting on the leg. */
  readonly sprungMass: Kilogram
  /** Below the leg. */
  readonly wheelMass: Kilogram
  /** From the tyre's lowest point to the ground. */
  readonly dropHeight: Metre
  /** linear·x′ + orifice·x′·|x′| [N·s/m, N·s²/m²], both ways alike. */
  readonly damping: { readonly linear: number; readonly orifice: number }
  readonly tyre: { readonly rate: NewtonPerMetre }
}

export interface DropMoment {
  time: Second
  stroke: Metre
  force: Newton
}

export interface Drop {
  deepest: Metre
  /** Largest force through the leg; the blow of a stop itself apart. */
  peakForce: Newton
  /** From letting go to the last time outside ±5 % of the stroke about where it comes to rest; null within 3 s. */
  settling: Second | null
  limit: 'bottomed' | null
  /** Every 5 ms, from letting go. */
  trace: DropMoment[]
}

const lasts = 3
const every = 0.005
const band = 0.05
/** Between two looks into a step: so little that no peak hides there. */
const apartAtMost = 0.001

function check(question: DropQuestion): void {
  const { sprungMass, wheelMass, dropHeight, damping, tyre } = question
  const weigh = 'Weigh it: scale under the wheel, with and without the wheel.'
  let found: Found = within(null, '', 'sprungMass', sprungMass, 'mass', 0.5, 1000, weigh)
  found = within(found, '', 'wheelMass', wheelMass, 'mass', 0.05, 200, weigh)
  found = within(found, '', 'dropHeight', dropHeight, 'length', 0, 5, 'Measure from the tyre to the ground.')
  found = dampingWithin(found, 'damping.linear', damping.linear)
  const orifice = 'Give the force over the square of the speed, in N·s²/m²; 0 without one.'
  found = within(found, 'damping.', 'orifice', damping.orifice, 'number', 0, 1e5, orifice)
  const press = 'Press the tyre on a scale: force over how far it gave.'
  stopAt(within(found, 'tyre.', 'rate', tyre.rate, 'rate', 1000, 1e7, press))
}

/** The largest of a course in a step, by golden section about its highest look. */
function highest(course: (time: Second) => number, from: Second, to: Second): number {
  const golden = (Math.sqrt(5) - 1) / 2
  let left = from
  let right = to
  let one = right - golden * (right - left)
  let other = left + golden * (right - left)
  let atOne = course(one)
  let atOther = course(other)
  for (let round = 0; round < 40; round += 1) {
    if (atOne > atOther) {
      right = other
      other = one
      atOther = atOne
      one = right - golden * (right - left)
      atOne = course(one)
    } else {
      left = one
      one = other
      atOne = atOther
      other = left + golden * (right - left)
      atOther = course(other)
    }
  }
  return Math.max(atOne, atOther)
}

/** Reads deepest, peak, settling and trace off the steps as they come. */
function reader(rest: Metre, allowed: Metre, fullStroke: Metre) {
  const trace: DropMoment[] = []
  let deepest = 0
  let peakForce = 0
  let outsideAt: Second | null = null
  let lastOutside: Second = 0
  const isOutside = (stroke: Metre) => Math.abs(stroke - rest) > allowed

  function take({ step, state, force: forceOf }: Stretch): void {
    const { from, to } = step
    const strokeAt = (time: Second) => Math.min(fullStroke, state(time)[2] ?? 0)
    const forceAt = (time: Second) => forceOf(state(time))
    const looks = Math.max(2, Math.ceil((to - from) / apartAtMost))
    const apart = (to - from) / looks
    let deep = from
    let hard = from
    let most = Number.NEGATIVE_INFINITY
    let strongest = Number.NEGATIVE_INFINITY
    for (let look = 0; look <= looks; look += 1) {
      const time = look === looks ? to : from + look * apart
      const now = state(time)
      const stroke = Math.min(fullStroke, now[2] ?? 0)
      const push = forceOf(now)
      if (stroke > most) [most, deep] = [stroke, time]
      if (push > strongest) [strongest, hard] = [push, time]
      if (isOutside(stroke)) outsideAt = time
      else if (outsideAt !== null) {
        let [out, inside] = [outsideAt, time]
        for (let round = 0; round < 40; round += 1) {
          const middle = (out + inside) / 2
          if (isOutside(strokeAt(middle))) out = middle
          else inside = middle
        }
        lastOutside = inside
        outsideAt = null
      }
    }
    /** The largest about the highest look; a course that still rises at the end has it in a later step. */
    const refined = (course: (time: Second) => number, best: Second, value: number, known: number) => {
      if (value < 0.9 * known || (best === to && course(to - apart / 50) <= value)) return Math.max(known, value)
      return Math.max(known, value, highest(course, Math.max(from, best - apart), Math.min(to, best + apart)))
    }
    deepest = refined(strokeAt, deep, most, deepest)
    peakForce = refined(forceAt, hard, strongest, peakForce)
    for (let time = trace.length * every; time <= to; time = trace.length * every) {
      if (time > lasts + every / 2) break
      const now = state(Math.max(from, time))
      trace.push({ time, stroke: Math.min(fullStroke, Math.max(0, now[2] ?? 0)), force: forceOf(now) })
    }
  }
  return { take, read: () => ({ deepest, peakForce, settling: outsideAt === null ? lastOutside : null, trace }) }
}

/**
 * A drop on to the wheel: an upright leg at full length, all at rest, let go at a height.
 *
 * m_s·s″ = F − m_s·g; m_w·w″ = T − F − m_w·g; T = rate·max(0, y); F = F(x) + linear·x′ + orifice·x′·|x′|. Full length and
 * the end of the stroke are stops that take a blow without bouncing; a leg held by one carries what keeps both masses
 * together. The spring is slow or fast as asked; it settles about where that spring holds the sprung mass.
 *
 * @param spring    dimensions
 * @param question  pressure, masses [kg], dropHeight [m], damping, tyre [N/m], slow or fast
 * @returns deepest [m], peakForce [N], settling [s] or null, limit, trace every 5 ms for 3 s
 * @throws Refusal naming every field that can't be; `too-many-steps` where values are too far apart to be followed
 * @source Newton's second law with a force balance on the leg
 * @example drop({ kind: 'coil', rate: 9000, stroke: 0.15 }, { sprungMass: 30, wheelMass: 2, dropHeight: 0.1, damping: { linear: 0, orifice: 0 }, tyre: { rate: 1000000 } }).limit // null
 */
export function drop(spring: Spring, question: DropQuestion): Drop {
  const { sprungMass, wheelMass, dropHeight, damping, tyre } = question
  check(question)
  const weight = sprungMass * gravity
  stopAt(loadWithin(null, 'sprungMass', weight))
  const state = springState(spring, question)
  const { fullStroke } = state
  const rest = restingStroke(state, 0, weight)
  const { linear, orifice } = damping
  const { take, read } = reader(rest, band * spring.stroke, fullStroke)
  const { ended, bottomed } = followTwoMasses(
    {
      sprungMass,
      wheelMass,
      lift: 0,
      tyre: (pressed) => (pressed > 0 ? tyre.rate * pressed : 0),
      leg: (stroke, speed) =>
        force(state, Math.min(fullStroke, Math.max(0, stroke))) + linear * speed + orifice * speed * Math.abs(speed),
      fullStroke,
    },
    Float64Array.of(-dropHeight, 0, 0, 0),
    lasts,
    take,
  )
  if (ended !== 'time') {
    const allowed = 'what can be followed for 3 s in 60,000 steps'
    const next = 'Check masses, damping and tyre: something is far too stiff for its mass.'
    refuseOne('damping.linear', 'too-many-steps', figure(linear, 'damping'), allowed, next)
  }
  return { ...read(), limit: bottomed ? 'bottomed' : null }
}
