/**
 * Press tests against SciPy's least_squares on formulas written for this check (press.py): 90 drawn forks, shocks and
 * coils, every hypothesis of each; bands of 15 against the posterior integrated on a grid. Drawn by seed.
 */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import {
  type AirSpring,
  type CoilSpring,
  normalDraw,
  type PressFit,
  type PressQuestion,
  prepareSpring,
  pressFits,
  type Spring,
  seededDraws,
} from '@legwork/engine'
import { beforeAll, describe, expect, it } from 'vitest'

interface PeerFit {
  name: string
  estimate: number | null
  friction: number
  scale: number
  bic: number
  band?: [number, number]
}

const draw = seededDraws(20_261_125)
const normal = () => normalDraw(draw)
const between = (low: number, high: number) => low + (high - low) * draw()

function lower(bore: number, stroke: number) {
  const stanchion = bore + between(0.002, 0.004)
  const displaced = (Math.PI / 4) * stanchion ** 2 * stroke
  const legs = [{ oil: between(5e-6, 2e-5) }, { oil: between(5e-6, 2e-5) }]
  return { volume: displaced * between(1.5, 1.9), stanchion, rod: between(0.006, 0.012), legs }
}

function fork(): AirSpring {
  const stroke = between(0.1, 0.2)
  const bore = between(0.028, 0.037)
  const swept = (Math.PI / 4) * bore ** 2 * stroke
  return {
    kind: 'air',
    bore,
    shaft: between(0.008, 0.012),
    stroke,
    positiveVolume: swept * between(1.6, 2),
    negativeVolume: swept * between(0.2, 0.35),
    equalisingStroke: between(0, 0.004),
    spacerVolume: 1e-5,
    spacers: Math.floor(between(0, 2)),
    ...(draw() < 0.25 ? { negative: { kind: 'valve', pressure: between(4e5, 7e5) } as const } : {}),
    lower: lower(bore, stroke),
  }
}

function shock(): AirSpring {
  const stroke = between(0.045, 0.075)
  const bore = between(0.036, 0.05)
  const swept = (Math.PI / 4) * bore ** 2 * stroke
  return {
    kind: 'air',
    bore,
    shaft: between(0.0095, 0.02),
    stroke,
    positiveVolume: swept * between(1.4, 1.8),
    negativeVolume: swept * between(0.15, 0.4),
    equalisingStroke: between(0, 0.002),
    ...(draw() < 0.5 ? { damperGas: { pressure: between(1e6, 2e6), volume: 4e-5, rod: 0.0127 } } : {}),
  }
}

function coil(): CoilSpring {
  const stroke = between(0.12, 0.18)
  return { kind: 'coil', rate: between(7000, 11_000), preload: between(0, 0.004), stroke, lower: lower(0.032, stroke) }
}

/** Something done to it, or nothing. */
function altered(spring: Spring): Spring {
  const drawn = draw()
  if (drawn < 0.3) return spring
  if (spring.kind === 'coil') return { ...spring, rate: spring.rate * between(0.9, 1.15) }
  if (drawn < 0.6) return { ...spring, chamberOil: between(3e-6, 1.2e-5) }
  if (drawn < 0.8) return { ...spring, positiveVolume: spring.positiveVolume + between(3e-6, 1.5e-5) }
  return { ...spring, negative: { kind: 'valve', pressure: between(2e5, 5e5) } }
}

function question(spring: Spring): PressQuestion & { ambient: number; gaugeSd: number } {
  const there = altered(spring)
  const ambient = between(80_000, 103_000)
  const friction = between(5, 40)
  const full = spring.kind === 'coil' ? 0 : between(5e5, 9e5)
  const doubts = { forceSd: between(2, 6), strokeSd: between(0.0002, 0.001), gaugeSd: between(0.01, 0.03), ambient }
  const gauge = 1 + doubts.gaugeSd * normal()
  const shares = spring.kind === 'coil' || draw() < 0.5 ? [1] : [1, 0.5]
  const presses = shares.map((share) => {
    const prepared = prepareSpring(there, full * share * gauge, { ambient })
    const readings = Array.from({ length: 12 }, (_, index) => {
      const stroke = spring.stroke * (0.07 + (0.75 * index) / 11)
      const read = (way: number) =>
        prepared.force(stroke + doubts.strokeSd * normal()) + way * friction + doubts.forceSd * normal()
      return { stroke, pressing: read(1), releasing: read(-1) }
    })
    return spring.kind === 'coil' ? { readings } : { pressure: full * share, readings }
  })
  return { presses, ...doubts }
}

const drawnCase = (make: () => Spring, bands: boolean) => {
  const spring = make()
  return { spring, bands, ...question(spring) }
}
const cases = [
  ...Array.from({ length: 50 }, (_, index) => drawnCase(fork, index < 8)),
  ...Array.from({ length: 25 }, (_, index) => drawnCase(shock, index < 4)),
  ...Array.from({ length: 15 }, (_, index) => drawnCase(coil, index < 3)),
]

function ask(): PeerFit[][] {
  const { status, stdout, stderr } = spawnSync('/usr/bin/python3', [join(import.meta.dirname, 'press.py')], {
    input: JSON.stringify(cases),
    encoding: 'utf8',
    maxBuffer: 1e8,
  })
  if (status !== 0) throw new Error(`python3 with SciPy is needed (Debian: python3-scipy): ${stderr}`)
  // What press.py writes.
  return JSON.parse(stdout) as PeerFit[][]
}

describe('press tests against SciPy', () => {
  const pairs: { label: string; ours: PressFit; theirs: PeerFit }[] = []

  beforeAll(() => {
    const answers = ask()
    cases.forEach(({ spring, bands: _, ...asked }, index) => {
      const theirs = answers[index] ?? []
      const ours = pressFits(spring, asked)
      expect(ours.map(({ name }) => name).sort()).toEqual(theirs.map(({ name }) => name).sort())
      for (const fit of ours) {
        const peer = theirs.find(({ name }) => name === fit.name)
        if (peer) pairs.push({ label: `${spring.kind} ${index}, ${fit.name}`, ours: fit, theirs: peer })
      }
    })
  }, 280_000)

  it('every hypothesis: no better place is known to either', () => {
    expect(pairs.length).toBeGreaterThan(400)
    for (const { label, ours, theirs } of pairs) {
      expect(Math.abs(ours.bic - theirs.bic), label).toBeLessThanOrEqual(1e-5 * Math.max(1, Math.abs(theirs.bic)))
    }
  })

  it('estimate, friction and scale there', () => {
    for (const { label, ours, theirs } of pairs) {
      expect(Math.abs(ours.friction - theirs.friction), label).toBeLessThanOrEqual(0.02)
      expect(Math.abs(ours.scale - theirs.scale), label).toBeLessThanOrEqual(2e-4)
      if (ours.estimate === null || ours.band === null || theirs.estimate === null) continue
      const width = ours.band[1] - ours.band[0]
      expect(Math.abs(ours.estimate - theirs.estimate), label).toBeLessThanOrEqual(0.01 * width)
    }
  })

  it('bands: scale and friction integrated out', () => {
    let compared = 0
    for (const { label, ours, theirs } of pairs) {
      if (!theirs.band || !ours.band) continue
      const width = theirs.band[1] - theirs.band[0]
      for (const end of [0, 1] as const) {
        expect(Math.abs(ours.band[end] - theirs.band[end]), `${label}, end ${end}`).toBeLessThanOrEqual(0.02 * width)
      }
      compared += 1
    }
    expect(compared).toBeGreaterThan(50)
  })
})
