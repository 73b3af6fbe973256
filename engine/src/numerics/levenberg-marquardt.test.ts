import { describe, expect, it } from 'vitest'
import enso from '../../reference/enso.json' with { type: 'json' }
import reference from '../../reference/nonlinear-regression.json' with { type: 'json' }
import { levenbergMarquardt } from './levenberg-marquardt.ts'

type Model = (b: ArrayLike<number>, x: number) => number
const at = (b: ArrayLike<number>, index: number) => b[index] ?? Number.NaN

const models: Readonly<Record<string, Model>> = {
  Misra1a: (b, x) => at(b, 0) * (1 - Math.exp(-at(b, 1) * x)),
  MGH09: (b, x) => (at(b, 0) * (x * x + x * at(b, 1))) / (x * x + x * at(b, 2) + at(b, 3)),
  BoxBOD: (b, x) => at(b, 0) * (1 - Math.exp(-at(b, 1) * x)),
  MGH10: (b, x) => at(b, 0) * Math.exp(at(b, 1) / (x + at(b, 2))),
  Rat43: (b, x) => at(b, 0) / (1 + Math.exp(at(b, 1) - at(b, 2) * x)) ** (1 / at(b, 3)),
  ENSO: (b, x) => {
    const wave = (period: number, cosine: number, sine: number) => {
      const angle = (2 * Math.PI * x) / period
      return cosine * Math.cos(angle) + sine * Math.sin(angle)
    }
    const year = wave(12, at(b, 1), at(b, 2))
    return at(b, 0) + year + wave(at(b, 3), at(b, 4), at(b, 5)) + wave(at(b, 6), at(b, 7), at(b, 8))
  },
  Thurber: (b, x) =>
    (at(b, 0) + x * (at(b, 1) + x * (at(b, 2) + x * at(b, 3)))) / (1 + x * (at(b, 4) + x * (at(b, 5) + x * at(b, 6)))),
}

/** Agreeing digits, as NIST counts them: −log10 of the relative difference. */
const digits = (ours: number, certified: number) =>
  -Math.log10(Math.abs(ours - certified) / Math.abs(certified) || 1e-16)

/** Digits where parameters nearly do the same: the slopes are differences, so fewer are left. */
const fewer: Readonly<Record<string, number>> = { ENSO: 8, MGH10: 6.5 }

const { months, ...ofEnso } = enso
const sets = [...reference.sets, { ...ofEnso, pairs: months.map((y, index) => [y, index + 1]) }]

// NIST StRD nonlinear regression: 11 digits certified; Misra1a lower, ENSO average, the others higher difficulty.
describe.each(sets)('NIST StRD $name', ({ name, starts, values, deviations, sumOfSquares, freedom, pairs }) => {
  const model = models[name]
  if (!model) throw new Error(`no model for ${name}`)

  it.each(starts.map((start) => [start]))('from %s', (start) => {
    const residuals = (b: Float64Array, out: Float64Array) => {
      pairs.forEach(([y = Number.NaN, x = Number.NaN], index) => {
        out[index] = y - model(b, x)
      })
    }
    const fit = levenbergMarquardt({ residuals, count: pairs.length, start })
    expect(fit.converged).toBe(true)
    expect(fit.freedom).toBe(freedom)
    expect(digits(fit.sumOfSquares, sumOfSquares)).toBeGreaterThan(9.5)
    values.forEach((value, index) => {
      expect(digits(at(fit.parameters, index), value), `b${index + 1}`).toBeGreaterThan(fewer[name] ?? 9)
    })
    deviations.forEach((deviation, index) => {
      const variance = (fit.covariance?.[index]?.[index] ?? Number.NaN) * (fit.sumOfSquares / freedom)
      expect(digits(Math.sqrt(variance), deviation), `sd of b${index + 1}`).toBeGreaterThan(6)
    })
  })
})

describe('what it can not tell, it says', () => {
  const line = (slope: number, height: number) => Array.from({ length: 5 }, (_, x) => ({ x, y: slope * x + height }))

  // Straight line y = 2x − 1 with the slope held at 1.5 at most: then the mean decides, height = mean(y) − 1.5·mean(x) = 0.
  it('stops at a bound', () => {
    const points = line(2, -1)
    const fit = levenbergMarquardt({
      residuals: (b, out) => out.set(points.map(({ x, y }) => at(b, 0) * x + at(b, 1) - y)),
      count: 5,
      start: [0, 0],
      upper: [1.5, 10],
      lower: [-10, -10],
    })
    expect(fit.converged).toBe(true)
    expect(fit.parameters[0]).toBe(1.5)
    expect(fit.parameters[1]).toBeCloseTo(0, 9)
  })

  // Covariance of a straight line with u = 1: [[1/Σ(x−x̄)², …], …] = [[0.1, −0.2], [−0.2, 0.6]] for x = 0…4 (by hand).
  it('covariance of a straight line', () => {
    const points = line(2, -1)
    const fit = levenbergMarquardt({
      residuals: (b, out) => out.set(points.map(({ x, y }) => at(b, 0) * x + at(b, 1) - y)),
      count: 5,
      start: [0, 0],
    })
    const expected = [0.1, -0.2, -0.2, 0.6]
    fit.covariance?.flat().forEach((value, index) => {
      expect(value).toBeCloseTo(at(expected, index), 8)
    })
    expect(fit.covariance?.flat().length).toBe(4)
  })

  it('two parameters that do the same have no covariance', () => {
    const points = line(2, 0)
    const fit = levenbergMarquardt({
      residuals: (b, out) => out.set(points.map(({ x, y }) => (at(b, 0) + at(b, 1)) * x - y)),
      count: 5,
      start: [0, 0],
    })
    expect(fit.covariance).toBeNull()
  })

  // NIST StRD MGH10 from its farther start, a valley some thousand times longer than wide: no answer is better than a wrong one.
  it('says so where 2000 rounds are too few', () => {
    const set = sets.find(({ name }) => name === 'MGH10')
    const residuals = (b: Float64Array, out: Float64Array) => {
      set?.pairs.forEach(([y = Number.NaN, x = Number.NaN], index) => {
        out[index] = y - at(b, 0) * Math.exp(at(b, 1) / (x + at(b, 2)))
      })
    }
    expect(levenbergMarquardt({ residuals, count: 16, start: [2, 400_000, 25_000] }).converged).toBe(false)
  })

  // y = a·(1 − e^(−b·x)) at y = 1 throughout: the larger b the better, without end. Far out it no longer matters.
  it('a plateau is no answer', () => {
    const residuals = (b: Float64Array, out: Float64Array) => {
      for (let x = 1; x <= 5; x += 1) out[x - 1] = 1 + 0.1 * (x % 2) - at(b, 0) * (1 - Math.exp(-at(b, 1) * x))
    }
    expect(levenbergMarquardt({ residuals, count: 5, start: [1, 1] }).converged).toBe(false)
  })

  it('says so where it gives up', () => {
    const away = {
      residuals: (b: Float64Array, out: Float64Array) => out.set([Math.exp(-at(b, 0))]),
      count: 1,
      start: [0],
    }
    expect(levenbergMarquardt({ ...away, rounds: 20 }).converged).toBe(false)
    const nowhere = { residuals: (_: Float64Array, out: Float64Array) => out.fill(Number.NaN), count: 3, start: [1] }
    expect(levenbergMarquardt(nowhere).converged).toBe(false)
  })
})
