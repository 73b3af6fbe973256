/** Published examples of doubt carried through a formula: JCGM 101:2008 (GUM supplement 1) section 9, GUM annex H. */
import { describe, it } from 'vitest'
import { studentFactor } from '../numerics/student-t.ts'
import type { Doubtful } from './doubtful.ts'
import { edge, one, shortestHolding, study, sum, symmetricBand, within } from './drawn-for-tests.ts'

// JCGM 101:2008 (GUM supplement 1), 9.2. Printed: four standard normals u = 2.00, 95 % ±3.92; four rectangulars of sd 1
// u = 2.00, 95 % ±3.88 (exact 2·√3·(2 − (3/5)^¼) = 3.8807). At our 90 %: 2·1.6449, and 2·√3·(2 − (24·0.05)^¼) by Irwin–Hall,
// where P(sum > 2 − s) = s⁴/24 of unit widths.
describe('JCGM 101 9.2, four inputs added', () => {
  it('normal', () => {
    const { u, mean, low, high, shares, values } = one(
      Array.from({ length: 4 }, () => ({ value: 0, u: 1 })),
      sum,
    )
    within(u, 2, 0.01)
    within(mean, 0, 0.015)
    for (const end of symmetricBand(values, 0.95)) within(Math.abs(end), 3.92, 0.03)
    within(high, 3.29, 0.03)
    within(low, -3.29, 0.03)
    for (const share of Object.values(shares)) within(share, 0.25, 0.01)
  })
  it('rectangular', () => {
    const inputs = Array.from({ length: 4 }, () => ({ value: 0, low: -edge, high: edge }))
    const { u, high, low, values } = one(inputs, sum)
    const exact = 2 * edge * (2 - (24 * 0.05) ** 0.25)
    within(u, 2, 0.01)
    for (const end of symmetricBand(values, 0.95)) within(Math.abs(end), 3.88, 0.03)
    within(high, exact, 0.03)
    within(low, -exact, 0.03)
  })
  // 9.2.4: one of them ten times as wide: u 10.1, 95 % ±17.0 (printed, from memory; exact √(3 + 100) = 10.149, ±17.02).
  it('one rectangular ten times as wide', () => {
    const inputs = [1, 1, 1, 10].map((wide) => ({ value: 0, low: -edge * wide, high: edge * wide }))
    const { u, shares, values } = one(inputs, sum)
    within(u, 10.1, 0.06)
    for (const end of symmetricBand(values, 0.95)) within(Math.abs(end), 17, 0.05)
    within(shares.x3, 100 / 103, 0.005)
  })
})

// JCGM 101:2008, 9.3, calibration of a weight: inputs of its table 5 from memory, [mg] and [kg/m³]. Printed (from memory, and
// recomputed by an independent run of 10⁷ draws): 1.234 mg, u 0.0754 mg, where first-order propagation gives 0.0539; shortest
// 95 % 1.0834 to 1.3825 mg, whose ends wander by some thousandths with 200,000 draws, its length by one.
it('JCGM 101 9.3, mass calibration', () => {
  const inputs: Doubtful[] = [
    { value: 100_000, u: 0.05 },
    { value: 1.234, u: 0.02 },
    { value: 1.2, low: 1.1, high: 1.3 },
    { value: 8000, low: 7000, high: 9000 },
    { value: 8000, low: 7950, high: 8050 },
  ]
  const { mean, u, values } = one(inputs, ([reference = 0, extra = 0, air = 0, weight = 1, other = 1]) => {
    return (reference + extra) * (1 + (air - 1.2) * (1 / weight - 1 / other)) - 100_000
  })
  within(mean, 1.234, 0.001)
  within(u, 0.0754, 0.0003)
  const [low, high] = shortestHolding(values, 0.95)
  within(low, 1.0834, 0.006)
  within(high, 1.3825, 0.006)
  within(high - low, 1.3825 - 1.0834, 0.0015)
})

// JCGM 101:2008, 9.4, comparison loss of a power meter: y = x₁² + x₂², u = 0.005 each, x₂ = 0, correlated by r or not; all in
// 10⁻⁶. Mean x₁² + 2u² and u(y)² = 4·x₁²·u² + 4·u⁴·(1 + r²) by hand; shortest 95 % as printed (from memory).
describe('JCGM 101 9.4, comparison loss', () => {
  it.each([
    [0, 0, 50, 50, 0, 150],
    [0.01, 0, 150, 112, 0, 367],
    [0.05, 0, 2550, 502, 1590, 3543],
    [0, 0.9, 50, 67, 0, 185],
    [0.01, 0.9, 150, 121, 13, 398],
    [0.05, 0.9, 2550, 505, 1628, 3555],
  ])('x₁ %f, r %f: %i, u %i, %i to %i', (x1, r, value, u, low, high) => {
    const inputs: Doubtful[] = [
      { value: x1, u: 0.005 * Math.sqrt(1 - r), shared: { bridge: 0.005 * Math.sqrt(r) } },
      { value: 0, u: 0.005 * Math.sqrt(1 - r), shared: { bridge: 0.005 * Math.sqrt(r) } },
    ]
    const answer = one(inputs, ([real = 0, imaginary = 0]) => 1e6 * (real * real + imaginary * imaginary))
    within(answer.mean, value, 0.5 + 4 * (u / Math.sqrt(200_000)))
    within(answer.u, u, 0.5 + u * 0.01)
    const [from, to] = shortestHolding(answer.values, 0.95)
    within(from, low, 0.5 + 0.03 * u)
    within(to, high, 0.5 + 0.03 * u)
  })
})

// JCGM 101:2008, 9.5, the gauge block of GUM H.1 by draws: inputs of its table 9 from memory, lengths in nm; t with 18, 24, 5
// and 8 degrees of freedom, a rectangle, an arcsine, two trapezoids with curved flanks. Published (from memory): 838 nm,
// u 36 nm, where first order gives 32; shortest 99 % 745 to 931. An independent run of 10⁷ draws: 838.00, 35.81, 744.2 to 931.5.
it('JCGM 101 9.5, gauge block', () => {
  const inputs: Doubtful[] = [
    { value: 50_000_623, u: 25, freedom: 18 },
    { value: 215, u: 6, freedom: 24 },
    { value: 0, u: 4, freedom: 5 },
    { value: 0, u: 7, freedom: 8 },
    { value: 11.5e-6, low: 9.5e-6, high: 13.5e-6 },
    { value: -0.1, u: 0.2 },
    { value: 0, low: -0.5, high: 0.5, shape: 'arcsine' },
    { value: 0, low: -1e-6, high: 1e-6, ends: 0.1e-6 },
    { value: 0, low: -0.05, high: 0.05, ends: 0.025 },
  ]
  const longer = ([
    reference = 0,
    measured = 0,
    chance = 0,
    unknown = 0,
    spread = 0,
    warm = 0,
    swing = 0,
    apart = 0,
    warmer = 0,
  ]: readonly number[]) => {
    return reference + measured + chance + unknown - reference * (apart * (warm + swing) + spread * warmer) - 5e7
  }
  const { mean, u, values } = one(inputs, longer, 400_000)
  within(mean, 838, 0.3)
  within(u, 35.81, 0.15)
  within(u, 36, 0.5)
  const [low, high] = shortestHolding(values, 0.99)
  within(low, 744.2, 2)
  within(high, 931.5, 2)
  within(high - low, 187.3, 1.2)
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
  // H.1.6: 16 degrees of freedom for the whole, k = 2.92 for 99 %, U = 93 nm (92.62 with the unrounded u).
  it('expanded to 99 % by Student’s t: 93 nm', () => within(studentFactor(0.99, 16) * 31.71, 92.62, 0.01))
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
