/**
 * Springs and leaks against SciPy's brentq on formulas written for this check (springs.py): 240 forks, 120 shocks,
 * 60 leak-downs, drawn by seed. Within 1e-6 of the value.
 */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { ambientShift, leakDown, pressureForSag, type Spring, sag, springCurve } from '@legwork/engine'
import { describe, expect, it } from 'vitest'

/** mulberry32, public domain: small, seeded, the same everywhere. */
function draws(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
const next = draws(20_260_502)
const between = (low: number, high: number) => low + (high - low) * next()
const perhaps = <T extends object>(share: number, make: () => T): T | Record<string, never> =>
  next() < share ? make() : {}

function negative() {
  const drawn = next()
  if (drawn < 0.6) return {}
  if (drawn < 0.8) return { negative: { kind: 'valve', pressure: between(1e5, 9e5) } as const }
  if (drawn < 0.9)
    return { negative: { kind: 'coil', rate: between(2000, 8000), length: between(0.01, 0.03) } as const }
  return { negative: { kind: 'none' } as const }
}

function fork(): Spring {
  const stroke = between(0.1, 0.2)
  const bore = between(0.028, 0.037)
  const swept = (Math.PI / 4) * bore ** 2 * stroke
  const stanchion = bore + between(0.002, 0.004)
  const displaced = (Math.PI / 4) * stanchion ** 2 * stroke
  return {
    kind: 'air',
    bore,
    shaft: between(0.008, 0.012),
    stroke,
    positiveVolume: swept * between(1.55, 2),
    negativeVolume: swept * between(0.15, 0.35),
    equalisingStroke: between(0, 0.005),
    spacerVolume: 1e-5,
    spacers: Math.floor(between(0, 3)),
    ...negative(),
    ...perhaps(0.2, () => ({ second: { volume: swept * between(0.2, 0.5), pressure: between(1.5e6, 2e6) } })),
    lower: {
      volume: displaced * between(1.4, 1.9),
      stanchion,
      rod: between(0, 0.012),
      ...perhaps(0.3, () => ({ closedAt: between(80_000, 110_000), closedStroke: between(0, 0.02) })),
      legs: [{ oil: between(5e-6, 2e-5) }, { oil: between(5e-6, 2e-5), rod: 0 }],
    },
    ...perhaps(0.2, () => ({ topOut: { rate: between(5000, 20_000), length: between(0.003, 0.01) } })),
    ...perhaps(0.2, () => ({ bumper: { rate: between(10_000, 50_000), length: 0.02, exponent: between(1, 3) } })),
  }
}

function shock(): Spring {
  const stroke = between(0.04, 0.075)
  const bore = between(0.036, 0.05)
  const positiveShaft = next() < 0.5 ? 0 : 0.0095
  const swept = (Math.PI / 4) * bore ** 2 * stroke
  return {
    kind: 'air',
    bore,
    shaft: between(0.0095, 0.03),
    stroke,
    positiveShaft,
    positiveVolume: swept * between(1.3, 1.7),
    negativeVolume: swept * between(0.1, 0.4),
    equalisingStroke: between(0, 0.003),
    ...negative(),
    ...perhaps(0.6, () => ({ damperGas: { pressure: between(1e6, 2e6), volume: 4e-5, rod: 0.0127 } })),
  }
}

function springCase(spring: Spring, load: number, pressure: number) {
  return {
    kind: 'spring' as const,
    spring,
    load,
    pressure,
    ambient: between(75_000, 103_000),
    exponent: between(1.05, 1.4),
    friction: between(5, 40),
    there: between(70_000, 103_000),
    warmer: between(0.92, 1.08),
    sagWanted: between(0.15, 0.35),
  }
}
const forks = Array.from({ length: 240 }, () => springCase(fork(), between(200, 500), between(4e5, 1e6)))
const shocks = Array.from({ length: 120 }, () => springCase(shock(), between(900, 2200), between(7e5, 1.8e6)))
const leaks = Array.from({ length: 60 }, () => ({
  kind: 'leak' as const,
  volume: between(2e-5, 3e-4),
  hose: between(0, 8e-6),
  start: between(3e5, 2e6),
  end: between(2e5, 3e5),
  startTemperature: between(278, 308),
  endTemperature: between(268, 308),
  duration: between(60, 1e6),
  ambient: between(75_000, 103_000),
  how: next() < 0.5 ? ('attached' as const) : ('left' as const),
}))

interface PeerSpring {
  sag: number
  low: number
  high: number
  slow: number[]
  fast: number[]
  gaugeThere: number
  strokeThere: number
  pressure: number
}
interface PeerLeak {
  pressureEnd: number
  leak: number
  standardFlow: number
  lost: number
}

function ask<Answer>(cases: readonly object[]): Answer[] {
  const script = join(import.meta.dirname, 'springs.py')
  const { status, stdout, stderr } = spawnSync('python3', [script], {
    input: JSON.stringify(cases),
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  if (status !== 0) throw new Error(`python3 with SciPy is needed (Debian: python3-scipy): ${stderr}`)
  // What springs.py writes.
  return JSON.parse(stdout) as Answer[]
}

function near(ours: number, theirs: number, floor: number, what: string): void {
  expect(Math.abs(ours - theirs), what).toBeLessThanOrEqual(1e-6 * Math.max(floor, Math.abs(theirs)))
}

describe.each([
  ['forks', forks],
  ['shocks', shocks],
])('%s against SciPy', (_name, cases) => {
  const answers = ask<PeerSpring>(cases)

  it('sag with its band', () => {
    cases.forEach(({ spring, load, pressure, ambient, friction }, index) => {
      const ours = sag(spring, { pressure, load, ambient, friction })
      for (const what of ['low', 'high'] as const)
        near(ours[what], answers[index]?.[what] ?? Number.NaN, 1e-3, `${what} ${index}`)
      near(ours.stroke, answers[index]?.sag ?? Number.NaN, 1e-3, `sag ${index}`)
    })
  })

  it('pressure for a sag', () => {
    cases.forEach(({ spring, load, ambient, sagWanted }, index) => {
      const { pressure } = pressureForSag(spring, { load, sag: sagWanted, ambient })
      near(pressure, answers[index]?.pressure ?? Number.NaN, 1e4, `pressure ${index}`)
    })
  })

  it('slow and fast curve', () => {
    cases.forEach(({ spring, pressure, ambient, exponent }, index) => {
      const answer = answers[index]
      const slow = springCurve(spring, { pressure, ambient, points: 11 })
      const startStroke = answer?.sag ?? 0
      const fast = springCurve(spring, { pressure, ambient, exponent, startStroke, points: 11 })
      slow.points.forEach(({ force }, at) => {
        near(force, answer?.slow[at] ?? Number.NaN, 100, `slow ${index} ${at}`)
      })
      fast.points.forEach(({ force }, at) => {
        near(force, answer?.fast[at] ?? Number.NaN, 100, `fast ${index} ${at}`)
      })
    })
  })

  it('set here, ridden there', () => {
    cases.forEach(({ spring, load, pressure, ambient, there, warmer }, index) => {
      const from = { temperature: 293.15, ambient }
      const shift = ambientShift(spring, { pressure, load, from, to: { temperature: 293.15 * warmer, ambient: there } })
      near(shift.pressure ?? Number.NaN, answers[index]?.gaugeThere ?? Number.NaN, 1e4, `gauge ${index}`)
      near(shift.strokeThere ?? Number.NaN, answers[index]?.strokeThere ?? Number.NaN, 1e-3, `stroke ${index}`)
    })
  })
})

it('leak-downs against counting the gas', () => {
  const answers = ask<PeerLeak>(leaks)
  leaks.forEach((drawn, index) => {
    const { volume, hose, start, end, startTemperature, endTemperature, duration, ambient, how } = drawn
    const ours = leakDown({
      volume,
      hoseVolume: hose,
      start: { reading: start, temperature: startTemperature },
      end: { reading: end, temperature: endTemperature, how },
      duration,
      ambient,
    })
    const answer = answers[index]
    near(ours.pressureEnd, answer?.pressureEnd ?? Number.NaN, 1e4, `end ${index}`)
    near(ours.leak, answer?.leak ?? Number.NaN, 1e-9, `leak ${index}`)
    near(ours.standardFlow, answer?.standardFlow ?? Number.NaN, 1e-15, `flow ${index}`)
  })
})
