/** Air. */
import { ambientShift, hoseRatio, type Place, pumpReading, type ShiftQuestion, standardAir } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { pair, quantity, si, taken, ways } from './fields.ts'
import { oneForm } from './one-form.ts'
import { springAssumptions } from './spring-and-load.ts'
import { springField, withoutGaps } from './spring-fields.ts'

const altitude = quantity('altitude')
const temperature = quantity('temperature')
const place = z
  .strictObject({
    temperature,
    altitude: altitude.optional(),
    ambient: quantity('absolutePressure').optional(),
  })
  .meta(ways(['altitude'], ['ambient']))

function placeOf(name: 'from' | 'to', read: z.output<typeof place>): Place {
  const by = oneForm(read, ['altitude'] as const, ['ambient'] as const, `${name}.`)
  return { temperature: read.temperature, ...by }
}

const pump = z
  .strictObject({
    volume: quantity('volume'),
    hoseVolume: quantity('volume'),
    reading: quantity('pressure').optional(),
    pressure: quantity('pressure').optional(),
  })
  .meta(ways(['reading'], ['pressure']))

export const air = [
  calculation({
    name: 'air-pressure',
    group: 'Air',
    title: 'Air pressure at an altitude',
    summary: 'The standard atmosphere.',
    formula: 'p = 101 325·(1 − 0.0065·h/288.15)^5.25588',
    sources: ['ISO 2533:1975; US Standard Atmosphere 1976'],
    range: 'Geopotential altitude up to 11 km; a barometer on the spot is better.',
    input: z.strictObject({ altitude }),
    output: z.strictObject({ ambient: si('absolutePressure'), temperature: si('temperature') }),
    example: { altitude: '2000 m' },
    run: ({ altitude: height }) => standardAir(height),
    assumptions: () => ['A map’s altitude is taken as geopotential: under 0.1 % below 4 km.', 'Weather is left out.'],
  }),
  calculation({
    name: 'ambient-shift',
    group: 'Air',
    title: 'Set here, ridden there',
    summary: 'What the gauge shows and how deep it sits at another altitude and temperature.',
    formula: 'p_abs,there = p_abs,here·T_there/T_here; gauge = p_abs − p_ambient',
    sources: ['Ideal gas at constant volume', 'ISO 2533:1975'],
    range: 'No air lost or added on the way.',
    input: z.strictObject({
      spring: springField,
      pressure: quantity('pressure').optional(),
      load: quantity('force').optional(),
      from: place,
      to: place,
    }),
    output: z.strictObject({
      pressure: si('pressure').optional(),
      strokeHere: si('length').optional(),
      strokeThere: si('length').optional(),
      overMaximum: z.boolean(),
    }),
    example: {
      spring: {
        kind: 'air',
        bore: '31 mm',
        shaft: '10 mm',
        stroke: '130 mm',
        positiveVolume: '179 ml',
        negativeVolume: '24.5 ml',
      },
      pressure: '76 psi',
      load: '284 N',
      from: { temperature: '21 °C', altitude: '420 m' },
      to: { temperature: '3 °C', altitude: '420 m' },
    },
    run({ spring, from, to, ...rest }) {
      const question = { ...rest, from: placeOf('from', from), to: placeOf('to', to) }
      return ambientShift(spring, withoutGaps<ShiftQuestion>(question))
    },
    assumptions: ({ spring }) => springAssumptions(spring),
  }),
  calculation({
    name: 'pump-reading',
    group: 'Air',
    title: 'What the pump shows',
    summary: 'Attaching the hose takes air: the reading is lower than the pressure was.',
    formula: 'reading = p·V/(V + V_hose)',
    sources: ['Ideal gas at one temperature; hose at ambient before'],
    range: 'V is what is joined where the leg rests: the positive chamber short of the port.',
    input: pump,
    output: z.strictObject({
      pressure: si('pressure'),
      reading: si('pressure'),
      pressureAfter: si('pressure'),
    }),
    example: { volume: '187 ml', hoseVolume: '5 ml', pressure: '88 psi' },
    run: (input) => pumpReading(withoutGaps(input)),
    assumptions: () => [
      'The hose is at ambient before it is attached.',
      'Taking the gauge off leaves the chamber at the reading.',
    ],
  }),
  calculation({
    name: 'hose-ratio',
    group: 'Air',
    title: 'The hose of a pump',
    summary:
      'How much a pump leaves of the pressure, from attaching it again and again; from that its hose or the chamber.',
    formula: 'V/(V + V_h) = mean of successive ratios of the readings',
    sources: ['Ideal gas at one temperature', 'JCGM 100:2008 5.1.2 for the band'],
    range: 'Nothing pumped or lost between; each reading is doubtful by resolution/√12.',
    input: z.strictObject({
      readings: z.array(quantity('pressure')).max(100),
      volume: quantity('volume').optional(),
      hoseVolume: quantity('volume').optional(),
      gaugeResolution: taken(quantity('pressure'), 6894.757),
    }),
    output: z.strictObject({
      ratio: si('number'),
      band: pair(si('number')),
      hoseVolume: si('volume').optional(),
      volume: si('volume').optional(),
    }),
    example: { readings: ['171 psi', '162 psi', '154 psi'], volume: '95 ml' },
    run: (input) => hoseRatio(withoutGaps(input)),
    assumptions: () => [
      'Nothing is pumped or lost between the readings.',
      'The hose is at ambient each time before it is attached.',
    ],
  }),
]
