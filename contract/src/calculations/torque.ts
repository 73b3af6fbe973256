/** Torque. */
import { wrenchSetting } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { quantity, si, taken } from './fields.ts'
import { withoutGaps } from './spring-fields.ts'

const input = z.strictObject({
  wanted: quantity('torque'),
  wrenchLength: quantity('length'),
  adapterLength: quantity('length'),
  adapterAngle: taken(quantity('angle'), 0),
})

export const torque = [
  calculation({
    name: 'torque',
    group: 'Torque',
    title: 'Wrench setting with an adapter',
    summary: 'What to set on the wrench so that the fastener gets the wanted torque.',
    formula: 'set = wanted·L/(L + E·cos φ)',
    sources: ['Lever rule, as in FAA AC 43.13-1B and US Army TM 9-254'],
    range: 'Hand at the middle of the grip; φ is 0 in line, 90° across.',
    input,
    output: z.strictObject({ set: si('torque') }),
    example: { wanted: '5.5 N·m', wrenchLength: '245 mm', adapterLength: '30 mm' },
    run: (question) => wrenchSetting(withoutGaps(question)),
    assumptions: () => [
      'The pull is square to the wrench, at the middle of its grip.',
      'The torque wanted is the maker’s, on threads as the sheet says: clean, greased or with thread lock.',
    ],
  }),
]
