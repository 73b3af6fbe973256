import { describe, expect, it } from 'vitest'
import { prepareSpring } from '../spring/prepare-spring.ts'
import type { AirSpring } from '../spring/spring.ts'
import { calibrate } from './calibrate.ts'

const sheet: AirSpring = {
  kind: 'air',
  bore: 0.032,
  shaft: 0.01,
  stroke: 0.15,
  positiveVolume: 0.000197,
  negativeVolume: 0.00003,
  equalisingStroke: 0.0025,
}
const pressure = 600_000
const strokes = [0.02, 0.03, 0.045, 0.06]

/** Points of a fork that is otherwise as its sheet says. */
function points(change: Partial<AirSpring>, u: number, off: readonly number[] = [0, 0, 0, 0]) {
  const there = prepareSpring({ ...sheet, ...change }, pressure)
  return strokes.map((stroke, index) => ({ pressure, stroke, load: there.force(stroke) + (off[index] ?? 0), u }))
}

describe('one dimension from measured points', () => {
  it.each([
    ['negativeVolume', 0.000026],
    ['negativeVolume', 0.000041],
    ['equalisingStroke', 0.0033],
    ['equalisingStroke', 0.0011],
  ] as const)('gives back a %s of %f from points without doubt', (fit, value) => {
    const worked = calibrate(sheet, { points: points({ [fit]: value }, 10), fit })
    expect(worked.value / value).toBeCloseTo(1, 8)
    expect(worked.residual).toBeLessThan(1e-6)
  })

  // Slope of the force over V_n by hand: P_n = c·(V_n + A·x_e)/(V_n + A·x), F = … − P_n·A, so
  // dF/dV_n = −c·A·A·(x − x_e)/(V_n + A·x)². Band 1.645/√Σ(slope/u)², JCGM 100:2008 5.1.2.
  it('its band follows from the slopes', () => {
    const ring = (Math.PI / 4) * (0.032 ** 2 - 0.01 ** 2)
    const area = (Math.PI / 4) * 0.032 ** 2
    const port = ((pressure + 101_325) * 0.000197) / (0.000197 - area * 0.0025)
    const weights = strokes.map((x) => ((port * ring * ring * (x - 0.0025)) / (0.00003 + ring * x) ** 2 / 8) ** 2)
    const half = 1.645 / Math.sqrt(weights.reduce((sum, weight) => sum + weight, 0))
    const worked = calibrate(sheet, { points: points({}, 8) })
    expect((worked.band[1] - worked.value) / half).toBeCloseTo(1, 5)
    expect((worked.value - worked.band[0]) / half).toBeCloseTo(1, 5)
  })

  it('a point with more doubt pulls less', () => {
    const off = [0, 0, 0, 40]
    const even = calibrate(sheet, { points: points({}, 10, off) })
    const last = points({}, 10, off).map((point, index) => (index === 3 ? { ...point, u: 100 } : point))
    const weak = calibrate(sheet, { points: last })
    expect(Math.abs(weak.value - 0.00003)).toBeLessThan(Math.abs(even.value - 0.00003) / 10)
  })

  it('names the point whose stroke an overfilled leg does not reach', () => {
    const lower = { volume: 0.000205, stanchion: 0.035, rod: 0.01, legs: [{ oil: 120e-6 }] }
    const asked = [...points({}, 10), { pressure, load: 900, stroke: 0.14 }]
    expect(() => calibrate({ ...sheet, lower }, { points: asked })).toThrow(/^points\[4\]\.stroke is 140 mm/)
  })

  it('refuses points that no value in reach fits', () => {
    const far = points({}, 10).map((point) => ({ ...point, load: point.load + 2000 }))
    expect(() => calibrate(sheet, { points: far })).toThrow(
      /points is 4 points; it must be points that a negativeVolume/,
    )
  })
})
