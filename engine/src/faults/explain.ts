import type { Order, Step } from './elimination-order.ts'

export interface Explained {
  /** Probability of the positive findings. */
  readonly evidence: number
  /** By place of the cause: the posterior odds for it are present/absent. */
  readonly present: Float64Array
  readonly absent: Float64Array
}

/** One bit more: half the states without the finding, half with it by its leak. */
function opened(states: Float64Array, leak: number): Float64Array {
  const wider = new Float64Array(states.length * 2)
  for (let state = 0; state < states.length; state += 1) {
    const value = states[state] ?? 0
    wider[state] = value * (1 - leak)
    wider[state + states.length] = value * leak
  }
  return wider
}

/** Only the states in which a finding came about, without its bit. */
function closed(states: Float64Array, bit: number): Float64Array {
  const narrower = new Float64Array(states.length / 2)
  const low = (1 << bit) - 1
  for (let state = 0; state < narrower.length; state += 1) {
    narrower[state] = states[((state & ~low) << 1) | (1 << bit) | (state & low)] ?? 0
  }
  return narrower
}

/** Moves what a cause that is there brings about. */
function brought(states: Float64Array, { brings }: Step): Float64Array {
  const after = Float64Array.from(states)
  for (const { bit, chance } of brings) {
    const flag = 1 << bit
    for (let state = 0; state < after.length; state += 1) {
      if (state & flag) continue
      const value = after[state] ?? 0
      after[state] = value * (1 - chance)
      after[state | flag] = (after[state | flag] ?? 0) + value * chance
    }
  }
  return after
}

/** The other way: what the states after are worth before. */
function worthBefore(worth: Float64Array, { brings }: Step): Float64Array {
  const before = Float64Array.from(worth)
  for (const { bit, chance } of brings) {
    const flag = 1 << bit
    for (let state = 0; state < before.length; state += 1) {
      if (state & flag) continue
      before[state] = (before[state] ?? 0) * (1 - chance) + (before[state | flag] ?? 0) * chance
    }
  }
  return before
}

function reopened(worth: Float64Array, bit: number): Float64Array {
  const wider = new Float64Array(worth.length * 2)
  const low = (1 << bit) - 1
  for (let state = 0; state < worth.length; state += 1) {
    wider[((state & ~low) << 1) | (1 << bit) | (state & low)] = worth[state] ?? 0
  }
  return wider
}

function unopened(worth: Float64Array, leak: number): Float64Array {
  const half = worth.length / 2
  const narrower = new Float64Array(half)
  for (let state = 0; state < half; state += 1) {
    narrower[state] = (worth[state] ?? 0) * (1 - leak) + (worth[state + half] ?? 0) * leak
  }
  return narrower
}

function mixed(without: Float64Array, withIt: Float64Array, chance: number): Float64Array {
  return without.map((value, state) => value * (1 - chance) + (withIt[state] ?? 0) * chance)
}

function product(one: Float64Array, other: Float64Array): number {
  let sum = 0
  for (let state = 0; state < one.length; state += 1) sum += (one[state] ?? 0) * (other[state] ?? 0)
  return sum
}

/**
 * What positive findings say of each cause, exactly: causes are independent beforehand, each finding comes about by its leak
 * or by any cause that is there (noisy-OR).
 *
 * The causes are summed out one after the other; a state says which open findings have come about so far. Forward and
 * backward pass, only sums and products of chances: nothing cancels, however many findings there are.
 *
 * @param order   of the findings
 * @param priors  by place of the cause, negative findings already in them
 * @returns probability of the findings; for each cause the weight of it there and not there
 * @source J. Pearl, Probabilistic Reasoning in Intelligent Systems (1988), noisy-OR; variable elimination, N. L. Zhang, D. Poole, J. Artif. Intell. Res. 5 (1996) 301
 * @example explain({ steps: [{ cause: 0, opens: [0.02], brings: [{ bit: 0, chance: 0.5 }], closes: [0], width: 1 }], unexplained: 1, work: 6 }, Float64Array.of(0.1)).evidence // 0.069
 */
export function explain(order: Order, priors: Float64Array): Explained {
  const before: Float64Array[] = []
  let states: Float64Array = Float64Array.of(1)
  for (const step of order.steps) {
    for (const leak of step.opens) states = opened(states, leak)
    before.push(states)
    states = mixed(states, brought(states, step), priors[step.cause] ?? 0)
    for (const bit of step.closes) states = closed(states, bit)
  }
  const reached = states[0] ?? 0
  const present = priors.map((prior) => prior * reached)
  const absent = priors.map((prior) => (1 - prior) * reached)
  let worth: Float64Array = Float64Array.of(1)
  for (let index = order.steps.length - 1; index >= 0; index -= 1) {
    const step = order.steps[index]
    const here = before[index]
    if (!step || !here) break
    for (const bit of step.closes.toReversed()) worth = reopened(worth, bit)
    const prior = priors[step.cause] ?? 0
    const withIt = worthBefore(worth, step)
    present[step.cause] = prior * product(here, withIt)
    absent[step.cause] = (1 - prior) * product(here, worth)
    worth = mixed(worth, withIt, prior)
    for (const leak of step.opens.toReversed()) worth = unopened(worth, leak)
  }
  return { evidence: reached * order.unexplained, present, absent }
}
