import { describe, expect, it } from 'vitest'
import { Refusal } from '../refusal/refusal.ts'
import { dampingFromReturn } from './damping-from-return.ts'
import { returnTime } from './return-time.ts'

const coil = { kind: 'coil', rate: 9000, stroke: 0.15 } as const
const fork = {
  kind: 'air',
  bore: 0.032,
  shaft: 0.01,
  stroke: 0.15,
  positiveVolume: 0.000197,
  negativeVolume: 0.000031,
  equalisingStroke: 0.0025,
} as const

const codeOf = (work: () => unknown): string | undefined => {
  try {
    work()
  } catch (error) {
    if (error instanceof Refusal) return `${error.errors[0]?.field} ${error.errors[0]?.code}`
    throw error
  }
  return undefined
}

/**
 * A coil in closed form, by hand: m·x″ + c·x′ + k·x = W + F_f, so about its rest (W + F_f)/k the leg follows
 * a·e^(−ζωt)·(cos ω_d t + ζω/ω_d·sin ω_d t); e.g. Rao, Mechanical Vibrations, 2.6. The time to `to` by bisection.
 */
function inClosedForm(c: number, friction: number, load: number, from: number, to: number, mass: number): number {
  const omega = Math.sqrt(coil.rate / mass)
  const zeta = c / (2 * Math.sqrt(coil.rate * mass))
  const rest = (load + friction) / coil.rate
  const way = (t: number): number => {
    if (zeta < 1) {
      const turned = omega * Math.sqrt(1 - zeta * zeta)
      const swing = Math.cos(turned * t) + ((zeta * omega) / turned) * Math.sin(turned * t)
      return rest + (from - rest) * Math.exp(-zeta * omega * t) * swing
    }
    const root = omega * Math.sqrt(zeta * zeta - 1)
    const slow = -zeta * omega + root
    const quick = -zeta * omega - root
    return rest + ((from - rest) * (slow * Math.exp(quick * t) - quick * Math.exp(slow * t))) / (slow - quick)
  }
  let before = 0
  let after = 0
  while (way(after) > to) after += 1e-4
  for (let round = 0; round < 60; round += 1) {
    const middle = (before + after) / 2
    if (way(middle) > to) before = middle
    else after = middle
  }
  return after
}

describe('return time', () => {
  it('undamped coil to its own length: a quarter of 2π·√(m/k)', () => {
    const { time } = returnTime(coil, { mass: 10, friction: 0, damping: 0, from: 0.1, to: 0 })
    expect(time).toBeCloseTo((Math.PI / 2) * Math.sqrt(10 / 9000), 8)
  })

  it.each([
    [0, 0, 0],
    [60, 0, 0],
    [300, 25, 0],
    [300, 25, 50],
    [1200, 40, 50],
    [5000, 10, 45],
    [30_000, 10, 45],
  ])('coil in closed form, c = %i N·s/m, friction %i N, load %i N', (damping, friction, load) => {
    const { time } = returnTime(coil, { mass: 4, friction, damping, from: 0.12, to: 0.02, load })
    expect(Math.abs(time / inClosedForm(damping, friction, load, 0.12, 0.02, 4) - 1)).toBeLessThan(1e-7)
  })

  it('swings on to a mark where the spring no longer pushes, while it has the energy for it', () => {
    // By hand: rest at 0.05 m, let go at 0.12 m, it turns at −0.02 m undamped; damped by ζ = 0.8 it turns at 0.0490 m.
    const question = { mass: 4, friction: 0, from: 0.12, to: 0.03, load: 450 }
    expect(returnTime(coil, { ...question, damping: 20 }).time).toBeCloseTo(inClosedForm(20, 0, 450, 0.12, 0.03, 4), 7)
    expect(codeOf(() => returnTime(coil, { ...question, damping: 303 }))).toBe('to no-answer')
  })

  it('a leg that creeps to rest before the mark is refused, not waited for', () => {
    const question = { mass: 2, friction: 0, from: 0.12, to: 0.04, load: 450, damping: 8000 }
    expect(codeOf(() => returnTime(coil, question))).toBe('to no-answer')
  })

  it('refuses what never starts, strokes in the wrong order, strokes beyond the end', () => {
    const question = { mass: 2, friction: 30, damping: 500, from: 0.1, to: 0.01 }
    expect(codeOf(() => returnTime(coil, { ...question, friction: 901 }))).toBe('from no-answer')
    expect(codeOf(() => returnTime(coil, { ...question, from: 0.01, to: 0.1 }))).toBe('from does-not-fit')
    expect(codeOf(() => returnTime(coil, { ...question, from: 0.2 }))).toBe('from beyond-end')
    expect(codeOf(() => returnTime(fork, question))).toBe('pressure missing')
    expect(codeOf(() => returnTime(coil, { ...question, damping: -1 }))).toBe('damping out-of-range')
  })

  it('gives up on a motion that would take too many steps, with a refusal', () => {
    const question = { mass: 0.05, friction: 0, damping: 100_000, from: 0.1, to: 0.001 }
    expect(codeOf(() => returnTime(coil, question))).toBe('damping too-many-steps')
  })
})

describe('damping from a return time', () => {
  const question = { pressure: 600_000, mass: 2, friction: 20, from: 0.12, to: 0.02 }

  it.each([250, 600, 1000, 2500, 6000])('gives back %i N·s/m', (damping) => {
    const { time } = returnTime(fork, { ...question, damping })
    const back = dampingFromReturn(fork, { ...question, time })
    expect(back.below).toBeNull()
    expect(Math.abs((back.damping ?? 0) / damping - 1)).toBeLessThan(1e-6)
  })

  it('a weight on the leg and a fast spring go through as well', () => {
    const more = { ...question, load: 50, exponent: 1.3, startStroke: 0.03 }
    const { time } = returnTime(fork, { ...more, damping: 800 })
    expect(dampingFromReturn(fork, { ...more, time }).damping).toBeCloseTo(800, 2)
  })

  // The rule of the calculation: up to three resolutions over the undamped time the answer is only an upper bound. Trade
  // estimate for bare lowers: under about 200 N·s/m the time no longer tells (common practice, no source).
  it('where the time no longer tells: below, and it is the damping three resolutions above the undamped time', () => {
    const undamped = returnTime(fork, { ...question, damping: 0 }).time
    const { damping, below } = dampingFromReturn(fork, { ...question, time: undamped + 0.005 })
    expect(damping).toBeNull()
    expect(below).toBeGreaterThan(100)
    expect(below).toBeLessThan(300)
    const there = returnTime(fork, { ...question, damping: below ?? 0 }).time
    expect(there).toBeCloseTo(undamped + 3 / 240, 8)
    const finer = dampingFromReturn(fork, { ...question, time: undamped + 0.005, timeResolution: 1e-3 })
    expect(finer.below).toBeNull()
  })

  it('refuses a time shorter than without damping, and one no damping gives in the steps allowed', () => {
    expect(codeOf(() => dampingFromReturn(fork, { ...question, time: 0.01 }))).toBe('time no-answer')
    expect(codeOf(() => dampingFromReturn(coil, { mass: 2, friction: 0, from: 0.1, to: 0.05, time: 300 }))).toBe(
      'time too-many-steps',
    )
  })

  it('a mark the leg only swings to: no damping makes it late', () => {
    const swing = { mass: 4, friction: 0, from: 0.12, to: 0.03, load: 450 }
    expect(codeOf(() => dampingFromReturn(coil, { ...swing, time: 5 }))).toBe('time no-answer')
    const { time } = returnTime(coil, { ...swing, damping: 60 })
    expect(dampingFromReturn(coil, { ...swing, time, timeResolution: 1e-4 }).damping).toBeCloseTo(60, 3)
  })
})
