import { describe, expect, it } from 'vitest'
import { upperGamma } from '../numerics/incomplete-gamma.ts'
import { seededDraws } from '../numerics/random.ts'
import { one } from './drawn-for-tests.ts'
import { arcsine, curvedTrapezoid, type ErrorShape, normal, rectangular, student, triangular } from './error-shapes.ts'

const many = 60_000
const drawnOf = ({ draw }: ErrorShape, seed: number) => {
  const draws = seededDraws(seed)
  return Float64Array.from({ length: many }, () => draw(draws))
}

// Variances of JCGM 101:2008 (GUM supplement 1), 6.4.2 to 6.4.9, of unit half widths: (b − a)²/12, (b − a)²/24, (b − a)²/8,
// (b − a)²/12 + d²/9, ν/(ν − 2); the rectangle here goes from 0 to 1.
const shapes: [string, ErrorShape, number, number][] = [
  ['normal', normal, 0, 1],
  ['rectangular', rectangular, 0.5, 1 / 12],
  ['triangular', triangular, 0, 4 / 24],
  ['arcsine', arcsine, 0, 4 / 8],
  ['trapezoid with curved flanks, ends ±10 %', curvedTrapezoid(0.1), 0, 4 / 12 + 0.1 ** 2 / 9],
  ['trapezoid with curved flanks, ends ±50 %', curvedTrapezoid(0.5), 0, 4 / 12 + 0.5 ** 2 / 9],
  ['trapezoid with curved flanks, ends down to the middle', curvedTrapezoid(1), 0, 4 / 12 + 1 / 9],
  ['t, 5 degrees', student(5), 0, 5 / 3],
  ['t, 8 degrees', student(8), 0, 8 / 6],
  ['t, 24 degrees', student(24), 0, 24 / 22],
]

describe.each(shapes)('%s', (_name, shape, mean, variance) => {
  it('draws have its mean and variance', () => {
    const drawn = drawnOf(shape, 11)
    const middle = drawn.reduce((total, value) => total + value, 0) / many
    const squares = drawn.reduce((total, value) => total + (value - middle) ** 2, 0) / (many - 1)
    expect(Math.abs(middle - mean)).toBeLessThan(4 * Math.sqrt(variance / many))
    expect(Math.abs(squares / variance - 1)).toBeLessThan(0.04)
  })

  // χ² of 40 classes of equal chance by the quantiles; 1 in 10,000 for draws and quantiles of one distribution.
  it('draws fall between its quantiles as they should', () => {
    const classes = 40
    const edges = Array.from({ length: classes - 1 }, (_, index) => shape.quantile((index + 1) / classes))
    const counts = new Float64Array(classes)
    for (const value of drawnOf(shape, 12)) {
      const at = edges.filter((edge) => value >= edge).length
      counts[at] = (counts[at] ?? 0) + 1
    }
    const expected = many / classes
    const chi = counts.reduce((total, count) => total + (count - expected) ** 2 / expected, 0)
    expect(upperGamma((classes - 1) / 2, chi / 2)).toBeGreaterThan(1e-4)
  })
})

// By hand: a curved trapezoid with hardly doubtful ends is a rectangle, with whole ones its tail is (1 − z/2 + z/2·ln(z/2))/2.
it('quantiles of curved flanks', () => {
  expect(curvedTrapezoid(1e-6).quantile(0.9)).toBeCloseTo(0.8, 6)
  const z = curvedTrapezoid(1).quantile(0.9)
  expect((1 - z / 2 + (z / 2) * Math.log(z / 2)) / 2).toBeCloseTo(0.1, 10)
})

// By hand: y = a + b with variances 4/24, 4/8 (times 3) parts 1/4 and 3/4; with a t of 4 degrees, u 1, variance 2.
it('shares go by the variances, whatever the shape', () => {
  const bent = one(
    [
      { value: 0, low: -3, high: 3, shape: 'triangular' },
      { value: 0, low: -3, high: 3, shape: 'arcsine' },
    ],
    ([a = 0, b = 0]) => a + b,
  )
  expect(Math.abs((bent.shares.x0 ?? 0) - 0.25)).toBeLessThan(0.01)
  expect(Math.abs((bent.shares.x1 ?? 0) - 0.75)).toBeLessThan(0.01)
  const heavy = one(
    [
      { value: 0, u: 1, freedom: 10 },
      { value: 0, low: -2, high: 2, ends: 1 },
    ],
    ([a = 0, b = 0]) => a + b,
  )
  // 10/8 and 16/12 + 1/9.
  const whole = 10 / 8 + 16 / 12 + 1 / 9
  expect(Math.abs((heavy.shares.x0 ?? 0) - 10 / 8 / whole)).toBeLessThan(0.01)
  expect(Math.abs((heavy.shares.x1 ?? 0) - (16 / 12 + 1 / 9) / whole)).toBeLessThan(0.01)
})
