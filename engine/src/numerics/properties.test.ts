/**
 * What must hold for any question, by drawn ones: closed forms, exact identities, and never a number that is none.
 * LEGWORK_PROPERTY_RUNS raises the count.
 */
import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { brent } from './brent.ts'
import { dormandPrince } from './dormand-prince.ts'
import { gaussLegendre } from './gauss-legendre.ts'
import { upperGamma } from './incomplete-gamma.ts'
import { levenbergMarquardt } from './levenberg-marquardt.ts'
import { minimum } from './minimum.ts'
import { normalQuantile, normalShare } from './normal-distribution.ts'
import { backSubstitute, factorise } from './orthogonal-factor.ts'
import { quantile } from './quantile.ts'
import { normalDraw, seededDraws } from './random.ts'
import { studentFactor } from './student-t.ts'

vi.setConfig({ testTimeout: 120_000 })
const numRuns = Math.ceil(Number(process.env.LEGWORK_PROPERTY_RUNS ?? 10_000) / 50)
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const at = (list: ArrayLike<number>, index: number) => list[index] ?? Number.NaN
const holds = <Drawn extends unknown[]>(
  arbitraries: { [K in keyof Drawn]: fc.Arbitrary<Drawn[K]> },
  check: (...drawn: Drawn) => void,
) =>
  fc.assert(
    fc.property(fc.tuple<Drawn>(...arbitraries), (drawn) => check(...drawn)),
    { numRuns, seed: 20_261_128 },
  )

describe('roots and valleys', () => {
  it('the root of a rising curve, however steep, however far from either end', () => {
    holds([between(-50, 50), between(0.1, 100), between(0.1, 100), between(0, 1e4)], (root, below, above, bent) => {
      const curve = (x: number) => (x - root) * (1 + bent * (x - root) ** 2)
      const found = brent(curve, root - below, root + above, 1e-10)
      expect(Math.abs((found ?? Number.NaN) - root)).toBeLessThanOrEqual(1e-9)
      expect(brent(curve, root + 0.01, root + above + 0.02, 1e-10)).toBeNull()
    })
  })
  it('the bottom of a valley, to the root of the rounding', () => {
    holds([between(-50, 50), between(0.1, 50), between(0.1, 50), between(0, 100)], (bottom, below, above, bent) => {
      const valley = (x: number) => (x - bottom) ** 2 * (1 + bent * (x - bottom) ** 2)
      const { at: found, value } = minimum(valley, bottom - below, bottom + above, 1e-7)
      expect(Math.abs(found - bottom)).toBeLessThanOrEqual(4e-6)
      expect(value).toBe(valley(found))
    })
  })
})

// Σ cₖ·xᵏ from −1 to 1 is Σ 2·cₖ/(k + 1) over even k: exact for degrees up to 2·count − 1.
it('Gauss–Legendre integrates polynomials exactly', () => {
  const drawn = fc
    .integer({ min: 1, max: 24 })
    .chain((count) => fc.tuple(fc.constant(count), fc.array(between(-3, 3), { minLength: 1, maxLength: 2 * count })))
  holds([drawn], ([count, factors]) => {
    const { nodes, weights } = gaussLegendre(count)
    const polynomial = (x: number) => factors.reduceRight((sum, factor) => sum * x + factor, 0)
    const worked = nodes.reduce((sum, node, index) => sum + at(weights, index) * polynomial(node), 0)
    const exact = factors.reduce((sum, factor, power) => (power % 2 === 0 ? sum + (2 * factor) / (power + 1) : sum), 0)
    expect(Math.abs(worked - exact)).toBeLessThanOrEqual(1e-12 * (1 + factors.length))
  })
})

describe('quantiles', () => {
  const some = fc.array(between(-1e6, 1e6), { minLength: 1, maxLength: 40 })
  it('grow with the share, from the smallest to the largest, and move with their numbers', () => {
    holds([some, between(0, 1), between(0, 1), between(0.1, 10)], (numbers, one, other, factor) => {
      // −0 is 0 here.
      const sorted = numbers.map((number) => number + 0).sort((a, b) => a - b)
      const [low, high] = [Math.min(one, other), Math.max(one, other)]
      expect(quantile(sorted, 0)).toBe(sorted[0])
      expect(quantile(sorted, 1)).toBe(sorted.at(-1))
      expect(quantile(sorted, low)).toBeLessThanOrEqual(quantile(sorted, high) + 1e-9)
      const moved = sorted.map((number) => factor * number + 7)
      expect(Math.abs(quantile(moved, low) - (factor * quantile(sorted, low) + 7))).toBeLessThanOrEqual(1e-7)
    })
  })
})

describe('distributions', () => {
  it('the normal quantile undoes the share below', () => {
    holds([between(-7.5, 7.5)], (z) => {
      // Far above 0 a share has lost the digits that tell z.
      const tolerance = 1e-10 + 1e-15 / Math.exp((-z * z) / 2)
      expect(Math.abs(normalQuantile(normalShare(z)) - z)).toBeLessThanOrEqual(z < 0 ? 1e-9 : 20 * tolerance)
      expect(Math.abs(normalShare(z) + normalShare(-z) - 1)).toBeLessThanOrEqual(1e-14)
    })
  })
  // Abramowitz & Stegun 6.5.21: Q(a + 1, x) = Q(a, x) + x^a·e^−x/Γ(a + 1), here for whole and half a.
  it('the incomplete gamma falls and keeps its recurrence', () => {
    holds([fc.integer({ min: 1, max: 60 }), between(0.01, 80), between(0.001, 5)], (twice, x, more) => {
      const a = twice / 2
      let gamma = twice % 2 === 0 ? 1 : Math.sqrt(Math.PI)
      for (let k = twice % 2 === 0 ? 1 : 0.5; k <= a; k += 1) gamma *= k
      const term = Math.exp(a * Math.log(x) - x) / gamma
      expect(Math.abs(upperGamma(a + 1, x) - upperGamma(a, x) - term)).toBeLessThanOrEqual(1e-11)
      expect(upperGamma(a, x + more)).toBeLessThanOrEqual(upperGamma(a, x) + 1e-13)
    })
  })
  // One degree: tan(π·p/2); two: p·√(2/(1 − p²)): the distribution functions by hand.
  it('Student’s factor has its closed forms, and falls to the normal’s', () => {
    holds([between(0.01, 0.99), fc.integer({ min: 1, max: 300 })], (share, freedom) => {
      expect(studentFactor(share, 1) / Math.tan((Math.PI * share) / 2)).toBeCloseTo(1, 9)
      expect(studentFactor(share, 2) / (share * Math.sqrt(2 / (1 - share * share)))).toBeCloseTo(1, 9)
      expect(studentFactor(share, freedom + 1)).toBeLessThan(studentFactor(share, freedom))
      expect(studentFactor(share, freedom)).toBeGreaterThan(normalQuantile((1 + share) / 2))
    })
  })
})

describe('random numbers', () => {
  it('the same for a seed, in 0 … 1, alike in sixteen classes for any seed', () => {
    holds([fc.integer()], (seed) => {
      const [draw, again] = [seededDraws(seed), seededDraws(seed)]
      const counts = new Float64Array(16)
      let same = true
      for (let round = 0; round < 1600; round += 1) {
        const one = draw()
        same &&= one === again()
        counts[Math.floor(one * 16)] = at(counts, Math.floor(one * 16)) + 1
      }
      const chi = counts.reduce((sum, count) => sum + (count - 100) ** 2 / 100, 0)
      expect(same).toBe(true)
      // 15 degrees of freedom: beyond 60 is one in two million.
      expect(chi).toBeLessThan(60)
    })
  })
  it('neighbours and neighbouring seeds have nothing in common', () => {
    const [one, next] = [seededDraws(1), seededDraws(2)]
    const pairs = Array.from({ length: 40_000 }, () => [one() - 0.5, next() - 0.5])
    const product = (index: number, other: number, lag: number) =>
      pairs.slice(lag).reduce((sum, pair, place) => sum + at(pair, index) * at(pairs[place] ?? [], other), 0) *
      (12 / pairs.length)
    // Correlations of 40,000 independent pairs scatter by 0.005.
    for (const found of [product(0, 1, 0), product(0, 0, 1), product(0, 0, 2), product(1, 1, 1)]) {
      expect(Math.abs(found)).toBeLessThan(0.02)
    }
  })
  it('normal draws: mean 0, variance 1, kurtosis 3', () => {
    const draw = seededDraws(5)
    const drawn = Array.from({ length: 100_000 }, () => normalDraw(draw))
    const moment = (power: number) => drawn.reduce((sum, z) => sum + z ** power, 0) / drawn.length
    expect(Math.abs(moment(1))).toBeLessThan(0.013)
    expect(Math.abs(moment(2) - 1)).toBeLessThan(0.018)
    expect(Math.abs(moment(4) - 3)).toBeLessThan(0.13)
  })
})

// x″ = −ω²·x − 2ζω·x′ from x = 1 at rest: e^(−ζωt)·(cos ω_d·t + ζω/ω_d·sin ω_d·t), first 0 at (π − atan(ω_d/(ζω)))/ω_d.
it('Dormand–Prince follows any damped swing, and finds where it first passes 0', () => {
  holds([between(0.2, 50), between(0.01, 0.95), between(0.1, 3)], (omega, zeta, turns) => {
    const damped = omega * Math.sqrt(1 - zeta * zeta)
    const until = (2 * Math.PI * turns) / omega
    const exact = (t: number) =>
      Math.exp(-zeta * omega * t) * (Math.cos(damped * t) + ((zeta * omega) / damped) * Math.sin(damped * t))
    const rates = (_t: number, now: Float64Array, out: Float64Array) => {
      out[0] = at(now, 1)
      out[1] = -omega * omega * at(now, 0) - 2 * zeta * omega * at(now, 1)
    }
    const zero = { value: (_t: number, now: Float64Array) => at(now, 0), direction: -1 } as const
    const { state, happened, ended } = dormandPrince(rates, Float64Array.of(1, 0), 0, until, {
      relative: 1e-10,
      absolute: 1e-12,
      events: [zero],
    })
    expect(ended).toBe('time')
    expect(Math.abs(at(state, 0) - exact(until))).toBeLessThanOrEqual(1e-7)
    const first = (Math.PI - Math.atan2(damped, zeta * omega)) / damped
    if (first < until - 1e-6) expect(Math.abs((happened[0]?.time ?? 0) / first - 1)).toBeLessThanOrEqual(1e-7)
    else expect(happened.length).toBeLessThanOrEqual(1)
  })
})

describe('least squares', () => {
  const points = fc.uniqueArray(fc.integer({ min: -20, max: 20 }), { minLength: 4, maxLength: 15 })
  // Straight line by the normal equations: slope Σ(x − x̄)(y − ȳ)/Σ(x − x̄)², its variance 1/Σ(x − x̄)².
  it('a straight line is that of the normal equations, with their covariance', () => {
    holds([points, fc.array(between(-5, 5), { minLength: 15, maxLength: 15 })], (xs, ys) => {
      const n = xs.length
      const [middle, height] = [xs.reduce((a, b) => a + b, 0) / n, xs.reduce((sum, _, i) => sum + at(ys, i), 0) / n]
      const spread = xs.reduce((sum, x) => sum + (x - middle) ** 2, 0)
      const slope = xs.reduce((sum, x, i) => sum + (x - middle) * (at(ys, i) - height), 0) / spread
      const fit = levenbergMarquardt({
        residuals: (b, out) => out.set(xs.map((x, i) => at(b, 0) + at(b, 1) * x - at(ys, i))),
        count: n,
        start: [1, -1],
      })
      expect(fit.converged).toBe(true)
      expect(Math.abs(at(fit.parameters, 1) - slope)).toBeLessThanOrEqual(1e-8)
      expect(Math.abs(at(fit.parameters, 0) - (height - slope * middle))).toBeLessThanOrEqual(1e-7)
      expect(Math.abs(at(fit.covariance?.[1] ?? [], 1) * spread - 1)).toBeLessThanOrEqual(1e-6)
    })
  })
  it('what was made by a law gives that law back', () => {
    holds([between(0.5, 50), between(0.05, 2), between(-5, 5)], (size, fall, floor) => {
      const law = (a: number, b: number, c: number, x: number) => a * Math.exp(-b * x) + c
      const fit = levenbergMarquardt({
        residuals: (b, out) => {
          for (let x = 0; x < 12; x += 1) out[x] = law(at(b, 0), at(b, 1), at(b, 2), x) - law(size, fall, floor, x)
        },
        count: 12,
        start: [size * 1.3, fall * 0.7, floor + 0.5],
      })
      expect(fit.converged).toBe(true)
      expect(Math.abs(at(fit.parameters, 0) / size - 1)).toBeLessThanOrEqual(1e-6)
      expect(Math.abs(at(fit.parameters, 1) / fall - 1)).toBeLessThanOrEqual(1e-6)
      expect(Math.abs(at(fit.parameters, 2) - floor)).toBeLessThanOrEqual(1e-5)
    })
  })
  it('orthogonal factors solve what they are given', () => {
    const square = fc
      .integer({ min: 1, max: 7 })
      .chain((n) =>
        fc.tuple(
          fc.constant(n),
          fc.array(between(-1, 1), { minLength: n * n, maxLength: n * n }),
          fc.array(between(-9, 9), { minLength: n, maxLength: n }),
        ),
      )
    holds([square], ([n, entries, x]) => {
      // A heavy diagonal keeps it solvable.
      const matrix = Float64Array.from(entries, (entry, index) => (index % (n + 1) === 0 ? entry + 2 * n : entry))
      const right = Float64Array.from(x, (_, i) => x.reduce((sum, value, j) => sum + at(matrix, i * n + j) * value, 0))
      const solved = backSubstitute(matrix, n, factorise(matrix, n, n, right), right)
      x.forEach((value, j) => {
        expect(Math.abs(at(solved ?? [], j) - value)).toBeLessThanOrEqual(1e-10)
      })
    })
  })
})
