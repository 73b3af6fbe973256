/** Leak. */
import { type LeakQuestion, leakDown } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { inUnit, quantity, si, taken } from './fields.ts'
import { ambientField, withoutGaps } from './spring-fields.ts'

const reading = { reading: quantity('pressure'), temperature: quantity('temperature') }

export const leak = [
  calculation({
    name: 'leak-down',
    group: 'Leak',
    title: 'Leak between two readings',
    summary: 'What was lost after hose and temperature are taken out, and whether it is more than doubt.',
    formula: 'leak = V·(p_start − p_end)/duration; half life = duration·ln 2/ln(p_start/p_end)',
    sources: ['Ideal gas; pressure decay as in 40 CFR 1065.644', 'JCGM 100:2008 for the doubt of a reading'],
    range: 'One gauge for both readings: its own error cancels.',
    input: z.strictObject({
      volume: quantity('volume'),
      hoseVolume: taken(quantity('volume'), 0),
      start: z.strictObject(reading),
      end: z.strictObject({ ...reading, how: taken(z.enum(['attached', 'left']), 'attached') }),
      duration: quantity('duration'),
      ambient: ambientField,
      gaugeResolution: taken(quantity('pressure'), 6894.757),
    }),
    output: z.strictObject({
      pressureStart: si('pressure'),
      pressureEnd: si('pressure'),
      expectedReading: si('pressure'),
      leak: inUnit('Pa·m³/s'),
      standardFlow: si('flow'),
      halfLife: si('duration').nullable(),
      significant: z.boolean(),
    }),
    example: {
      volume: '187 ml',
      hoseVolume: '5 ml',
      start: { reading: '68 psi', temperature: '20 °C' },
      end: { reading: '54 psi', temperature: '20 °C' },
      duration: '24 h',
    },
    run: (input) => leakDown(withoutGaps<LeakQuestion>(input)),
    assumptions: ({ end, ambient }) => [
      end.how === 'left' ? 'The gauge stayed on.' : 'The gauge was put on again at the end and filled its hose.',
      'If the leg was cycled between, the volume is positive and negative together.',
      'Standard flow is at 273.15 K and 101,325 Pa.',
      ...(ambient === undefined ? ['Air around: 101,325 Pa at both readings.'] : []),
    ],
  }),
]
