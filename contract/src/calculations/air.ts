/** Air. */
import { ambientShift, pumpReading, type ShiftQuestion, standardAir } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { quantity } from './fields.ts'
import { springAssumptions } from './spring-and-load.ts'
import { springField, withoutGaps } from './spring-fields.ts'

const altitude = quantity('altitude')
const temperature = quantity('temperature')
const place = z.union(
  [z.strictObject({ temperature, altitude }), z.strictObject({ temperature, ambient: quantity('absolutePressure') })],
  { error: 'a temperature with an altitude or an ambient pressure' },
)
const pump = z.strictObject({
  volume: quantity('volume'),
  hoseVolume: quantity('volume'),
  reading: quantity('pressure').optional(),
  pressure: quantity('pressure').optional(),
})

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
    units: { ambient: 'Pa', temperature: 'K' },
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
    units: { pressure: 'Pa', strokeHere: 'm', strokeThere: 'm' },
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
    run({ spring, ...rest }) {
      return ambientShift(spring, withoutGaps<ShiftQuestion>(rest))
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
    units: { pressure: 'Pa', reading: 'Pa', pressureAfter: 'Pa' },
    example: { volume: '187 ml', hoseVolume: '5 ml', pressure: '88 psi' },
    run: (input) => pumpReading(withoutGaps(input)),
    assumptions: () => [
      'The hose is at ambient before it is attached.',
      'Taking the gauge off leaves the chamber at the reading.',
    ],
  }),
]
