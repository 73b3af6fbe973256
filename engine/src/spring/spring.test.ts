/** Hand calculations of single parts; the whole is checked against an independent program in engine/peer. */
import { describe, expect, it } from 'vitest'
import { gaugeElsewhere } from '../air/ambient-shift.ts'
import { sag } from '../sag/sag.ts'
import { fullStroke } from './dimensions.ts'
import { prepareSpring } from './prepare-spring.ts'
import type { AirSpring, CoilSpring } from './spring.ts'
import { springCurve } from './spring-curve.ts'

const ambient = 101_325
const bare: AirSpring = {
  kind: 'air',
  bore: 0.032,
  shaft: 0.01,
  stroke: 0.15,
  positiveVolume: 0.000197,
  negative: { kind: 'none' },
}
const areaOf = (outer: number, inner = 0) => (Math.PI / 4) * (outer ** 2 - inner ** 2)
const piston = areaOf(0.032)

/** What a part adds at a stroke. */
function added(part: Partial<AirSpring>, stroke: number, exponent = 1): number {
  const process = { exponent }
  return (
    prepareSpring({ ...bare, ...part }, 600_000, process).force(stroke) -
    prepareSpring(bare, 600_000, process).force(stroke)
  )
}

describe('positive chamber', () => {
  // P·V = const: 701,325 Pa over 197 ml, 80 mm of a 32 mm bore gone.
  it('slow', () => {
    const pressure = (701_325 * 0.000197) / (0.000197 - piston * 0.08)
    expect(prepareSpring(bare, 600_000).force(0.08)).toBeCloseTo((pressure - ambient) * piston, 9)
  })
  it('read at a stroke: the gauge shows it there', () => {
    const curve = springCurve(bare, { pressure: 600_000, pressureAt: 0.15, points: 2 })
    expect(curve.points[1]?.positivePressure).toBeCloseTo(600_000, 6)
  })
  it('fast: the force at the start does not depend on the exponent', () => {
    const at = (exponent: number) => prepareSpring(bare, 600_000, { exponent, startStroke: 0.03 }).force(0.03)
    expect(at(1.4)).toBeCloseTo(at(1), 9)
    expect(at(1.1)).toBeCloseTo(at(1), 9)
  })
})

describe('negative', () => {
  const ring = areaOf(0.032, 0.01)
  it('valve: its own gas, drawn out', () => {
    const pressure = (500_000 + ambient) * (0.00003 / (0.00003 + ring * 0.05))
    const part = { negative: { kind: 'valve', pressure: 500_000 } as const, negativeVolume: 0.00003 }
    expect(added(part, 0.05)).toBeCloseTo(-(pressure - ambient) * ring, 9)
  })
  it('coil: only over its length', () => {
    const negative = { kind: 'coil', rate: 4000, length: 0.02 } as const
    expect(added({ negative }, 0.005)).toBeCloseTo(-60, 9)
    expect(added({ negative }, 0.03)).toBe(0)
  })
  it('port: both pressures are one at the port', () => {
    const joined: AirSpring = { ...bare, negative: { kind: 'port' }, negativeVolume: 0.00003, equalisingStroke: 0.0025 }
    const { points } = springCurve(joined, { pressure: 600_000, points: 61 })
    expect(points[1]?.stroke).toBeCloseTo(0.0025, 12)
    expect(points[1]?.negativePressure).toBeCloseTo(points[1]?.positivePressure ?? Number.NaN, 6)
  })
})

describe('second chamber', () => {
  const second = { volume: 0.00005, pressure: 1_200_000 }
  // The main gas alone passes 1.2 MPa gauge where 701,325·197 ml/V = 1,301,325 Pa: V = 106.17 ml, x = 112.95 mm.
  it('rests before, shares the volume after', () => {
    expect(added({ second }, 0.11)).toBe(0)
    const x = 0.14
    const shared = (701_325 * 0.000197 + 1_301_325 * 0.00005) / (0.000197 - piston * x + 0.00005)
    const alone = (701_325 * 0.000197) / (0.000197 - piston * x)
    expect(added({ second }, x)).toBeCloseTo((shared - alone) * piston, 6)
  })
})

describe('end parts', () => {
  it('top-out: rate·(length − x)', () => {
    expect(added({ topOut: { rate: 10_000, length: 0.008 } }, 0.003)).toBeCloseTo(-50, 9)
  })
  it('bumper: rate·length·(δ/length)^exponent', () => {
    expect(added({ bumper: { rate: 20_000, length: 0.02, exponent: 2 } }, 0.14)).toBeCloseTo(100, 9)
  })
  it('damper gas: 200 psi on a 12.7 mm rod is 175 N at full length', () => {
    expect(added({ damperGas: { pressure: 1_378_951, volume: 0.00004, rod: 0.0127 } }, 0)).toBeCloseTo(174.7, 1)
  })
})

describe('air in the lower legs', () => {
  // Job J07 of the demonstration (invented): a fork drained of 62 ml where its sheet says 15: 225 ml, 36 mm stanchion, 10 mm rod, at 132 mm, exponent 1.2.
  // (163/(163 − 939.3 mm²·132 mm))^1.2 = 5.57 → 434 N; with 15 ml 183 N.
  it.each([
    [62e-6, 434],
    [15e-6, 183],
  ])('%f m³ of oil: %i N at 132 mm', (oil, newtons) => {
    const lower = { volume: 0.000225, stanchion: 0.036, rod: 0.01, legs: [{ oil }] }
    expect(Math.abs(added({ lower }, 0.132, 1.2) - newtons)).toBeLessThanOrEqual(1)
  })
  // Closed at sea level, at 2000 m (79,495 Pa): (101,325 − 79,495)·2·π/4·(35² − 10²) mm² = 38.6 N.
  it('closed at sea level, pushes the fork out by 39 N at 2000 m', () => {
    const lower = {
      volume: 0.000205,
      stanchion: 0.035,
      rod: 0.01,
      closedAt: ambient,
      legs: [{ oil: 1e-5 }, { oil: 1e-5 }],
    }
    const there = { ambient: 79_495 }
    const pushed =
      prepareSpring({ ...bare, lower }, 600_000, there).force(0) - prepareSpring(bare, 600_000, there).force(0)
    expect(Math.abs(pushed - 38.6)).toBeLessThanOrEqual(0.1)
  })
  it('overfilled: the stroke ends early, and only beyond that is refused', () => {
    const spring = { ...bare, lower: { volume: 0.000205, stanchion: 0.035, rod: 0.01, legs: [{ oil: 90e-6 }] } }
    const end = (0.999 * 115e-6) / areaOf(0.035, 0.01)
    expect(fullStroke(spring)).toBeCloseTo(end, 12)
    expect(prepareSpring(spring, 600_000).force(end)).toBeGreaterThan(0)
    expect(() => prepareSpring(spring, 600_000).force(end + 0.001)).toThrow(/stroke is .*; it must be at most the end/)
  })
})

describe('sag', () => {
  const coil: CoilSpring = { kind: 'coil', rate: 9000, preload: 0.01, stroke: 0.15 }
  // F(0) = 90 N, F(150 mm) = 1440 N.
  it('does not move under less than the preload', () => {
    expect(sag(coil, { load: 80 })).toMatchObject({ stroke: 0, limit: 'not-moved' })
  })
  it('bottoms above the end force', () => {
    expect(sag(coil, { load: 1500 })).toMatchObject({ stroke: 0.15, limit: 'bottomed' })
  })
  it('lies where friction may hold it, cut at full length', () => {
    const rest = sag(coil, { load: 100, friction: 30 })
    expect(rest.stroke).toBeCloseTo(0.01 / 9, 12)
    expect(rest.low).toBe(0)
    expect(rest.high).toBeCloseTo(0.04 / 9, 12)
  })
  it('starts at the free stroke where the negative pulls at full length', () => {
    const pulled: AirSpring = { ...bare, negative: { kind: 'coil', rate: 60_000, length: 0.02 } }
    const { freeStroke } = springCurve(pulled, { pressure: 600_000 })
    expect(freeStroke).toBeGreaterThan(0)
    expect(prepareSpring(pulled, 600_000).force(freeStroke)).toBeCloseTo(0, 6)
    expect(sag(pulled, { pressure: 600_000, load: 0 })).toMatchObject({ stroke: freeStroke, limit: 'not-moved' })
  })
})

// (76 + 14.696)·276.15/294.15 − 14.696 = 70.45 psi: overnight in the cold.
it('76 psi at 21 °C show 70 at 3 °C', () => {
  const psi = 6894.757
  const there = gaugeElsewhere({ pressure: 76 * psi, from: { temperature: 294.15 }, to: { temperature: 276.15 } })
  expect(Math.abs(there / psi - 70.45)).toBeLessThanOrEqual(0.005)
})

// By hand: p·V is the same at both strokes, the negative chamber's from the port on; gauge = absolute − 101 325.
it('tells the gauge of every chamber at a stroke', () => {
  const lower = { volume: 2e-4, stanchion: 0.035, rod: 0.01, legs: [{ oil: 1e-5 }, { oil: 0 }] }
  const fork: AirSpring = {
    ...bare,
    negative: { kind: 'port' },
    negativeVolume: 31e-6,
    equalisingStroke: 0.0025,
    lower,
  }
  const at = prepareSpring(fork, 600_000).pressures(0.05)
  const ring = areaOf(0.032, 0.01)
  const filled = (600_000 + ambient) * 197e-6
  expect(at.positive).toBeCloseTo(filled / (197e-6 - piston * 0.05) - ambient, 6)
  const joined = filled / (197e-6 - piston * 0.0025)
  expect(at.negative).toBeCloseTo((joined * (31e-6 + ring * 0.0025)) / (31e-6 + ring * 0.05) - ambient, 6)
  const gone = areaOf(0.035, 0.01) * 0.05
  expect(at.lower[0]).toBeCloseTo((ambient * 190e-6) / (190e-6 - gone) - ambient, 6)
  expect(at.lower[1]).toBeCloseTo((ambient * 200e-6) / (200e-6 - gone) - ambient, 6)
})
