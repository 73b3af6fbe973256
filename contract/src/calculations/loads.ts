/** Loads on fork and shock, and both ends together. */
import { type BothEndsQuestion, bothEnds, forkLoad, type Leverage, shockLoad, sideFriction } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { exampleFork, exampleShock } from './examples.ts'
import { count, pair, quantity, si, taken, ways } from './fields.ts'
import { oneForm } from './one-form.ts'
import { springAssumptions } from './spring-and-load.ts'
import { ambientField, springField, withoutGaps } from './spring-fields.ts'

const mass = quantity('mass')
const length = quantity('length')
const scales = ['wheelLoad', 'unsprungMass'] as const

export const leverageField = z
  .union(
    [
      z.number(),
      z.strictObject({ start: count, end: count, stroke: length }),
      z.array(z.strictObject({ stroke: length, leverage: count })).max(1000),
    ],
    { error: 'a number, {start, end, stroke}, or a list of {stroke, leverage}' },
  )
  .transform((leverage): Leverage => leverage)

const end = z.strictObject({
  spring: springField,
  pressure: quantity('pressure').optional(),
  load: quantity('force'),
})

const endSag = z.strictObject({ stroke: si('length'), fraction: si('fraction') })

export const loads = [
  calculation({
    name: 'fork-load',
    group: 'Spring and load',
    title: 'Load along a fork',
    summary: 'What presses along the legs, and across them, from scales or from masses.',
    formula: 'load = m·g·sin(head angle), side load = m·g·cos(head angle)',
    sources: ['Statics; standard gravity 9.80665 m/s² (3rd CGPM, 1901)'],
    range: 'At rest, in the posture that was weighed.',
    input: z
      .strictObject({
        wheelLoad: mass.optional(),
        unsprungMass: mass.optional(),
        riderMass: mass.optional(),
        frontShare: quantity('fraction').optional(),
        bikeFrontMass: mass.optional(),
        headAngle: quantity('angle'),
      })
      .meta(ways(scales, ['riderMass', 'frontShare', 'bikeFrontMass'])),
    output: z.strictObject({ load: si('force'), sideLoad: si('force') }),
    example: { riderMass: '82 kg', frontShare: 0.42, bikeFrontMass: '5.05 kg', headAngle: '65°' },
    run(input) {
      const form = oneForm(input, scales, ['riderMass', 'frontShare', 'bikeFrontMass'] as const)
      return forkLoad({ ...form, headAngle: input.headAngle })
    },
    assumptions: () => ['The posture stays as it was weighed or named; braking and slope are left out.'],
  }),
  calculation({
    name: 'shock-load',
    group: 'Spring and load',
    title: 'Load on a shock',
    summary: 'What presses on the shock, from the sprung mass at the rear wheel or from scales, through the leverage.',
    formula: 'load = m·g·leverage(stroke)',
    sources: ['Virtual work; standard gravity 9.80665 m/s² (3rd CGPM, 1901)'],
    range: 'At rest; leverage is wheel travel over shock stroke at the stroke given.',
    input: z
      .strictObject({
        rearSprungMass: mass.optional(),
        wheelLoad: mass.optional(),
        unsprungMass: mass.optional(),
        leverage: leverageField,
        stroke: taken(length, 0),
      })
      .meta(ways(['rearSprungMass'], scales)),
    output: z.strictObject({ load: si('force') }),
    example: { rearSprungMass: '55.2 kg', leverage: { start: 2.8, end: 2.4, stroke: '55 mm' }, stroke: '15 mm' },
    run(input) {
      const form = oneForm(input, ['rearSprungMass'] as const, scales)
      const { leverage, stroke = 0 } = input
      return shockLoad({ ...form, leverage, stroke })
    },
    assumptions: () => ['The linkage has no friction; the posture stays as it was weighed.'],
  }),
  calculation({
    name: 'both-ends',
    group: 'Spring and load',
    title: 'Both ends at sag',
    summary: 'How far both ends sink, and what that does to head angle and bottom bracket.',
    formula: 'F_fork(x) = load; F_shock(s) = load·leverage(s); pitch = atan((front − rear)/wheelbase)',
    sources: ['Statics and plane geometry'],
    range: 'At rest on level ground; tyres taken as stiff.',
    input: z.strictObject({
      fork: end,
      shock: end,
      wheelbase: length,
      rearCentre: length,
      headAngle: quantity('angle'),
      leverage: leverageField,
      ambient: ambientField,
    }),
    output: z.strictObject({
      sags: z.strictObject({ fork: endSag, shock: endSag, rearTravel: si('length') }),
      headAngleAtSag: si('angle'),
      bottomBracketDrop: si('length'),
    }),
    example: {
      fork: { spring: exampleFork, pressure: '88 psi', load: '351 N' },
      shock: { spring: exampleShock, pressure: '180 psi', load: '541 N' },
      wheelbase: '1220 mm',
      rearCentre: '433 mm',
      headAngle: '65°',
      leverage: 2.6,
    },
    run: (input) => bothEnds(withoutGaps<BothEndsQuestion>(input)),
    assumptions: ({ fork, shock }) => [
      ...new Set([...springAssumptions(fork.spring), ...springAssumptions(shock.spring)]),
      'Friction and tyres are left out; the shock’s load is the vertical sprung load at the wheel.',
    ],
  }),
  calculation({
    name: 'side-friction',
    group: 'Spring and load',
    title: 'Friction from the side load',
    summary: 'What the load across the fork costs in the bushings: part of the band of a sag.',
    formula: 'F = μ·P·(1 + 2a/b)',
    sources: ['Statics; μ of 0.04–0.10 is an estimate without a published source'],
    range: 'Wet bushings in order; a range, never one number.',
    input: z.strictObject({
      sideLoad: quantity('force'),
      a: length,
      b: length,
      mu: taken(z.tuple([count, count]), [0.04, 0.1]),
    }),
    output: z.strictObject({ friction: pair(si('force')) }),
    example: { sideLoad: '160 N', a: '230 mm', b: '115 mm' },
    run: (input) => sideFriction(withoutGaps(input)),
    assumptions: ({ mu }) =>
      mu === undefined ? ['μ is taken from 0.04 to 0.10: an estimate, no source.'] : ['μ as given.'],
  }),
]
