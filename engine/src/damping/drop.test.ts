import { describe, expect, it } from 'vitest'
import { gravity } from '../quantities/si.ts'
import { Refusal } from '../refusal/refusal.ts'
import type { AirSpring } from '../spring/spring.ts'
import { energyBetween } from '../spring/spring-energy.ts'
import { force } from '../spring/spring-force.ts'
import { springState } from '../spring/spring-state.ts'
import { type DropQuestion, drop } from './drop.ts'
import { followTwoMasses } from './two-masses.ts'

const near = (value: number, printed: number, half: number) =>
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(half)

// A published drop of a light aircraft's leg on its tyre (pyavia, test_landing.py, its own regression values; tyre curve of
// a 5.00-5 at 30 psi, inches and lbf; feet, slugs and lbf below): linear strut 2158.3 lbf/ft, 600 lbf on it, two thirds
// carried by lift, 7 ft/s at touch-down, g = 32.174. The source has no mass at the wheel; here 1e-5 slug, whose own swinging
// adds up to 0.8 ft·lbf in the tyre.
describe('strut and tyre, a published drop', () => {
  const curve = [
    [0, 0],
    [0.535, 270],
    [0.91, 530],
    [1.18, 740],
    [1.3, 840],
    [1.46, 980],
    [1.65, 1160],
    [1.84, 1345],
    [2.02, 1525],
    [2.21, 1725],
    [2.455, 2000],
    [2.67, 2250],
    [2.825, 2500],
    [2.895, 2700],
  ].map(([inches = 0, force = 0]) => [inches / 12, force] as const)
  const rate = 2158.3
  const free = 32.174

  function tyre(pressed: number): number {
    if (pressed <= 0) return 0
    const above = Math.max(
      1,
      curve.findIndex(([at]) => at >= pressed),
    )
    const [x0 = 0, f0 = 0] = curve[above - 1] ?? []
    const [x1 = 1, f1 = 0] = curve[above] ?? []
    return f0 + ((f1 - f0) * (pressed - x0)) / (x1 - x0)
  }

  function tyreEnergy(pressed: number): number {
    const parts = 20_000
    return Array.from({ length: parts }, (_, part) => tyre((pressed * (part + 0.5)) / parts)).reduce(
      (sum, force) => sum + (force * pressed) / parts,
      0,
    )
  }

  function deepestWith(wheelMass: number) {
    let stroke = 0
    let pressed = 0
    followTwoMasses(
      {
        sprungMass: 600 / free,
        wheelMass,
        lift: 400,
        tyre,
        leg: (x) => rate * x,
        fullStroke: 1,
        gravity: free,
      },
      Float64Array.of(0, 7, 0, 0),
      0.2,
      ({ step, state }) => {
        for (let look = 0; look <= 20; look += 1) {
          const now = state(step.from + ((step.to - step.from) * look) / 20)
          stroke = Math.max(stroke, now[2] ?? 0)
          pressed = Math.max(pressed, now[0] ?? 0)
        }
      },
      500_000,
    )
    return { stroke, pressed }
  }

  it('no mass at the wheel: 0.695 ft, 521.6 ft·lbf, 1500 lbf; tyre 0.166 ft, 107.5 ft·lbf', () => {
    const { stroke, pressed } = deepestWith(1e-5)
    near(stroke, 0.695, 5e-4)
    near(rate * stroke, 1499.87, 0.7)
    near((rate * stroke ** 2) / 2, 521.6, 0.5)
    near(pressed, 0.166, 5e-4)
    near(tyreEnergy(pressed), 107.5, 0.8)
    near(tyreEnergy(pressed) / (tyre(pressed) * pressed), 0.43107, 3e-3)
  })

  it('energy in balance: ½·(600/32.174)·49 + (600 − 400)·(0.695 + 0.166) = 629.1 = 521.6 + 107.5', () => {
    const { stroke, pressed } = deepestWith(1e-5)
    const stored = (rate * stroke ** 2) / 2 + tyreEnergy(pressed)
    near(stored, 629.1, 0.9)
    near(stored, (0.5 * 600 * 49) / free + 200 * (stroke + pressed), 0.9)
  })

  // The source's run with 5 lbm at the wheel is left out: it does not say what becomes of the wheel's own swinging.
})

// Invented dimensions, of no real fork.
const fork: AirSpring = {
  kind: 'air',
  bore: 0.032,
  shaft: 0.01,
  stroke: 0.15,
  positiveVolume: 0.000197,
  negativeVolume: 0.000031,
  equalisingStroke: 0.0025,
}
const coil = { kind: 'coil', rate: 9000, stroke: 0.15 } as const
const undamped = { linear: 0, orifice: 0 }
const question: DropQuestion = {
  pressure: 620_000,
  exponent: 1.3,
  sprungMass: 36,
  wheelMass: 3,
  dropHeight: 0.3,
  damping: { linear: 700, orifice: 150 },
  tyre: { rate: 90_000 },
}

describe('drop', () => {
  // Conservation of energy: what both masses, spring and tyre hold is what the height gave, until the leg tops out with a
  // blow (after 0.38 s here).
  it('undamped, energy stays the same at every time', () => {
    const state = springState(fork, question)
    const leg = (stroke: number) => force(state, Math.max(0, stroke))
    const masses = { sprungMass: 36, wheelMass: 3, lift: 0, leg, fullStroke: state.fullStroke }
    const tyre = (pressed: number) => 90_000 * Math.max(0, pressed)
    let worst = 0
    let seen = 0
    followTwoMasses({ ...masses, tyre }, Float64Array.of(-0.1, 0, 0, 0), 0.37, ({ step, state: at }) => {
      const [pressed = 0, sinking = 0, stroke = 0, speed = 0] = at(step.to)
      const moving = 1.5 * sinking ** 2 + 18 * (sinking + speed) ** 2
      const stored = energyBetween(state, 0, 0, stroke) + 45_000 * Math.max(0, pressed) ** 2
      const fallen = gravity * (39 * (pressed + 0.1) + 36 * stroke)
      worst = Math.max(worst, Math.abs(moving + stored - fallen))
      seen += 1
    })
    expect(seen).toBeGreaterThan(50)
    expect(worst).toBeLessThan(1e-4 * 39 * gravity * 0.1)
  })

  it('the leg moves only once the tyre overcomes its preload; until then the tyre carries both masses as one', () => {
    const { trace } = drop({ ...coil, preload: 0.02 }, { ...question, damping: undamped })
    // By hand: touch-down after √(2h/g); the leg holds 180 N at full length, so the tyre must reach 180·(1 + 3/36) N.
    const touch = Math.sqrt(0.6 / gravity)
    const needed = (180 * (1 + 3 / 36)) / 90_000
    const speed = Math.sqrt(2 * gravity * 0.3)
    const moves = touch + needed / speed
    for (const { time, stroke } of trace) {
      if (time < moves - 1e-3) expect(stroke).toBe(0)
      else if (time < moves + 0.02 && time > moves + 1e-3) expect(stroke).toBeGreaterThan(0)
    }
  })

  it('comes to rest where the spring holds the sprung mass, and says when', () => {
    const { trace, settling, deepest, peakForce } = drop(fork, question)
    const last = trace.at(-1)
    expect(trace).toHaveLength(601)
    expect(last?.time).toBeCloseTo(3, 9)
    expect(force(springState(fork, question), last?.stroke ?? 0)).toBeCloseTo(36 * gravity, 2)
    const about = last?.stroke ?? 0
    const outside = trace.filter(({ stroke }) => Math.abs(stroke - about) > 0.05 * 0.15)
    expect(settling).toBeGreaterThanOrEqual(outside.at(-1)?.time ?? 0)
    expect(settling).toBeLessThan((outside.at(-1)?.time ?? 0) + 0.006)
    for (const { stroke, force: now } of trace) {
      expect(stroke).toBeLessThanOrEqual(deepest)
      expect(now).toBeLessThanOrEqual(peakForce)
    }
  })

  it('a drop too high for it takes the leg to its end: a limit, not an error', () => {
    const { deepest, limit } = drop(coil, { ...question, dropHeight: 2 })
    expect(limit).toBe('bottomed')
    expect(deepest).toBe(0.15)
  })

  it('undamped it never settles', () => {
    expect(drop(coil, { ...question, dropHeight: 0.02, damping: undamped }).settling).toBeNull()
  })

  it('refuses what can’t be, field by field, and what can’t be followed', () => {
    const refused = (asked: DropQuestion) => {
      try {
        drop(fork, asked)
      } catch (error) {
        if (error instanceof Refusal) return error.errors.map(({ field, code }) => `${field} ${code}`)
        throw error
      }
      return []
    }
    expect(refused({ ...question, sprungMass: -1, tyre: { rate: Number.NaN } })).toEqual([
      'sprungMass out-of-range',
      'tyre.rate not-a-number',
    ])
    const stiff = { wheelMass: 0.05, damping: { linear: 100_000, orifice: 0 } }
    expect(refused({ ...question, ...stiff })).toEqual(['damping.linear too-many-steps'])
  })
})
