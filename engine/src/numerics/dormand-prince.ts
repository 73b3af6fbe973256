/**
 * Motion followed in time: the pair of Dormand and Prince, order 5 with an error of order 4, its own step, values between
 * steps, and events located on them. It always comes to an end: steps are counted, and a step too small to move time stops.
 */
import { brent } from './brent.ts'
import { nodes, rows, weights } from './dormand-prince-tableau.ts'

/** Writes the rates of change at a time into `out`. */
export type Rates = (time: number, state: Float64Array, out: Float64Array) => void

/** Happens where `value` changes its sign. */
export interface OdeEvent {
  readonly value: (time: number, state: Float64Array) => number
  /** 1 from below, −1 from above, 0 either way. */
  readonly direction: -1 | 0 | 1
  /** The motion ends there. */
  readonly terminal?: boolean
}

export interface OdeHappening {
  /** Place in the list of events. */
  event: number
  time: number
  state: Float64Array
}

/** A step that was taken: any time from `from` to `to` can be asked for. */
export interface OdeStep {
  readonly from: number
  readonly to: number
  at(time: number, out: Float64Array): void
}

export interface OdeOptions {
  /** Of each value; 1e-8 by default. */
  readonly relative?: number
  /** Of each value in its own unit; 1e-10 by default. */
  readonly absolute?: number
  readonly largestStep?: number
  /** Steps tried before it gives up; 20,000 by default. */
  readonly budget?: number
  readonly events?: readonly OdeEvent[]
  readonly onStep?: (step: OdeStep) => void
}

export interface OdeSolution {
  /** Why it ended: at the end time, at a terminal event, out of steps, or at a value that is none. */
  ended: 'time' | 'event' | 'budget' | 'no-value'
  time: number
  state: Float64Array
  happened: OdeHappening[]
  /** Steps tried. */
  steps: number
}

const [, c2, c3, c4, c5] = nodes
const [[a21], [a31, a32], [a41, a42, a43], [a51, a52, a53, a54], [a61, a62, a63, a64, a65]] = rows
const [b1, , b3, b4, b5, b6] = weights.answer
const [e1, , e3, e4, e5, e6, e7] = weights.error
const [d1, , d3, d4, d5, d6, d7] = weights.dense
const smallestFactor = 0.2
const largestFactor = 10

/**
 * Follows y′ = f(t, y) from a state.
 *
 * @param rates    f
 * @param start    state at `from`; not changed
 * @param from     time
 * @param until    later time
 * @returns where and why it ended, with what happened on the way; never a guess: `ended` says where it gave up
 * @source J. R. Dormand, P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19; step control and values between steps as in Hairer, Nørsett, Wanner, Solving Ordinary Differential Equations I, 2nd ed. (1993), II.4 and II.6
 * @example dormandPrince((_, y, out) => { out[0] = -(y[0] ?? 0) }, Float64Array.of(1), 0, 1).state[0] // 0.36787944
 */
export function dormandPrince(
  rates: Rates,
  start: Float64Array,
  from: number,
  until: number,
  options: OdeOptions = {},
): OdeSolution {
  const { relative = 1e-8, absolute = 1e-10, largestStep = until - from, budget = 20_000, events = [] } = options
  const size = start.length
  const vector = (): Float64Array => new Float64Array(size)
  const [k1, k2, k3, k4, k5, k6, k7] = [vector(), vector(), vector(), vector(), vector(), vector(), vector()]
  const [trial, bend, twist, rest] = [vector(), vector(), vector(), vector()]
  const between = new Float64Array(size)
  const happened: OdeHappening[] = []
  let state: Float64Array = Float64Array.from(start)
  let next: Float64Array = new Float64Array(size)
  let time = from
  let steps = 0

  const scale = (one: number, other: number) => absolute + relative * Math.max(Math.abs(one), Math.abs(other))

  rates(time, state, k1)
  let step = Math.min(largestStep, firstStep())
  if (!Number.isFinite(step)) return { ended: 'no-value', time, state, happened, steps }
  let before = 1e-4
  let values = events.map(({ value }) => value(time, state))

  /** A first step whose straight-line change is a hundredth of the state, and whose curvature the order can follow. */
  function firstStep(): number {
    const first = k1
    let high = 0
    let steep = 0
    for (let i = 0; i < size; i += 1) {
      const allowed = scale(state[i] ?? 0, 0)
      high += ((state[i] ?? 0) / allowed) ** 2
      steep += ((first[i] ?? 0) / allowed) ** 2
    }
    const rough = high < 1e-10 || steep < 1e-10 ? 1e-6 * (until - from) : 0.01 * Math.sqrt(high / steep)
    const tried = Math.min(rough, until - from)
    for (let i = 0; i < size; i += 1) trial[i] = (state[i] ?? 0) + tried * (first[i] ?? 0)
    const second = k2
    rates(time + tried, trial, second)
    let curved = 0
    for (let i = 0; i < size; i += 1) {
      curved += (((second[i] ?? 0) - (first[i] ?? 0)) / scale(state[i] ?? 0, 0)) ** 2
    }
    const most = Math.max(Math.sqrt(steep), Math.sqrt(curved) / tried)
    const fine = most <= 1e-15 ? Math.max(1e-6, tried * 1e-3) : (0.01 / most) ** 0.2
    return Number.isFinite(fine) ? Math.min(100 * tried, fine) : tried
  }

  /** Tries one step into `next`; gives its error, 1 being what is allowed. Written out: this is where the time goes. */
  function tried(length: number): number {
    for (let i = 0; i < size; i += 1) trial[i] = (state[i] ?? 0) + length * (a21 * (k1[i] ?? 0))
    rates(time + c2 * length, trial, k2)
    for (let i = 0; i < size; i += 1) {
      trial[i] = (state[i] ?? 0) + length * (a31 * (k1[i] ?? 0) + a32 * (k2[i] ?? 0))
    }
    rates(time + c3 * length, trial, k3)
    for (let i = 0; i < size; i += 1) {
      trial[i] = (state[i] ?? 0) + length * (a41 * (k1[i] ?? 0) + a42 * (k2[i] ?? 0) + a43 * (k3[i] ?? 0))
    }
    rates(time + c4 * length, trial, k4)
    for (let i = 0; i < size; i += 1) {
      const early = a51 * (k1[i] ?? 0) + a52 * (k2[i] ?? 0)
      trial[i] = (state[i] ?? 0) + length * (early + a53 * (k3[i] ?? 0) + a54 * (k4[i] ?? 0))
    }
    rates(time + c5 * length, trial, k5)
    for (let i = 0; i < size; i += 1) {
      const early = a61 * (k1[i] ?? 0) + a62 * (k2[i] ?? 0) + a63 * (k3[i] ?? 0)
      trial[i] = (state[i] ?? 0) + length * (early + a64 * (k4[i] ?? 0) + a65 * (k5[i] ?? 0))
    }
    rates(time + length, trial, k6)
    for (let i = 0; i < size; i += 1) {
      const early = b1 * (k1[i] ?? 0) + b3 * (k3[i] ?? 0) + b4 * (k4[i] ?? 0)
      next[i] = (state[i] ?? 0) + length * (early + b5 * (k5[i] ?? 0) + b6 * (k6[i] ?? 0))
    }
    rates(time + length, next, k7)
    let total = 0
    for (let i = 0; i < size; i += 1) {
      const early = e1 * (k1[i] ?? 0) + e3 * (k3[i] ?? 0) + e4 * (k4[i] ?? 0)
      const error = early + e5 * (k5[i] ?? 0) + e6 * (k6[i] ?? 0) + e7 * (k7[i] ?? 0)
      const share = (length * error) / scale(state[i] ?? 0, next[i] ?? 0)
      total += share * share
    }
    return Math.sqrt(total / size)
  }

  function prepareDense(length: number): void {
    for (let i = 0; i < size; i += 1) {
      const difference = (next[i] ?? 0) - (state[i] ?? 0)
      const bent = length * (k1[i] ?? 0) - difference
      bend[i] = bent
      twist[i] = difference - length * (k7[i] ?? 0) - bent
      const early = d1 * (k1[i] ?? 0) + d3 * (k3[i] ?? 0) + d4 * (k4[i] ?? 0)
      rest[i] = length * (early + d5 * (k5[i] ?? 0) + d6 * (k6[i] ?? 0) + d7 * (k7[i] ?? 0))
    }
  }

  function inStep(length: number): OdeStep['at'] {
    return (at, out) => {
      const share = (at - time) / length
      const left = 1 - share
      for (let i = 0; i < size; i += 1) {
        const inner = (bend[i] ?? 0) + share * ((twist[i] ?? 0) + left * (rest[i] ?? 0))
        const difference = (next[i] ?? 0) - (state[i] ?? 0)
        out[i] = (state[i] ?? 0) + share * (difference + left * inner)
      }
    }
  }

  /** What happens inside the step, in its order, up to the first that ends the motion. */
  function happenings(length: number, after: readonly number[], at: OdeStep['at']): OdeHappening[] {
    const found: OdeHappening[] = []
    events.forEach(({ value, direction }, event) => {
      const was = values[event] ?? 0
      const is = after[event] ?? 0
      const up = was < 0 && is >= 0 && direction >= 0
      const down = was > 0 && is <= 0 && direction <= 0
      if (!up && !down) return
      const valueAt = (moment: number) => {
        at(moment, between)
        return value(moment, between)
      }
      const located = is === 0 ? null : brent(valueAt, time, time + length, 1e-14 * Math.max(1, Math.abs(time)))
      const moment = located ?? time + length
      const there = new Float64Array(size)
      at(moment, there)
      found.push({ event, time: moment, state: there })
    })
    found.sort((one, other) => one.time - other.time)
    const last = found.findIndex(({ event }) => events[event]?.terminal)
    return last < 0 ? found : found.slice(0, last + 1)
  }

  while (time < until) {
    if (steps >= budget) return { ended: 'budget', time, state, happened, steps }
    steps += 1
    const length = time + 1.01 * step >= until ? until - time : step
    const error = tried(length)
    const sound = Number.isFinite(error)
    if (!sound || error > 1) {
      step = length * (sound ? Math.max(smallestFactor, 0.9 * error ** -0.2) : 0.1)
      if (time + step * 0.1 === time) return { ended: sound ? 'budget' : 'no-value', time, state, happened, steps }
      continue
    }
    if (events.length > 0 || options.onStep) prepareDense(length)
    const at = inStep(length)
    const arrived = length === until - time ? until : time + length
    if (events.length > 0) {
      const after = events.map(({ value }) => value(arrived, next))
      const found = happenings(length, after, at)
      happened.push(...found)
      const last = found.at(-1)
      if (last && events[last.event]?.terminal) {
        options.onStep?.({ from: time, to: last.time, at })
        return { ended: 'event', time: last.time, state: Float64Array.from(last.state), happened, steps }
      }
      values = after
    }
    options.onStep?.({ from: time, to: arrived, at })
    time = arrived
    const spare = state
    state = next
    next = spare
    k1.set(k7)
    const floor = Math.max(error, 1e-10)
    const factor = 0.9 * floor ** -0.17 * before ** 0.04
    step = Math.min(largestStep, length * Math.min(largestFactor, Math.max(smallestFactor, factor)))
    before = Math.max(error, 1e-4)
  }
  return { ended: 'time', time, state, happened, steps }
}
