import { describe, expect, it } from 'vitest'
import { dormandPrince, type OdeStep, type Rates } from './dormand-prince.ts'
import { nodes, rows, weights } from './dormand-prince-tableau.ts'

/** m·x″ = −k·x − c·x′ + push, as x and x′. */
const oscillator =
  (stiffness: number, damping = 0, push = 0): Rates =>
  (_time, state, out) => {
    const x = state[0] ?? 0
    const speed = state[1] ?? 0
    out[0] = speed
    out[1] = push - stiffness * x - damping * speed
  }

const sum = (all: readonly number[], term: (one: number, index: number) => number) =>
  all.reduce((total, one, index) => total + term(one, index), 0)

// Order conditions of Runge–Kutta methods, e.g. Hairer, Nørsett, Wanner I, table II.2.1: the quadrature conditions
// Σ b·c^(q−1) = 1/q and every row's Σ a = c. They hold to rounding, or a digit is wrong.
describe('coefficients', () => {
  const { answer, dense, error } = weights

  it('rows add up to their place in the step', () => {
    rows.forEach((row, index) => {
      expect(sum(row, (one) => one)).toBeCloseTo(nodes[index + 1] ?? Number.NaN, 13)
    })
  })
  it.each([1, 2, 3, 4, 5])('the answer integrates t^%i − 1 exactly', (order) => {
    expect(sum(answer, (b, index) => b * (nodes[index] ?? 0) ** (order - 1))).toBeCloseTo(1 / order, 13)
  })
  it.each([1, 2, 3, 4])('the second answer, order %i of 4', (order) => {
    const second = answer.map((b, index) => b - (error[index] ?? 0))
    expect(sum(second, (b, index) => b * (nodes[index] ?? 0) ** (order - 1))).toBeCloseTo(1 / order, 13)
  })
  it('values between steps change nothing that is straight', () => {
    expect(sum(dense, (one) => one)).toBeCloseTo(0, 13)
  })
})

// Exact solutions by hand: y′ = −y, y = e^−t; y′ = y² has y = 1/(1 − t), without a value at t = 1.
describe('exact solutions', () => {
  it('e^−t to the asked tolerance, over seven powers of ten', () => {
    for (const relative of [1e-4, 1e-6, 1e-8, 1e-10]) {
      const decay: Rates = (_time, state, out) => {
        out[0] = -(state[0] ?? 0)
      }
      const { state, ended } = dormandPrince(decay, Float64Array.of(1), 0, 5, { relative, absolute: relative * 1e-3 })
      expect(ended).toBe('time')
      expect(Math.abs((state[0] ?? 0) / Math.exp(-5) - 1)).toBeLessThan(10 * relative)
    }
  })

  it('cos t after 100 turns', () => {
    const { state } = dormandPrince(oscillator(1), Float64Array.of(1, 0), 0, 200 * Math.PI, { relative: 1e-11 })
    expect(state[0]).toBeCloseTo(1, 6)
    expect(state[1]).toBeCloseTo(0, 6)
  })

  it('is of order 5: a tolerance 10⁵ times finer takes about 10 times the steps', () => {
    const steps = [1e-5, 1e-10].map(
      (relative) => dormandPrince(oscillator(1), Float64Array.of(1, 0), 0, 100, { relative, absolute: relative }).steps,
    )
    const ratio = (steps[1] ?? 0) / (steps[0] ?? 1)
    expect(ratio).toBeGreaterThan(7)
    expect(ratio).toBeLessThan(14)
  })

  it('any time inside a step, as exactly as the steps themselves', () => {
    let worst = 0
    const look = (step: OdeStep) => {
      const out = new Float64Array(2)
      for (let part = 0; part <= 10; part += 1) {
        const time = step.from + ((step.to - step.from) * part) / 10
        step.at(time, out)
        worst = Math.max(worst, Math.abs((out[0] ?? 0) - Math.cos(time)))
      }
    }
    dormandPrince(oscillator(1), Float64Array.of(1, 0), 0, 20, { relative: 1e-9, onStep: look })
    expect(worst).toBeLessThan(1e-7)
  })
})

describe('events', () => {
  it('zeros of cos t at π/2, 3π/2, 5π/2, by their direction', () => {
    const down = { value: (_time: number, state: Float64Array) => state[0] ?? 0, direction: -1 } as const
    const up = { ...down, direction: 1 } as const
    const { happened } = dormandPrince(oscillator(1), Float64Array.of(1, 0), 0, 9, {
      relative: 1e-11,
      events: [down, up],
    })
    expect(happened.map(({ event }) => event)).toEqual([0, 1, 0])
    happened.forEach(({ time }, index) => {
      expect(time).toBeCloseTo((Math.PI / 2) * (2 * index + 1), 8)
    })
  })

  it('a terminal one ends the motion there, and later ones of the same step are not told', () => {
    const at = (level: number) => (_time: number, state: Float64Array) => (state[0] ?? 0) - level
    const { ended, time, happened } = dormandPrince(oscillator(1), Float64Array.of(1, 0), 0, 9, {
      events: [
        { value: at(-0.9), direction: -1 },
        { value: at(0.5), direction: -1, terminal: true },
      ],
    })
    expect(ended).toBe('event')
    expect(time).toBeCloseTo(Math.PI / 3, 7)
    expect(happened).toHaveLength(1)
  })

  it('one that stands at zero from the start has not happened', () => {
    const speed = {
      value: (_time: number, state: Float64Array) => state[1] ?? 0,
      direction: 1,
      terminal: true,
    } as const
    const { time } = dormandPrince(oscillator(1), Float64Array.of(1, 0), 0, 9, { events: [speed] })
    expect(time).toBeCloseTo(Math.PI, 7)
  })
})

describe('always comes to an end', () => {
  it('y′ = y² has no value at t = 1: it says so before', () => {
    const square: Rates = (_time, state, out) => {
      out[0] = (state[0] ?? 0) ** 2
    }
    const { ended, time } = dormandPrince(square, Float64Array.of(1), 0, 2)
    expect(ended).not.toBe('time')
    expect(time).toBeLessThanOrEqual(1.0001)
  })
  it('rates that are no numbers', () => {
    const none: Rates = (_time, _state, out) => {
      out[0] = Number.NaN
    }
    expect(dormandPrince(none, Float64Array.of(1), 0, 1).ended).toBe('no-value')
  })
  it('a rate that jumps with the sign of the speed, where solvers stall (Coulomb friction)', () => {
    const rubbing: Rates = (_time, state, out) => {
      out[0] = state[1] ?? 0
      out[1] = -(state[0] ?? 0) - 0.3 * Math.sign(state[1] ?? 0)
    }
    const { ended, steps } = dormandPrince(rubbing, Float64Array.of(1, 0), 0, 100, { budget: 5000 })
    expect(ended).toBe('budget')
    expect(steps).toBeLessThanOrEqual(5000)
  })
})
