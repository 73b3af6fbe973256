/** Damping. */
import {
  type ClicksQuestion,
  clicksForDamping,
  type DropQuestion,
  dampingFromReturn,
  dampingRatio,
  drop,
  type FromReturnQuestion,
  type ReturnQuestion,
  returnTime,
} from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { exampleFork } from './examples.ts'
import { count, inUnit, pair, quantity, si, taken } from './fields.ts'
import { springAssumptions } from './spring-and-load.ts'
import { processFields, springField, withoutGaps } from './spring-fields.ts'

const damping = quantity('damping')
const motion = {
  spring: springField,
  ...processFields,
  mass: quantity('mass'),
  friction: quantity('force'),
  from: quantity('length'),
  to: quantity('length'),
  load: taken(quantity('force'), 0),
}
const motionSources = ['Newton’s second law and force balance on the leg', 'Ideal gas; polytropic process p·Vᵏ']
const motionRange = 'Damping straight in the speed: the low-speed part of rebound. Up to 100,000 N·s/m and 600 s.'
const motionSaid = [
  'Mass is what moves, as the leg feels it: m·sin²(head angle) of a fork, m·leverage² of a shock.',
  'Friction is the same at every speed and stroke.',
]
export const quadratic = z
  .number()
  .meta({ description: 'a number in N·s²/m²; 0 without an orifice', 'x-unit': 'N·s²/m²' })

const exampleMotion = {
  spring: exampleFork,
  pressure: '88 psi',
  mass: '2 kg',
  friction: '20 N',
  from: '120 mm',
  to: '20 mm',
}

export const dampings = [
  calculation({
    name: 'return-time',
    group: 'Damping',
    title: 'How long a leg needs to come back',
    summary: 'Time from rest at one stroke to another, let go against its rebound damping.',
    formula: 'm·x″ = −(F(x) − W) + F_f − c·x′, x′ < 0',
    sources: motionSources,
    range: motionRange,
    input: z.strictObject({ ...motion, damping }),
    output: z.strictObject({ time: si('duration') }),
    example: { ...exampleMotion, damping: '800 N·s/m' },
    run: ({ spring, ...rest }) => returnTime(spring, withoutGaps<ReturnQuestion>(rest)),
    assumptions: ({ spring, exponent }) => [...springAssumptions(spring, (exponent ?? 1) === 1), ...motionSaid],
  }),
  calculation({
    name: 'damping-from-return',
    group: 'Damping',
    title: 'Damping from a return time',
    summary: 'The rebound damping with which a leg needs the time that was taken, or below what it must lie.',
    formula: 'm·x″ = −(F(x) − W) + F_f − c·x′, solved for c',
    sources: motionSources,
    range: `${motionRange} Within three resolutions of the undamped time the clock no longer tells: below.`,
    input: z.strictObject({
      ...motion,
      time: quantity('duration'),
      timeResolution: taken(quantity('duration'), 1 / 240),
    }),
    output: z.strictObject({ damping: si('damping').nullable(), below: si('damping').nullable() }),
    example: { ...exampleMotion, time: '0.12 s' },
    run: ({ spring, ...rest }) => dampingFromReturn(spring, withoutGaps<FromReturnQuestion>(rest)),
    assumptions: ({ spring, exponent, timeResolution }) => [
      ...springAssumptions(spring, (exponent ?? 1) === 1),
      ...motionSaid,
      ...(timeResolution === undefined ? ['The time is taken from a film of 240 pictures a second.'] : []),
    ],
  }),
  calculation({
    name: 'clicks-for-damping',
    group: 'Damping',
    title: 'Clicks for a wanted damping',
    summary: 'The adjuster’s law laid through measured settings, and where on it the wanted damping lies.',
    formula: 'ln c = ln c_closed − β·n by least squares; perClick = 1 − e^(−β)',
    sources: ['Least squares: JCGM 100:2008, H.3', 'The law: common practice, no source'],
    range: 'Clicks counted out from closed; a click usually takes 4–6 % away (common practice, no source).',
    input: z.strictObject({
      settings: z
        .array(z.strictObject({ clicks: count, damping }))
        .min(1)
        .max(100),
      wanted: damping,
    }),
    output: z.strictObject({
      clicks: inUnit('1'),
      band: pair(inUnit('1')).nullable(),
      closed: si('damping'),
      perClick: si('fraction'),
    }),
    example: {
      settings: [
        { clicks: 0, damping: '1500 N·s/m' },
        { clicks: 5, damping: '1150 N·s/m' },
        { clicks: 10, damping: '905 N·s/m' },
        { clicks: 15, damping: '690 N·s/m' },
      ],
      wanted: '800 N·s/m',
    },
    run: (input) => clicksForDamping(withoutGaps<ClicksQuestion>(input)),
    assumptions: ({ settings }) => [
      'Each click takes the same share of the damping away.',
      settings.length === 2
        ? 'Two settings make the line and leave nothing to judge it by: no band.'
        : 'The band is 90 %, by Student’s t from the scatter about the line; it is the line’s, not one measurement’s.',
    ],
  }),
  calculation({
    name: 'damping-ratio',
    group: 'Damping',
    title: 'Damping ratio',
    summary: 'Damping as a share of what just stops a leg from swinging over.',
    formula: 'ζ = c/c_crit; c_crit = 2·√(rate·mass)',
    sources: ['S. S. Rao, Mechanical Vibrations, 2.6'],
    range: 'Small motions about one stroke.',
    input: z.strictObject({ damping, rate: quantity('rate'), mass: quantity('mass') }),
    output: z.strictObject({ ratio: inUnit('1'), critical: si('damping') }),
    example: { damping: '700 N·s/m', rate: '7.5 N/mm', mass: '30 kg' },
    run: (input) => dampingRatio(input),
    assumptions: () => [
      'Mass is the sprung mass as the leg feels it: m·sin²(head angle) of a fork, m·leverage² of a shock.',
      'Targets, common practice, no source: fork 0.6–1.0, start at 0.8; shock 0.5–0.8, start at 0.65.',
    ],
  }),
  calculation({
    name: 'drop',
    group: 'Damping',
    title: 'Dropped on to the wheel',
    summary: 'How deep a drop takes the leg, the largest force in it, and when it has settled.',
    formula: 'm_s·s″ = F − m_s·g; m_w·w″ = T − F − m_w·g; F = F(x) + c₁·x′ + c₂·x′·|x′|; T = k_t·max(0, y)',
    sources: motionSources,
    range: 'Upright leg, a tyre with one rate, damping alike both ways; 3 s.',
    input: z.strictObject({
      spring: springField,
      ...processFields,
      sprungMass: quantity('mass'),
      wheelMass: quantity('mass'),
      dropHeight: quantity('length'),
      damping: z.strictObject({ linear: damping, orifice: quadratic }),
      tyre: z.strictObject({ rate: quantity('rate') }),
    }),
    output: z.strictObject({
      deepest: si('length'),
      peakForce: si('force'),
      settling: si('duration').nullable(),
      limit: z.literal('bottomed').nullable(),
      trace: z.array(z.strictObject({ time: si('duration'), stroke: si('length'), force: si('force') })),
    }),
    example: {
      spring: exampleFork,
      pressure: '88 psi',
      exponent: 1.3,
      sprungMass: '34 kg',
      wheelMass: '3 kg',
      dropHeight: '0.4 m',
      damping: { linear: '800 N·s/m', orifice: 200 },
      tyre: { rate: '90 N/mm' },
    },
    run: ({ spring, ...rest }) => drop(spring, withoutGaps<DropQuestion>(rest)),
    assumptions: ({ spring, exponent, dropHeight }) => [
      ...springAssumptions(spring, (exponent ?? 1) === 1),
      `Time counts from letting go; the tyre touches after √(2·h/g) = ${Math.sqrt((2 * dropHeight) / 9.80665).toPrecision(3)} s.`,
      'Settled: within 5 % of the stroke about where this spring, slow or fast as asked, holds the sprung mass.',
      'Full length and the end of the stroke are stops that do not bounce; the blow itself is not in the peak force.',
      'Friction and the tyre’s own damping are left out.',
    ],
  }),
]
