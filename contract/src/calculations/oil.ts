/** Oil. */
import { blend, oilHeight, residualOil, saybolt, viscosity } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { alwaysIn, quantity, si, taken, ways } from './fields.ts'
import { knownOil, oilFields, oilWays } from './known-oil.ts'
import { withoutGaps } from './spring-fields.ts'

const mm2 = quantity('viscosity')
const length = quantity('length')
const volume = quantity('volume')
const temperature = quantity('temperature')
const improvers = 'Oils with index improvers are outside the scope of the blending rule.'

export const oil = [
  calculation({
    name: 'viscosity',
    group: 'Oil',
    title: 'Viscosity at a temperature',
    summary: 'Viscosity, index and grade of an oil, from two points or from 40 °C and its index.',
    formula: 'log log Z = A − B·log T, Z = ν + 0.7 + exp(−1.47 − 1.84·ν − 0.51·ν²)',
    sources: ['ASTM D341-20', 'ASTM D2270-10', 'ISO 3448:1992'],
    range: '0.2 mm²/s up, between pour and cloud points; mineral and most synthetic oils.',
    input: z.strictObject({ ...oilFields, temperature }).meta(oilWays),
    output: z.strictObject({
      viscosity: si('viscosity'),
      viscosityIndex: si('number').nullable(),
      grade: z.string().nullable(),
    }),
    example: {
      points: [
        { temperature: '40 °C', viscosity: '15 mm²/s' },
        { temperature: '100 °C', viscosity: '3.6 mm²/s' },
      ],
      temperature: '5 °C',
    },
    run: ({ temperature: at, ...oil }) => viscosity({ ...knownOil(oil), temperature: at }),
    assumptions: () => ["'Weight' is not a standard: compare oils by mm²/s at 40 °C and at the riding temperature."],
  }),
  calculation({
    name: 'blend',
    group: 'Oil',
    title: 'Blend for a viscosity',
    summary: 'How much of one oil in another gives a wanted viscosity.',
    formula:
      'shares add up on the scale log log Z (D7152, by volume) or 14.534·ln ln(ν + 0.8) + 10.975 (Refutas, by mass)',
    sources: ['ASTM D7152-11', 'Maples, Petroleum Refinery Process Economics, 2nd ed. 2000 (Refutas)'],
    range: 'Oils of one kind, all three viscosities at one temperature.',
    input: z.strictObject({ a: mm2, b: mm2, target: mm2, method: taken(z.enum(['D7152', 'Refutas']), 'D7152') }),
    output: z.strictObject({ fractionOfB: si('fraction'), basis: z.enum(['volume', 'mass']) }),
    example: { a: '5 mm²/s', b: '20 mm²/s', target: '8 mm²/s' },
    run: (input) => blend(withoutGaps(input)),
    assumptions: () => ['All three viscosities are at one temperature.', improvers],
  }),
  calculation({
    name: 'saybolt',
    group: 'Oil',
    title: 'Saybolt seconds',
    summary: 'Kinematic viscosity to Saybolt universal seconds and back.',
    formula:
      'SUS = (4.6324·ν + (1 + 0.03264·ν)/((3930.2 + 262.7·ν + 23.97·ν² + 1.646·ν³)·10⁻⁵))·(1 + 0.000061·(t − 100 °F))',
    sources: ['ASTM D2161-93'],
    range: 'From 1.8 mm²/s.',
    input: z
      .strictObject({ viscosity: mm2.optional(), seconds: quantity('duration').optional(), temperature })
      .meta(ways(['viscosity'], ['seconds'])),
    output: z.strictObject({ viscosity: si('viscosity').optional(), seconds: alwaysIn('duration', 's').optional() }),
    example: { viscosity: '32 mm²/s', temperature: '100 °F' },
    run: (input) => saybolt(withoutGaps(input)),
    assumptions: () => ['The temperature factor is from memory; it agrees with the standard’s factor at 210 °F.'],
  }),
  calculation({
    name: 'residual-oil',
    group: 'Oil',
    title: 'Old oil left in the fill',
    summary: 'The viscosity of a fresh fill with old oil left in the unit.',
    formula: 'share of old = residual/(residual + fill), blended on the scale log log Z',
    sources: ['ASTM D7152-11'],
    range: 'Both viscosities at one temperature.',
    input: z.strictObject({ old: mm2, fresh: mm2, residualVolume: volume, fillVolume: volume }),
    output: z.strictObject({ viscosity: si('viscosity') }),
    example: { old: '12 mm²/s', fresh: '15 mm²/s', residualVolume: '8 ml', fillVolume: '70 ml' },
    run: (input) => residualOil(input),
    assumptions: () => ['fillVolume is the fresh oil alone.', improvers],
  }),
  calculation({
    name: 'oil-height',
    group: 'Oil',
    title: 'Oil height in an open bath',
    summary: 'Height, volume and air gap of an open bath, height or volume from the other.',
    formula: 'volume = (legLength − height)·π/4·(bore² − rod²); air gap = π/4·bore²·height',
    sources: ['Geometry of a cylinder'],
    range: 'Height is measured down from the stanchion’s top edge to the oil.',
    input: z
      .strictObject({
        bore: length,
        rod: taken(length, 0),
        height: length.optional(),
        volume: volume.optional(),
        legLength: length,
      })
      .meta(ways(['height'], ['volume'])),
    output: z.strictObject({ height: si('length'), volume: si('volume'), airGap: si('volume') }),
    example: { bore: '29 mm', rod: '10 mm', height: '110 mm', legLength: '420 mm' },
    run: (input) => oilHeight(withoutGaps(input)),
    assumptions: () => ['Damper rod and bore are the same over the whole length; no air in the oil.'],
  }),
]
