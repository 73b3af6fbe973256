import { describe, expect, it } from 'vitest'
import { upperGamma } from './incomplete-gamma.ts'
import { minimum } from './minimum.ts'
import { normalQuantile, normalShare } from './normal-distribution.ts'

describe('chi square through the incomplete gamma', () => {
  // Upper tails of χ²: NIST/SEMATECH e-Handbook 1.3.6.7.4, as printed (three decimals; table from memory).
  it.each([
    [1, 0.05, 3.841],
    [5, 0.05, 11.07],
    [10, 0.01, 23.209],
    [22, 0.001, 48.268],
    [50, 0.1, 63.167],
  ])('%i degrees: %f lies beyond %f', (freedom, tail, value) => {
    const edge = (chi: number) => upperGamma(freedom / 2, chi / 2)
    expect(edge(value + 0.0005)).toBeLessThanOrEqual(tail)
    expect(edge(value - 0.0005)).toBeGreaterThanOrEqual(tail)
  })
  // Q(1, x) = e^−x, Q(2, x) = (1 + x)·e^−x: exact.
  it.each([0.1, 1, 3, 40, 300])('closed forms at %f', (x) => {
    expect(upperGamma(1, x) / Math.exp(-x)).toBeCloseTo(1, 11)
    expect(upperGamma(2, x) / ((1 + x) * Math.exp(-x))).toBeCloseTo(1, 11)
  })
})

describe('normal distribution', () => {
  // z of usual shares: ISO 3534-1 / any table, six decimals.
  it.each([
    [0.9, 1.281552],
    [0.95, 1.644854],
    [0.975, 1.959964],
    [0.995, 2.575829],
    [0.9995, 3.290527],
  ])('%f below %f', (share, z) => {
    expect(Math.abs(normalQuantile(share) - z)).toBeLessThanOrEqual(5e-7)
    expect(Math.abs(normalQuantile(1 - share) + z)).toBeLessThanOrEqual(5e-7)
    expect(normalShare(normalQuantile(share))).toBeCloseTo(share, 12)
  })
  // 5 σ: 2.866516e-7 beyond, as quoted in particle physics (PDG review, statistics).
  it('keeps its digits far out', () => expect(normalShare(-5) / 2.866516e-7).toBeCloseTo(1, 6))
})

it('finds the bottom of a valley, and an end where it falls all the way', () => {
  // Derivative of x⁴ − 3x³ + 2 is 0 at 9/4.
  expect(minimum((x) => x ** 4 - 3 * x ** 3 + 2, 0, 4, 1e-9).at).toBeCloseTo(2.25, 6)
  expect(minimum((x) => -x, 0, 1, 1e-6).at).toBeCloseTo(1, 5)
})
