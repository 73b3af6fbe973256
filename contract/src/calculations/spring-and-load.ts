/** Spring and load. */
import { idealGasBound, pressureForSag, type Spring, sag, springCurve } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { exampleFork } from './examples.ts'
import { count, quantity, si, taken } from './fields.ts'
import {
  airSpringField,
  ambientField,
  conditionFields,
  processFields,
  springField,
  withoutGaps,
} from './spring-fields.ts'

const percent = (share: number) => `${Number((share * 100).toPrecision(3))} %`
const { fork, shock, cold } = idealGasBound

const gasSources = [
  'Ideal gas; polytropic process p·Vᵏ',
  'Force balance on the leg',
  'How far the ideal gas is off: Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331, dry air',
]
const range =
  'Air to 80 bar, 0 to 50 °C; at −15 °C the ideal gas is off by half as much again ' +
  `(${percent(cold.fork.one)} to 27 bar, ${percent(cold.shock.one)} to 80 bar). Above about 2 bar a wiper of the lower legs vents.`

/** What is left out of a spring's numbers. */
export function springAssumptions(spring: Spring, slow = true): string[] {
  const said = [
    `Air is taken as an ideal gas: off by under ${percent(fork.one)} up to 27 bar (forks), ${percent(shock.one)} up to 80 bar (shocks); ` +
      `what a stroke makes of its filling by under ${percent(fork.stroke)} and ${percent(shock.stroke)}.`,
    slow ? 'The gas has time to take the room’s temperature (slow).' : 'Fast gas keeps its heat by the exponent given.',
  ]
  if (!spring.lower && !spring.damperGas)
    said.push('Air closed in the lower legs and the damper’s gas are left out: the spring names neither.')
  return said
}

const curve = z.strictObject({ spring: springField, ...processFields, points: taken(count, 61) })
const sagInput = z.strictObject({
  spring: springField,
  ...conditionFields,
  load: quantity('force'),
  friction: taken(quantity('force'), 0),
})
const pressureInput = z.strictObject({
  spring: airSpringField,
  load: quantity('force'),
  sag: quantity('fraction'),
  ambient: ambientField,
})
const curvePoint = z.strictObject({
  stroke: si('length'),
  force: si('force'),
  rate: si('rate'),
  positivePressure: si('pressure').optional(),
  negativePressure: si('pressure').optional(),
  lowerPressures: z.array(si('pressure')).optional(),
})

export const springAndLoad = [
  calculation({
    name: 'spring-curve',
    group: 'Spring and load',
    title: 'Force over the stroke',
    summary: 'Force, rate and pressures from full length to the end, slow or fast.',
    formula: 'F = (p⁺ − p_a)·A⁺ − (p⁻ − p_a)·A⁻ + Σ (p_L − p_a)·A_L',
    sources: gasSources,
    range,
    input: curve,
    output: z.strictObject({ freeStroke: si('length'), fullStroke: si('length'), points: z.array(curvePoint) }),
    example: { spring: exampleFork, pressure: '88 psi', points: 4 },
    run({ spring, ...rest }) {
      return springCurve(spring, withoutGaps(rest))
    },
    assumptions: ({ spring, exponent }) => springAssumptions(spring, (exponent ?? 1) === 1),
  }),
  calculation({
    name: 'sag',
    group: 'Spring and load',
    title: 'Sag under a load',
    summary: 'Where a load rests, and where friction may leave it.',
    formula: 'F(x) = load; low and high at load ∓ friction',
    sources: gasSources,
    range,
    input: sagInput,
    output: z.strictObject({
      stroke: si('length'),
      fraction: si('fraction'),
      rate: si('rate'),
      low: si('length'),
      high: si('length'),
      limit: z.enum(['not-moved', 'bottomed']).nullable(),
    }),
    example: { spring: exampleFork, pressure: '88 psi', load: '351 N', friction: '15 N' },
    run({ spring, ...rest }) {
      return sag(spring, withoutGaps(rest))
    },
    assumptions: ({ spring }) => springAssumptions(spring),
  }),
  calculation({
    name: 'pressure-for-sag',
    group: 'Spring and load',
    title: 'Pressure for a wanted sag',
    summary: 'The gauge pressure at full length that lets this load rest at the wanted share of the stroke.',
    formula: 'F(sag·stroke; p) = load, solved for p',
    sources: gasSources,
    range,
    input: pressureInput,
    output: z.strictObject({ pressure: si('pressure'), stroke: si('length') }),
    example: { spring: exampleFork, load: '351 N', sag: '20 %' },
    run({ spring, ...rest }) {
      return pressureForSag(spring, withoutGaps(rest))
    },
    assumptions: ({ spring }) => springAssumptions(spring),
  }),
]
