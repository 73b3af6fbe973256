/** Setting up from what was seen: spacers, travel used, one dimension measured here. */
import { type CalibrateQuestion, calibrate, spacersForEndForce, type TravelQuestion, travelUsed } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { exampleFork } from './examples.ts'
import { count, inUnit, pair, quantity, si, taken } from './fields.ts'
import { springAssumptions } from './spring-and-load.ts'
import { airSpringField, ambientField, conditionFields, lowerField, springField, withoutGaps } from './spring-fields.ts'

const force = quantity('force')
const pressure = quantity('pressure')
const { spacers: _spacers, ...forkWithoutSpacers } = exampleFork

export const setUp = [
  calculation({
    name: 'spacers-for-end-force',
    group: 'Spring and load',
    title: 'Spacers for a force near the end',
    summary: 'The fewest spacers whose force near the end reaches what is wanted, at the pressure that gives the sag.',
    formula: 'smallest n with F_fast(at·stroke; n, p(sag)) ≥ endForce',
    sources: ['Force balance; ideal gas, polytropic from the sag'],
    range: 'Whole spacers that fit; air springs.',
    input: z.strictObject({
      spring: airSpringField,
      load: force,
      sag: quantity('fraction'),
      endForce: force,
      at: taken(quantity('fraction'), 0.9),
      exponent: taken(count, 1.3),
      ambient: ambientField,
    }),
    output: z.strictObject({ spacers: si('number'), pressure: si('pressure'), force: si('force') }),
    example: { spring: forkWithoutSpacers, load: '351 N', sag: '20 %', endForce: '1900 N' },
    run({ spring, ...rest }) {
      return spacersForEndForce(spring, withoutGaps(rest))
    },
    assumptions: ({ spring, exponent = 1.3 }) => [
      ...springAssumptions(spring),
      `Fast from the sag with exponent ${exponent}, the port taken as closed.`,
    ],
  }),
  calculation({
    name: 'travel-used',
    group: 'Spring and load',
    title: 'The same hit at another setting',
    summary: 'How deep the hit that left the ring mark would go with another pressure, spacers or oil.',
    formula: '∫(F_fast − load)dx from sag to the deepest mark is the same at both settings',
    sources: ['Conservation of energy; ideal gas, polytropic from the sag'],
    range: 'Damping left out on both sides; the nearer the settings, the better.',
    input: z.strictObject({
      spring: springField,
      ...conditionFields,
      load: force,
      deepest: quantity('length'),
      exponent: taken(count, 1.3),
      to: z.strictObject({
        pressure: pressure.optional(),
        spacers: count.optional(),
        chamberOil: quantity('volume').optional(),
        lower: lowerField.optional(),
        ambient: quantity('absolutePressure').optional(),
      }),
    }),
    output: z.strictObject({
      energy: si('energy'),
      deepestThere: si('length'),
      fractionThere: si('fraction'),
      limit: z.literal('bottomed').nullable(),
    }),
    example: { spring: exampleFork, pressure: '88 psi', load: '351 N', deepest: '138 mm', to: { spacers: 2 } },
    run({ spring, ...rest }) {
      return travelUsed(spring, withoutGaps<TravelQuestion>(rest))
    },
    assumptions: ({ spring, exponent = 1.3 }) => [
      ...springAssumptions(spring),
      `Fast from each setting’s own sag with exponent ${exponent}; damping is left out.`,
    ],
  }),
  calculation({
    name: 'calibrate',
    group: 'Spring and load',
    title: 'One dimension from measured points',
    summary: 'Fits the negative volume, or the stroke of the port, to sags measured at known pressure and load.',
    formula: 'least squares of (F(stroke) − load)/u; band ±1.645/√Σ(∂F/∂value/u)²',
    sources: ['Weighted least squares; JCGM 100:2008 5.1.2'],
    range: 'From a tenth to ten times the sheet’s negative volume; the port within a third of the stroke.',
    input: z.strictObject({
      spring: airSpringField,
      points: z
        .array(z.strictObject({ pressure, load: force, stroke: quantity('length'), u: taken(force, 10) }))
        .max(1000),
      fit: taken(z.enum(['negativeVolume', 'equalisingStroke']), 'negativeVolume'),
      ambient: ambientField,
    }),
    output: z.strictObject({
      value: inUnit('see unit'),
      band: pair(inUnit('see unit')),
      residual: si('force'),
      unit: z.enum(['m', 'm³']),
    }),
    example: {
      spring: exampleFork,
      points: [{ pressure: '88 psi', load: '351 N', stroke: '30.5 mm' }],
    },
    run({ spring, ...rest }) {
      const unit = rest.fit === 'equalisingStroke' ? ('m' as const) : ('m³' as const)
      return { ...calibrate(spring, withoutGaps<CalibrateQuestion>(rest)), unit }
    },
    assumptions: ({ spring }) => [
      ...springAssumptions(spring),
      'Everything but the fitted dimension is taken as the sheet says; the load of a point is taken to ±10 N unless u is given.',
    ],
  }),
]
