import { describe, expect, it } from 'vitest'
import { Refusal } from '../refusal/refusal.ts'
import { doubtAtOnce, doubtInSteps } from './doubt-in-steps.ts'
import type { Doubtful } from './doubtful.ts'
import { edge, one, sum, within } from './drawn-for-tests.ts'

// By hand: with one error in common a difference loses it and a sum doubles it; u = √(own² + own²) and √(… + (2·s)²).
describe('an error in common', () => {
  const inputs: Doubtful[] = [
    { value: 10, u: 0.3, shared: { pump: 2 } },
    { value: 20, u: 0.4, shared: { pump: 2 } },
  ]
  it('leaves a difference', () => {
    const { u, shares } = one(inputs, ([a = 0, b = 0]) => b - a)
    within(u, 0.5, 0.004)
    within(shares.x0, 0.36, 0.01)
    within(shares.x1, 0.64, 0.01)
    within(shares.pump, 0, 0.005)
  })
  it('counts twice in a sum', () => {
    const { u, shares } = one(inputs, sum)
    within(u, Math.sqrt(0.25 + 16), 0.03)
    within(shares.pump, 16 / 16.25, 0.005)
  })
  it('with a minus moves the other way', () => {
    const { u } = one([inputs[0] ?? { value: 0 }, { value: 20, u: 0.4, shared: { pump: -2 } }], sum)
    within(u, 0.5, 0.004)
  })
  it('goes beside a rectangle of its own', () => {
    const { u } = one([{ value: 0, low: -edge, high: edge, shared: { pump: 2 } }], sum)
    within(u, Math.sqrt(5), 0.02)
  })
})

// T. Ishigami, T. Homma (1990): y = sin x₁ + 7·sin² x₂ + 0.1·x₃⁴·sin x₁ over ±π (function from memory); its indices in closed
// form: V₁ = ½·(1 + b·π⁴/5)², V₂ = a²/8, V₃ = 0, of V = a²/8 + b·π⁴/5 + b²·π⁸/18 + ½: 0.3139, 0.4424, 0.
it('Ishigami’s function: 0.3139, 0.4424, 0', () => {
  const inputs = Array.from({ length: 3 }, () => ({ value: 0, low: -Math.PI, high: Math.PI }))
  const { shares } = one(inputs, ([a = 0, b = 0, c = 0]) => {
    return Math.sin(a) + 7 * Math.sin(b) ** 2 + 0.1 * c ** 4 * Math.sin(a)
  })
  const whole = 49 / 8 + (0.1 * Math.PI ** 4) / 5 + (0.01 * Math.PI ** 8) / 18 + 0.5
  within(shares.x0, (0.5 * (1 + (0.1 * Math.PI ** 4) / 5) ** 2) / whole, 0.008)
  within(shares.x1, 49 / 8 / whole, 0.008)
  within(shares.x2, 0, 0.003)
})

// Hand calculation: y = 2a + b + 0·c of unit normals: shares 4/5, 1/5, 0; with 10,000 draws as the app takes.
it('shares of a straight sum', () => {
  const inputs = Array.from({ length: 3 }, () => ({ value: 0, u: 1 }))
  const { shares } = one(inputs, ([a = 0, b = 0]) => 2 * a + b, 10_000)
  within(shares.x0, 0.8, 0.02)
  within(shares.x1, 0.2, 0.02)
  within(shares.x2, 0, 0.01)
})

describe('in steps', () => {
  const asked = {
    inputs: [{ value: 1, u: 0.1 }],
    names: ['x'],
    outputs: 1,
    run: (values: Float64Array) => values,
    draws: 1000,
    seed: 3,
  }
  it('tells how far it is, and gives the same as at once', () => {
    const steps = doubtInSteps(asked, 300)
    const seen: number[] = []
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) {
        expect(step.value).toEqual(doubtAtOnce(asked))
        break
      }
      expect(step.value).toMatchObject({ draws: 1000, refused: 0 })
      seen.push(step.value.drawn)
    }
    expect(seen).toEqual([300, 600, 900])
  })
  it('stops where nobody asks for more', () => {
    let worked = 0
    const counted = (values: Float64Array) => {
      worked += 1
      return values
    }
    const steps = doubtInSteps({ ...asked, run: counted }, 100)
    steps.next()
    steps.next()
    // Nothing is left to give back.
    expect(steps.return({ refused: 0, outputs: [] }).done).toBe(true)
    expect(worked).toBe(200)
  })
  it('counts refused draws, and refuses once they are over 1 %', () => {
    const rarely = (values: Float64Array) => ((values[0] ?? 0) > 1.25 ? null : values)
    const { refused, outputs } = doubtAtOnce({ ...asked, run: rarely })
    expect(refused).toBeGreaterThan(0)
    expect(outputs[0]?.values).toHaveLength(1000 - refused)
    const often = (values: Float64Array) => ((values[0] ?? 0) > 1.1 ? null : values)
    expect(() => doubtAtOnce({ ...asked, run: often })).toThrow(Refusal)
  })
  it('the same seed gives the same, another one does not', () => {
    expect(doubtAtOnce(asked)).toEqual(doubtAtOnce(asked))
    expect(doubtAtOnce({ ...asked, seed: 4 })).not.toEqual(doubtAtOnce(asked))
  })
})
