import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ForkParameters } from './fork-parameters.ts'
import { forkShapes } from './fork-shapes.ts'
import { forkStations } from './fork-stations.ts'
import { volumeOf, volumeOfRevolution } from './shape.ts'

/** A plausible air fork; the numbers are invented, their ranges are common practice, no source. */
const forks = fc
  .record({
    bore: fc.double({ min: 0.028, max: 0.036, noNaN: true }),
    shaft: fc.double({ min: 0.008, max: 0.012, noNaN: true }),
    travel: fc.double({ min: 0.1, max: 0.2, noNaN: true }),
    spare: fc.double({ min: 0.035, max: 0.11, noNaN: true }),
    negative: fc.double({ min: 0.024, max: 0.062, noNaN: true }),
    spacers: fc.integer({ min: 0, max: 3 }),
    oil: fc.double({ min: 3e-6, max: 2.5e-5, noNaN: true }),
    dead: fc.double({ min: 0.05, max: 0.085, noNaN: true }),
    rightRod: fc.constantFrom(0, 0.008, 0.01),
    chamberOil: fc.constantFrom(0, 3e-6),
    crowns: fc.constantFrom<1 | 2>(1, 2),
  })
  .map((draw): ForkParameters => {
    const stanchion = draw.bore + 0.003
    const area = (Math.PI / 4) * draw.bore ** 2
    const outside = (Math.PI / 4) * stanchion ** 2
    const volume = outside * (draw.travel + draw.dead)
    return {
      stanchion,
      travel: draw.travel,
      stroke: 0,
      crowns: draw.crowns,
      spring: {
        kind: 'air',
        bore: draw.bore,
        shaft: draw.shaft,
        positiveVolume: area * (draw.travel + draw.spare) + draw.spacers * 9e-6 + draw.chamberOil,
        negative: { kind: 'air', volume: (area - (Math.PI / 4) * draw.shaft ** 2) * draw.negative },
        equalisingStroke: 0.0025,
        spacers: draw.spacers,
        spacerVolume: 9e-6,
        chamberOil: draw.chamberOil,
      },
      legs: {
        left: { oil: draw.oil, volume, rod: draw.shaft },
        right: { oil: draw.oil * 0.8, volume, rod: draw.rightRod },
      },
      pressures: { positive: 6e5, negative: 6e5, left: 0, right: 0 },
      ring: 0,
    }
  })

const drawn = fc.sample(forks, { numRuns: 20, seed: 350 })
const shares = [0, 0.2, 0.5, 0.8, 1]

const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2

/** The same chambers by the engine's formulas: V_p − A_p·x, V_n + A_n·x, V_L − oil − A_L·x. */
function chambersByFormula(fork: ForkParameters) {
  const { spring, stroke } = fork
  if (spring.kind !== 'air' || spring.negative.kind !== 'air') throw new Error('the draws are air forks')
  const room = (leg: 'left' | 'right') =>
    (fork.legs[leg].volume ?? 0) - fork.legs[leg].oil - (circle(fork.stanchion) - circle(fork.legs[leg].rod)) * stroke
  return {
    'chamber.positive':
      spring.positiveVolume -
      spring.spacers * spring.spacerVolume -
      (spring.chamberOil ?? 0) -
      circle(spring.bore) * stroke,
    'chamber.negative': spring.negative.volume + (circle(spring.bore) - circle(spring.shaft)) * stroke,
    'chamber.lower.left': room('left'),
    'chamber.lower.right': room('right'),
    'oil.left': fork.legs.left.oil,
    'oil.right': fork.legs.right.oil,
  }
}

describe('volume of a body of revolution', () => {
  // Hand calculation: cylinder π·r²·h, cone π·r²·h/3, hollow cylinder π·(R² − r²)·h.
  it.each([
    [
      'cylinder',
      [
        [0, 0],
        [10, 0],
        [10, 5],
        [0, 5],
      ],
      Math.PI * 25 * 10,
    ],
    [
      'cone',
      [
        [0, 0],
        [12, 0],
        [0, 4],
      ],
      (Math.PI * 16 * 12) / 3,
    ],
    [
      'hollow cylinder',
      [
        [0, 3],
        [0, 5],
        [7, 5],
        [7, 3],
      ],
      Math.PI * 16 * 7,
    ],
  ] as const)('%s', (_name, section, cubicMillimetres) => {
    expect(volumeOfRevolution(section) * 1e9).toBeCloseTo(cubicMillimetres, 9)
  })
})

describe('chambers of a drawn fork', () => {
  it.each(drawn.map((fork, i) => [i, fork] as const))(
    'fork %i holds what the formulas say, at five strokes',
    (_i, fork) => {
      for (const share of shares) {
        const here = { ...fork, stroke: fork.travel * share }
        const shapes = forkShapes(here)
        for (const [name, expected] of Object.entries(chambersByFormula(here))) {
          const off = Math.abs(volumeOf(shapes, name) / expected - 1)
          expect(off, `${name} at ${share}: drawn ${volumeOf(shapes, name)}, formula ${expected}`).toBeLessThan(0.01)
        }
      }
    },
  )

  it('every spacer holds its volume and none lies on another', () => {
    for (const fork of drawn) {
      if (fork.spring.kind !== 'air') continue
      const shapes = forkShapes(fork)
      const spacers = shapes.filter((shape) => shape.name.startsWith('spacer.'))
      expect(spacers).toHaveLength(fork.spring.spacers)
      for (const { name } of spacers) expect(volumeOf(shapes, name) / fork.spring.spacerVolume).toBeCloseTo(1, 6)
      const starts = spacers.map((one) => (one.kind === 'revolved' ? Math.min(...one.section.map(([u]) => u)) : 0))
      expect([...starts].sort((a, b) => b - a)).toEqual(starts)
    }
  })

  it('no point is missing, and none of a leg lies beyond its axis', () => {
    for (const fork of drawn)
      for (const share of shares)
        for (const shape of forkShapes({ ...fork, stroke: fork.travel * share })) {
          const points =
            shape.kind === 'revolved' ? shape.section : shape.kind === 'flat' ? shape.outlinePoints : shape.points
          for (const [u, r] of points) {
            expect(Number.isFinite(u) && Number.isFinite(r), shape.name).toBe(true)
            if (shape.kind === 'revolved') expect(r, shape.name).toBeGreaterThanOrEqual(0)
          }
        }
  })
})

describe('the fork as a machine', () => {
  it.each(drawn.map((fork, i) => [i, fork] as const))(
    'fork %i: nothing runs into anything over the stroke',
    (_i, fork) => {
      const at = forkStations(fork)
      const travel = fork.travel * 1e3
      expect(at.lip + travel, 'the wipers stay below the crown').toBeLessThan(at.crownFrom)
      expect(at.stanchionEnd - travel, 'the stanchions stay above the floor').toBeGreaterThan(at.rooms.left.floor)
      expect(at.stanchionEnd - travel).toBeGreaterThan(at.rooms.right.floor)
      expect(at.headFrom, 'the seal head stands in the stanchion').toBeGreaterThanOrEqual(at.stanchionEnd)
      expect(at.cap, 'the cap ends in the crown').toBeLessThan(at.crownTo)
      expect(at.headTo + at.negativeLength + at.pistonLength + travel, 'the piston stays below the cap').toBeLessThan(
        at.cap,
      )
      for (const room of Object.values(at.rooms)) expect(room.cavityRadius).toBeGreaterThan(at.outerRadius)
    },
  )

  it('the lower legs move by the stroke, the stanchions stay', () => {
    const [fork] = drawn
    if (!fork) throw new Error('twenty were drawn')
    const lowest = (stroke: number, name: string) => {
      const shape = forkShapes({ ...fork, stroke }).find((one) => one.name === name)
      if (shape?.kind !== 'revolved') throw new Error(`${name} is not drawn`)
      return Math.min(...shape.section.map(([u]) => u))
    }
    for (const name of ['casting.left', 'casting.right', 'piston', 'piston.damper', 'wiper.left', 'foam.right'])
      expect(lowest(0.05, name) - lowest(0, name), name).toBeCloseTo(50, 6)
    for (const name of ['stanchion.left', 'seal-head.left', 'crown.clamp.right', 'cap.left', 'ring'])
      expect(lowest(0.05, name), name).toBe(lowest(0, name))
  })
})

describe('two crowns', () => {
  const [one] = drawn
  if (!one) throw new Error('twenty were drawn')
  const names = (crowns: 1 | 2) => new Set(forkShapes({ ...one, crowns }).map(({ name }) => name))
  const endOf = (crowns: 1 | 2, name: string) =>
    Math.max(
      ...forkShapes({ ...one, crowns }).flatMap((shape) =>
        shape.kind === 'revolved' && shape.name === name ? shape.section.map(([u]) => u) : [],
      ),
    )

  it('the upper one clamps both stanchions, which reach up to it', () => {
    for (const name of ['upper-crown.clamp.left', 'upper-crown.clamp.right', 'upper-crown.web']) {
      expect(names(2)).toContain(name)
      expect(names(1)).not.toContain(name)
    }
    for (const leg of ['left', 'right']) {
      expect(endOf(2, `stanchion.${leg}`)).toBeCloseTo(endOf(2, `upper-crown.clamp.${leg}`), 6)
      expect(endOf(2, `stanchion.${leg}`)).toBeGreaterThan(endOf(2, `crown.clamp.${leg}`) + 20)
    }
  })

  it('the spring’s own chambers are the same', () => {
    for (const name of ['chamber.positive', 'chamber.negative'])
      expect(volumeOf(forkShapes({ ...one, crowns: 2 }), name)).toBeCloseTo(
        volumeOf(forkShapes({ ...one, crowns: 1 }), name),
        12,
      )
  })
})
