/** Damping and the oil it comes from. */
import { dampingAtTemperature } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { quadratic } from './damping.ts'
import { inUnit, quantity, si, taken } from './fields.ts'
import { knownOil, oilFields, oilWays } from './known-oil.ts'
import { withoutGaps } from './spring-fields.ts'

const damping = quantity('damping')
const temperature = quantity('temperature')
const perKelvin = z.number().meta({ description: 'a number in 1/K', 'x-unit': '1/K' })

export const dampingOil = [
  calculation({
    name: 'damping-at-temperature',
    group: 'Damping',
    title: 'Damping with colder or warmer oil',
    summary: 'What a damping comes to on a cold morning, or at the end of a long descent.',
    formula: 'c₁ ∝ ν·ρ, c₂ ∝ ρ; ρ there/ρ here = 1/(1 + expansion·(to − from))',
    sources: ['Hagen and Poiseuille; M. G. Rabie, Fluid Power Engineering (2009)', 'ASTM D341-20'],
    range: 'Oil between its pour point and 150 °C; the adjuster and the shims stay as they are.',
    input: z.strictObject({
      damping: z.strictObject({ linear: damping, orifice: quadratic }),
      oil: z.strictObject(oilFields).meta(oilWays),
      from: temperature,
      to: temperature,
      expansion: taken(perKelvin, 0.0007),
    }),
    output: z.strictObject({
      damping: z.strictObject({ linear: si('damping'), orifice: inUnit('N·s²/m²') }),
      factor: z.strictObject({ linear: inUnit('1'), orifice: inUnit('1') }),
      viscosity: z.strictObject({ from: si('viscosity'), to: si('viscosity') }),
    }),
    example: {
      damping: { linear: '900 N·s/m', orifice: 150 },
      oil: {
        points: [
          { temperature: '40 °C', viscosity: '15 mm²/s' },
          { temperature: '100 °C', viscosity: '3.6 mm²/s' },
        ],
      },
      from: '20 °C',
      to: '0 °C',
    },
    run: ({ oil, ...rest }) => dampingAtTemperature({ ...withoutGaps(rest), oil: knownOil(oil, 'oil.') }),
    assumptions: ({ expansion }) => [
      'The straight part is laminar flow, the part with the speed’s square flow through sharp orifices; a shim stack lies between.',
      ...(expansion === undefined
        ? ['The oil grows by 0.07 % a kelvin: a usual figure of mineral oil, no source.']
        : []),
      'The temperature is the oil’s: in a long descent it lies well above the air’s.',
    ],
  }),
]
