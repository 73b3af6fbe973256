import { describe, expect, it } from 'vitest'
import { Refusal } from '../refusal/refusal.ts'
import { doubtAtOnce, doubtInSteps } from './doubt-in-steps.ts'
import type { Doubtful } from './doubtful.ts'

function study(inputs: readonly Doubtful[], run: (values: readonly number[]) => number | number[], draws = 200_000) {
  const names = inputs.map((_, index) => `x${index}`)
  const first = run(inputs.map(({ value }) => value))
  const outputs = typeof first === 'number' ? 1 : first.length
  const each = (values: Float64Array) => {
    const answer = run([...values])
    return typeof answer === 'number' ? [answer] : answer
  }
  const { outputs: answered } = doubtAtOnce({ inputs, names, outputs, run: each, draws, seed: 7 })
  return answered.map(({ spread, shares, values }) => {
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length
    const u = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1))
    return { ...spread, shares, mean, u }
  })
}

const one = (inputs: readonly Doubtful[], run: (values: readonly number[]) => number, draws?: number) => {
  const [answer] = study(inputs, run, draws)
  if (!answer) throw new Error('no output')
  return answer
}
const within = (value: number | undefined, expected: number, off: number) =>
  expect(Math.abs((value ?? Number.NaN) - expected), `${value} against ${expected}`).toBeLessThanOrEqual(off)
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
const edge = Math.sqrt(3)

// JCGM 101:2008 (GUM supplement 1), 9.2. Printed: four standard normals u = 2.00, four rectangulars of sd 1 u = 2.00. Its
// 95 % intervals (±3.92, ±3.88) become ±3.29 and ±3.33 at our 90 %: 2·1.6449; 2·√3·(2 − 4·0.05·24)^¼ by Irwin–Hall,
// where P(sum > 2 − s) = s⁴/24 of unit widths: s = (24·0.05)^¼.
describe('JCGM 101 9.2, four inputs added', () => {
  it('normal', () => {
    const { u, mean, low, high, shares } = one(
      Array.from({ length: 4 }, () => ({ value: 0, u: 1 })),
      sum,
    )
    within(u, 2, 0.01)
    within(mean, 0, 0.015)
    within(high, 3.29, 0.03)
    within(low, -3.29, 0.03)
    for (const share of Object.values(shares)) within(share, 0.25, 0.01)
  })
  it('rectangular', () => {
    const inputs = Array.from({ length: 4 }, () => ({ value: 0, low: -edge, high: edge }))
    const { u, high, low } = one(inputs, sum)
    const exact = 2 * edge * (2 - (24 * 0.05) ** 0.25)
    within(u, 2, 0.01)
    within(high, exact, 0.03)
    within(low, -exact, 0.03)
  })
  // 9.2.4: one of them ten times as wide: u 10.1 (printed, from memory; exact √(3 + 100) = 10.149).
  it('one rectangular ten times as wide', () => {
    const inputs = [1, 1, 1, 10].map((wide) => ({ value: 0, low: -edge * wide, high: edge * wide }))
    const { u, shares } = one(inputs, sum)
    within(u, 10.1, 0.06)
    within(shares.x3, 100 / 103, 0.005)
  })
})

// JCGM 101:2008, 9.3, calibration of a weight: inputs of its table 5 from memory, [mg] and [kg/m³]. Printed (from memory, and
// recomputed by an independent run of 10⁷ draws): 1.234 mg, u 0.0754 mg, where first-order propagation gives 0.0539.
it('JCGM 101 9.3, mass calibration', () => {
  const inputs: Doubtful[] = [
    { value: 100_000, u: 0.05 },
    { value: 1.234, u: 0.02 },
    { value: 1.2, low: 1.1, high: 1.3 },
    { value: 8000, low: 7000, high: 9000 },
    { value: 8000, low: 7950, high: 8050 },
  ]
  const { mean, u } = one(inputs, ([reference = 0, extra = 0, air = 0, weight = 1, other = 1]) => {
    return (reference + extra) * (1 + (air - 1.2) * (1 / weight - 1 / other)) - 100_000
  })
  within(mean, 1.234, 0.001)
  within(u, 0.0754, 0.0003)
})

// GUM (JCGM 100:2008) H.1, end gauge, values seen: l = lS + d − lS·(δα·θ + αS·δθ) in nm; lS 50 000 623 (25), d 215 (9.7),
// αS 11.5e-6 (1.2e-6), θ −0.1 (0.41), δα 0 (0.58e-6), δθ 0 (0.029). Printed: 50 000 838 nm, contributions 25, 9.7, 0, 0,
// 2.9, 16.6, u 32 (31.71) by first order; products of two doubts add (lS·u·u)² to that, as H.1.7 says: 34 nm.
describe('GUM H.1, end gauge', () => {
  const inputs: Doubtful[] = [
    { value: 50_000_623, u: 25 },
    { value: 215, u: 9.7 },
    { value: 11.5e-6, u: 1.2e-6 },
    { value: -0.1, u: 0.41 },
    { value: 0, u: 0.58e-6 },
    { value: 0, u: 0.029 },
  ]
  it('the length, and a doubt that holds the products too', () => {
    const { mean, u } = one(inputs, ([length = 0, more = 0, spread = 0, warm = 0, apart = 0, warmer = 0]) => {
      return length + more - length * (apart * warm + spread * warmer)
    })
    const products = (50_000_623 * 0.58e-6 * 0.41) ** 2 + (50_000_623 * 1.2e-6 * 0.029) ** 2
    within(mean, 50_000_838, 0.5)
    within(u, Math.sqrt(31.71 ** 2 + products), 0.15)
    within(u, 34, 0.5)
  })
  it('made straight: u 31.71, and each contribution’s share of it', () => {
    const { u, shares } = one(inputs, ([length = 0, more = 0, , , apart = 0, warmer = 0]) => {
      return length + more - 50_000_623 * (apart * -0.1 + 11.5e-6 * warmer)
    })
    within(u, 31.71, 0.15)
    const contributions = [25, 9.7, 0, 0, 2.9, 16.6]
    contributions.forEach((contribution, index) => {
      within(shares[`x${index}`], (contribution / 31.71) ** 2, 0.01)
    })
  })
})

// GUM H.2: five readings of voltage, current and phase. Printed: R 127.732 Ω (u 0.071), X 219.847 (0.295), Z 254.260
// (0.236), r(V, I) −0.36, r(V, φ) 0.86, r(I, φ) −0.65. Three shared errors carry that correlation: the triangular root of
// the means' covariance.
describe('GUM H.2, correlated inputs by shared errors', () => {
  const readings = [
    [5.007, 19.663e-3, 1.0456],
    [4.994, 19.639e-3, 1.0438],
    [5.005, 19.64e-3, 1.0468],
    [4.99, 19.685e-3, 1.0428],
    [4.999, 19.678e-3, 1.0433],
  ]
  const at = (row: readonly number[] | undefined, column: number) => row?.[column] ?? Number.NaN
  const means = [0, 1, 2].map((column) => sum(readings.map((row) => at(row, column))) / 5)
  const covariance = [0, 1, 2].map((one) =>
    [0, 1, 2].map(
      (other) => sum(readings.map((row) => (at(row, one) - at(means, one)) * (at(row, other) - at(means, other)))) / 20,
    ),
  )
  const root = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ]
  for (let row = 0; row < 3; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      const before = sum(Array.from({ length: column }, (_, k) => at(root[row], k) * at(root[column], k)))
      const left = at(covariance[row], column) - before
      const target = root[row]
      if (target) target[column] = row === column ? Math.sqrt(left) : left / at(root[column], column)
    }
  }
  const inputs: Doubtful[] = means.map((value, row) => ({
    value,
    shared: Object.fromEntries(['first', 'second', 'third'].map((name, column) => [name, at(root[row], column)])),
  }))

  it('R, X and Z with their doubts', () => {
    const [resistance, reactance, impedance] = study(inputs, ([volts = 0, amperes = 1, phase = 0]) => {
      const z = volts / amperes
      return [z * Math.cos(phase), z * Math.sin(phase), z]
    })
    const printed = [
      [resistance, 127.732, 0.071],
      [reactance, 219.847, 0.295],
      [impedance, 254.26, 0.236],
    ] as const
    for (const [answer, value, u] of printed) {
      within(answer?.mean, value, 0.0025)
      within(answer?.u, u, 0.0015)
    }
  })
  it('the correlations of the readings', () => {
    const [volts, amperes, phase] = inputs.map((_, index) => Math.sqrt(at(covariance[index], index)))
    within(at(covariance[0], 1) / ((volts ?? 0) * (amperes ?? 0)), -0.36, 0.005)
    within(at(covariance[0], 2) / ((volts ?? 0) * (phase ?? 0)), 0.86, 0.005)
    within(at(covariance[1], 2) / ((amperes ?? 0) * (phase ?? 0)), -0.65, 0.005)
  })
})

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
