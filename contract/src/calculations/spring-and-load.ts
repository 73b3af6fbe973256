/** Spring and load. */
import { pressureForSag, type Spring, sag, springCurve } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { exampleFork } from './examples.ts'
import { count, quantity } from './fields.ts'
import { airSpringField, conditionFields, processFields, springField, withoutGaps } from './spring-fields.ts'

const gasSources = ['Ideal gas; polytropic process p·Vᵏ', 'Force balance on the leg']
const range =
  'Pressures to 50 bar; ideal gas is off by up to 1.3 % at 0 °C and 25 bar. Above about 2 bar a wiper vents.'

/** What is left out of a spring's numbers. */
export function springAssumptions(spring: Spring, slow = true): string[] {
  const said = [
    'Air is taken as an ideal gas: off by under 1.7 % up to 27 bar (forks), under 2.9 % up to 80 bar (shocks).',
    slow ? 'The gas has time to take the room’s temperature (slow).' : 'Fast gas keeps its heat by the exponent given.',
  ]
  if (!spring.lower && !spring.damperGas)
    said.push('Air closed in the lower legs and the damper’s gas are left out: the spring names neither.')
  return said
}

const curve = z.strictObject({ spring: springField, ...processFields, points: count.optional() })
const sagInput = z.strictObject({
  spring: springField,
  ...conditionFields,
  load: quantity('force'),
  friction: quantity('force').optional(),
})
const pressureInput = z.strictObject({
  spring: airSpringField,
  load: quantity('force'),
  sag: quantity('fraction'),
  ambient: quantity('absolutePressure').optional(),
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
    units: {
      freeStroke: 'm',
      fullStroke: 'm',
      'points[].stroke': 'm',
      'points[].force': 'N',
      'points[].rate': 'N/m',
      'points[].positivePressure': 'Pa',
      'points[].negativePressure': 'Pa',
      'points[].lowerPressures[]': 'Pa',
    },
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
    units: { stroke: 'm', fraction: '1', rate: 'N/m', low: 'm', high: 'm' },
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
    units: { pressure: 'Pa', stroke: 'm' },
    example: { spring: exampleFork, load: '351 N', sag: '20 %' },
    run({ spring, ...rest }) {
      return pressureForSag(spring, withoutGaps(rest))
    },
    assumptions: ({ spring }) => springAssumptions(spring),
  }),
]
