import { describe, expect, it } from 'vitest'
import reference from '../../reference/demo-units.json' with { type: 'json' }
import { prepareSpring } from '../spring/prepare-spring.ts'
import type { AirSpring, CoilSpring, Spring } from '../spring/spring.ts'
import { holdFriction } from './hold-friction.ts'
import { supposedSpring } from './press-hypothesis.ts'
import type { PressQuestion } from './press-question.ts'
import { pressFits, pressTest } from './press-test.ts'
import { shortestBand } from './shortest-band.ts'

const unit = reference.units.find(({ unit }) => unit === 'U01')
// JSON widens the kind to string; the engine checks every field.
const fork = unit?.spring as AirSpring
const pressure = unit?.pressure ?? Number.NaN
const stops = [10, 20, 30, 40, 55, 70, 85, 100, 113, 127].map((mm) => mm / 1000)
const doubts = { forceSd: 4, strokeSd: 0.0007, gaugeSd: 0.02 }

/** What a press without any doubt would read. */
function readings(spring: Spring, filled: number, friction: number) {
  const prepared = prepareSpring(spring, filled)
  return stops.map((stroke) => {
    const force = prepared.force(stroke)
    return { stroke, pressing: force + friction, releasing: force - friction }
  })
}
const pressed = (spring: Spring, friction: number, shares = [1, 0.5]): PressQuestion => ({
  presses: shares.map((share) => ({
    pressure: pressure * share,
    readings: readings(spring, pressure * share, friction),
  })),
  ...doubts,
})
const legs = (more: number) => (fork.lower ? fork.lower.legs.map((leg) => ({ ...leg, oil: leg.oil + more })) : [])
const bathOver = (more: number): AirSpring => ({
  ...fork,
  ...(fork.lower ? { lower: { ...fork.lower, legs: legs(more) } } : {}),
})

describe('readings without doubt give back what was done to the fork', () => {
  it('nothing: as the sheet says, with its friction', () => {
    const worked = pressTest(fork, pressed(fork, 17))
    expect(worked.verdict).toBe('as-sheet')
    expect(worked.friction).toBeCloseTo(17, 9)
    expect(worked.nextTest).toBeNull()
    expect(worked.hypotheses[0]).toMatchObject({ name: 'as-sheet', estimate: null, unit: null, band: null })
  })

  it.each([
    ['volume-less', { ...fork, chamberOil: 18e-6 }, 18e-6],
    ['volume-more', { ...fork, spacers: 0 }, 10e-6],
    ['bath-over', bathOver(30e-6), 30e-6],
  ] as const)('%s', (name, spring, size) => {
    const worked = pressTest(fork, pressed(spring, 12))
    expect(worked.verdict).toBe(name)
    const best = worked.hypotheses[0]
    // ln σ² hangs on the slope and pulls a little towards the softer spring, by less than a tenth of the band.
    expect(Math.abs((best?.estimate ?? 0) / size - 1)).toBeLessThan(0.015)
    expect(best?.unit).toBe('m³')
    expect(best?.band?.[0]).toBeLessThan(size)
    expect(best?.band?.[1]).toBeGreaterThan(size)
  })

  it('negative-off, blocked port: the chamber holds 60 % of what the port would give', () => {
    const filled = (share: number) => {
      const there = supposedSpring(fork, 'negative-off', 0.6, 1, pressure * share, 101_325)
      return { pressure: pressure * share, readings: readings(there.spring, there.pressure, 12) }
    }
    const worked = pressTest(fork, { presses: [filled(1), filled(0.5)], ...doubts })
    expect(worked.verdict).toBe('negative-off')
    expect(worked.hypotheses[0]?.estimate).toBeCloseTo(0.6, 2)
  })

  it('pressure-off: the gauge showed 25 % too much', () => {
    const question = pressed(fork, 12)
    const presses = question.presses.map(({ pressure: filled = 0 }) => ({
      pressure: filled * 1.25,
      readings: readings(fork, filled, 12),
    }))
    const worked = pressTest(fork, { ...question, presses })
    expect(worked.verdict).toBe('pressure-off')
    // 1/1.25
    expect(worked.hypotheses[0]?.estimate).toBeCloseTo(0.8, 3)
  })
})

it('one press can not tell a little oil in the chamber from oil in the bath, and says which test would', () => {
  const worked = pressTest(fork, pressed({ ...fork, chamberOil: 18e-6 }, 12, [1]))
  expect(worked.verdict).toBe('cannot-tell')
  expect(worked.together).toContain('volume-less')
  expect(worked.together).toContain('bath-over')
  expect(worked.together).not.toContain('as-sheet')
  expect(worked.nextTest).toBe('second-press-half-pressure')
})

it('friction is never a fault: 60 N more on a fork as its sheet says', () => {
  const worked = pressTest(fork, pressed(fork, 60))
  expect(worked.verdict).toBe('as-sheet')
  expect(worked.friction).toBeCloseTo(60, 9)
})

it('friction is 0 and more: readings that cross give a band from 0', () => {
  const worked = pressTest(fork, pressed(fork, -0.5))
  expect(worked.friction).toBe(0)
  expect(worked.frictionBand[0]).toBe(0)
  expect(worked.frictionBand[1]).toBeGreaterThan(0)
})

it('nothing fits where readings are out of all reason', () => {
  const question = pressed(fork, 12)
  const presses = question.presses.map((press) => ({
    ...press,
    readings: press.readings.map((reading, index) => ({ ...reading, pressing: reading.pressing + (index % 2) * 200 })),
  }))
  expect(pressTest(fork, { ...question, presses })).toMatchObject({ verdict: 'nothing-fits', nextTest: null })
})

describe('a coil', () => {
  const coil: CoilSpring = { kind: 'coil', rate: 9500, preload: 0.002, stroke: 0.15 }
  const lower = fork.lower
  it('has no pressure to be off: as the sheet says, another rate, too much in the bath', () => {
    const question = { presses: [{ readings: readings(coil, 0, 8) }], forceSd: 4, strokeSd: 0.0007 }
    const names = (spring: Spring) => pressTest(spring, question).hypotheses.map(({ name }) => name)
    expect(names(coil).sort()).toEqual(['as-sheet', 'rate-off'])
    if (!lower) throw new Error('U01 has lower legs')
    expect(names({ ...coil, lower }).sort()).toEqual(['as-sheet', 'bath-over', 'rate-off'])
  })
  it('one of 10 % more is found', () => {
    const stiffer = { presses: [{ readings: readings({ ...coil, rate: 10_450 }, 0, 8) }], forceSd: 4, strokeSd: 0.0007 }
    const worked = pressTest(coil, stiffer)
    expect(worked.verdict).toBe('rate-off')
    expect(worked.hypotheses[0]?.estimate).toBeCloseTo(1.1, 3)
  })
})

describe('hypotheses a spring lacks are left out', () => {
  it.each([
    [{ ...fork, negative: { kind: 'none' } } as const, 'negative-off'],
    [(({ lower: _, ...rest }) => rest)(fork), 'bath-over'],
  ])('case %#', (spring, name) => {
    expect(pressFits(spring, pressed(spring, 12)).map((fit) => fit.name)).not.toContain(name)
  })
  // 10 + 81 of 205 ml in each leg, 883.6 mm²·127 mm = 112.2 swept: 1.8 ml of air are left there, less can't have been.
  it('cuts a range where a chamber would close before the last stop', () => {
    const full = bathOver(81e-6)
    const fit = pressFits(full, pressed(full, 12)).find(({ name }) => name === 'bath-over')
    expect(fit?.band?.[1]).toBeLessThan(1.8e-6)
  })
})

// A second chamber's floating piston makes the force bend in the pressure scale: that way is followed too.
it('a second chamber', () => {
  const second = { ...fork, second: { volume: 5e-5, pressure: 1_200_000 } }
  const worked = pressTest(second, pressed({ ...second, chamberOil: 15e-6 }, 12))
  expect(worked.verdict).toBe('volume-less')
  expect(Math.abs((worked.hypotheses[0]?.estimate ?? 0) / 15e-6 - 1)).toBeLessThan(0.015)
})

describe('what can not be asked', () => {
  it('names the field', () => {
    const question = pressed(fork, 12)
    expect(() => pressTest(fork, { ...question, presses: [] })).toThrow(/presses is 0 presses/)
    const beyond = {
      ...question,
      presses: [{ pressure, readings: [...readings(fork, pressure, 5), { stroke: 0.16, pressing: 1, releasing: 1 }] }],
    }
    expect(() => pressTest(fork, beyond)).toThrow(/presses\[0\].readings\[10\].stroke is 160 mm/)
    expect(() => pressTest(fork, { ...question, presses: [{ readings: readings(fork, pressure, 5) }] })).toThrow(
      /presses\[0\].pressure is missing/,
    )
  })
})

describe('the shortest band of a density', () => {
  // ±1.644854 around 0 for a standard normal; 0 … ln 10 for e^−x: by their distribution functions.
  it('normal', () => {
    const [low, high] = shortestBand((x) => (-x * x) / 2, -30, 30, 0)
    expect(low).toBeCloseTo(-1.644854, 3)
    expect(high).toBeCloseTo(1.644854, 3)
  })
  it('exponential', () => {
    const [low, high] = shortestBand((x) => -x, 0, 50, 0)
    expect(low).toBe(0)
    expect(high).toBeCloseTo(Math.LN10, 3)
  })
  it('flat: no level parts it, so it is the whole', () => {
    expect(shortestBand(() => 0, 2, 3, 2.5)).toEqual([2, 3])
  })
  // Truncated normal, summit at the end: 90 % of the half lies below 1.644854.
  it('half a normal', () => {
    const [low, high] = shortestBand((x) => (-x * x) / 2, 0, 40, 0)
    expect(low).toBe(0)
    expect(high).toBeCloseTo(1.644854, 3)
  })
})

describe('why a stop is held', () => {
  const question = (hold: number) => ({ pressure, strokes: stops, hold })
  // P·V^1.4 from full length to 30 mm and back, by hand, one gas: an air spring without negative or legs.
  const bare: AirSpring = {
    kind: 'air',
    bore: 0.032,
    shaft: 0.01,
    stroke: 0.15,
    positiveVolume: 0.000187,
    negative: { kind: 'none' },
  }
  it('one step by hand', () => {
    const swept = (Math.PI / 4) * 0.032 ** 2 * 0.03
    const ratio = 0.000187 / (0.000187 - swept)
    const slow = (pressure + 101_325) * ratio
    const kept = Math.exp(-5 / 4)
    const down = slow * (ratio ** 0.4 - 1) * kept
    // The gap at the deepest stop: held once for the reading down, once more for the reading back.
    const expected = ((down - down * kept) / 2) * (Math.PI / 4) * 0.032 ** 2
    const worked = holdFriction(bare, { pressure, strokes: [0.03], hold: 5 })
    expect(worked.friction[0]).toBeCloseTo(expected, 9)
  })
  it('5 s would read a sound fork as tight, 20 s not', () => {
    // Common practice, no source: 10–25 N passes on an air fork, 45 N fails.
    const [short, long] = [holdFriction(fork, question(5)), holdFriction(fork, question(20))]
    expect(short.friction[1]).toBeGreaterThan(25)
    expect(long.friction[1]).toBeLessThan(8)
    expect(long.friction[0]).toBeLessThan(1)
    expect(long.friction[0]).toBeLessThan(long.friction[1])
  })
  it('a coil without air warms nothing', () => {
    expect(holdFriction({ kind: 'coil', rate: 9000, stroke: 0.15 }, { strokes: stops, hold: 1 }).friction).toEqual([
      0, 0,
    ])
  })
})
