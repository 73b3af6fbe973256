import { describe, expect, it } from 'vitest'
import { seededDraws } from '../numerics/random.ts'
import { type Doubtful, drawOf, firstOrderIndex, spreadOf } from './doubt.ts'

const count = 200_000

function sums(inputs: readonly Doubtful[], weights: readonly number[]) {
  const draw = seededDraws(7)
  const drawn = inputs.map(() => [] as number[])
  const outputs = Array.from({ length: count }, () =>
    inputs.reduce((sum, input, index) => {
      const value = drawOf(input, draw)
      drawn[index]?.push(value)
      return sum + (weights[index] ?? 0) * value
    }, 0),
  )
  return { drawn, outputs }
}

// JCGM 101:2008 (GUM supplement 1), 9.2: four standard normals add up to u = 2.00; four rectangulars of sd 1 likewise.
// 90 % of a normal is ±1.6449·u; of four rectangulars (exact, Irwin–Hall) ±3.3 within 0.03.
describe('JCGM 101:2008 9.2, four inputs', () => {
  it('normal: u = 2.00, 90 % at ±3.29', () => {
    const { outputs } = sums(
      Array.from({ length: 4 }, () => ({ value: 0, u: 1 })),
      [1, 1, 1, 1],
    )
    const { median, low, high } = spreadOf(outputs)
    expect(Math.sqrt(outputs.reduce((sum, y) => sum + y * y, 0) / count)).toBeCloseTo(2, 1)
    expect(Math.abs(median)).toBeLessThan(0.02)
    expect(Math.abs(high - 3.29)).toBeLessThan(0.03)
    expect(Math.abs(low + 3.29)).toBeLessThan(0.03)
  })
  it('rectangular: u = 2.00', () => {
    const edge = Math.sqrt(3)
    const { outputs } = sums(
      Array.from({ length: 4 }, () => ({ value: 0, low: -edge, high: edge })),
      [1, 1, 1, 1],
    )
    expect(Math.sqrt(outputs.reduce((sum, y) => sum + y * y, 0) / count)).toBeCloseTo(2, 1)
  })
})

// Hand calculation: y = 2a + b + 0·c of unit normals: shares 4/5, 1/5, 0.
it('shares of a straight sum', () => {
  const { drawn, outputs } = sums(
    Array.from({ length: 3 }, () => ({ value: 0, u: 1 })),
    [2, 1, 0],
  )
  const shares = drawn.map((inputs) => firstOrderIndex(inputs, outputs))
  expect(shares[0]).toBeCloseTo(0.8, 1.5)
  expect(shares[1]).toBeCloseTo(0.2, 1.5)
  expect(shares[2]).toBeLessThan(0.005)
})
