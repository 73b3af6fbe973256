/** Coil springs. */
import { type CoilRateQuestion, coilRate, wireRate } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { count, quantity, si, taken } from './fields.ts'
import { damperGasField, lowerField, withoutGaps } from './spring-fields.ts'

const length = quantity('length')

export const coils = [
  calculation({
    name: 'coil-rate',
    group: 'Spring and load',
    title: 'Coil for a sag',
    summary: 'The rate that gives a wanted sag, after what gas in damper and lower legs carries.',
    formula: 'rate = (load − F_gas(sag))/(sag + preload)',
    sources: ['Force balance at rest; ideal gas'],
    range: 'Slow, along the leg or shaft.',
    input: z.strictObject({
      load: quantity('force'),
      sag: length,
      preload: length,
      damperGas: damperGasField.optional(),
      lower: lowerField.optional(),
    }),
    output: z.strictObject({ rate: si('rate') }),
    example: {
      load: '1945 N',
      sag: '22.5 mm',
      preload: '1 mm',
      damperGas: { pressure: '200 psi', volume: '40 ml', rod: '12.7 mm' },
    },
    run: (input) => coilRate(withoutGaps<CoilRateQuestion>(input)),
    assumptions: ({ damperGas, lower }) => [
      'The coil is straight: its rate is the same everywhere.',
      ...(damperGas || lower
        ? []
        : ['The damper’s gas is left out: none is given. With it the coil comes out softer.']),
    ],
  }),
  calculation({
    name: 'wire-rate',
    group: 'Spring and load',
    title: 'Coil rate from its wire',
    summary: 'The rate of a helical spring from wire, mean diameter and active turns.',
    formula: 'k = G·d⁴/(8·D³·N)',
    sources: ['Barton & Fieldhouse, Automotive Chassis Engineering (Springer 2018), p. 213'],
    range: 'Round wire, closely wound; 1 % of wire is 4 % of rate.',
    input: z.strictObject({
      wire: length,
      coil: length,
      turns: count,
      shearModulus: taken(quantity('stress'), 79.3e9),
    }),
    output: z.strictObject({ rate: si('rate') }),
    example: { wire: '12.7 mm', coil: '120 mm', turns: 7.73 },
    run: (input) => wireRate(withoutGaps(input)),
    assumptions: ({ shearModulus }) => [
      'Coil is the mean diameter, turns are the active ones.',
      ...(shearModulus === undefined ? ['Steel: shear modulus 79.3 GPa.'] : []),
    ],
  }),
]
