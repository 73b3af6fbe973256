/** Torque: which wrench, what it does to a bolt and its thread. */
import { bolt, threadStrip, wrenchChoice } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { count, inUnit, pair, quantity, si, taken } from './fields.ts'
import { withoutGaps } from './spring-fields.ts'

const length = quantity('length')
const torque = quantity('torque')
const stress = quantity('stress')

export const threads = [
  calculation({
    name: 'wrench-choice',
    group: 'Torque',
    title: 'Which torque wrench',
    summary: 'The wrench of the shop that can do it, what to set, and how far it may be off.',
    formula: 'low ≤ wanted·L/(L + E·cos φ) ≤ high; smallest class, then smallest range',
    sources: ['ISO 6789:2003: the permitted deviation holds inside the stated range'],
    range: 'Wrenches in calibration.',
    input: z.strictObject({
      wanted: torque,
      wrenches: z
        .array(
          z.strictObject({ id: z.string().max(200), low: torque, high: torque, class: quantity('fraction'), length }),
        )
        .max(200),
      adapterLength: taken(length, 0),
      adapterAngle: taken(quantity('angle'), 0),
    }),
    output: z.strictObject({
      best: z.strictObject({ id: z.string(), set: si('torque'), error: si('torque') }).nullable(),
      refused: z.array(z.strictObject({ id: z.string(), why: z.string() })),
    }),
    example: {
      wanted: '5.5 N·m',
      wrenches: [
        { id: 'W1', low: '2 N·m', high: '10 N·m', class: '6 %', length: '200 mm' },
        { id: 'W2', low: '10 N·m', high: '60 N·m', class: '4 %', length: '350 mm' },
      ],
      adapterLength: '30 mm',
    },
    run: (input) => wrenchChoice(withoutGaps(input)),
    assumptions: () => ['Each wrench is in calibration and pulled square, in the middle of its grip.'],
  }),
  calculation({
    name: 'bolt',
    group: 'Torque',
    title: 'What a torque does to a bolt',
    summary: 'Clamp force and stress of a tightened bolt, hollow ones too; warns before one is stretched.',
    formula: 'F = T/(K·d); σ = F/A_s; τ = (T/2)·(d_s/2)/(π/32·(d_s⁴ − bore⁴)); σ_v = √(σ² + 3τ²)',
    sources: ['T = K·D·F: NASA RP-1228 (Barrett 1990)', 'Stress area: ISO 898-1'],
    range: 'ISO metric threads; K is a range, so the answer is one.',
    input: z.strictObject({
      torque,
      diameter: length,
      pitch: length,
      bore: taken(length, 0),
      nutFactor: taken(z.tuple([count, count]), [0.15, 0.25]),
      yield: stress.optional(),
    }),
    output: z.strictObject({
      clampForce: pair(si('force')),
      stressArea: inUnit('m²'),
      stress: pair(si('stress')),
      misesStress: pair(si('stress')),
      shareOfYield: pair(si('fraction')).optional(),
    }),
    example: { torque: '6 N·m', diameter: '8 mm', pitch: '1 mm', bore: '5 mm', yield: '400 MPa' },
    run: (input) => bolt(withoutGaps(input)),
    assumptions(input) {
      const { shareOfYield } = bolt(withoutGaps(input))
      const said = ['Half of the torque twists the thread; the rest is lost under the head.']
      if (input.nutFactor === undefined) said.push('K from 0.15 (oiled) to 0.25 (dry).')
      if (shareOfYield && shareOfYield[1] >= 0.7) {
        said.push(
          'Caution: 70 % of yield or more. A soft hollow fastener may stretch: use the maker’s torque, clean and as the sheet says.',
        )
      }
      return said
    },
  }),
  calculation({
    name: 'thread-strip',
    group: 'Torque',
    title: 'What strips a thread',
    summary: 'Sheared areas of both threads and the forces that strip them.',
    formula:
      'external π·(L/P)·D1max·(P/2 + 0.57735·(d2min − D1max)); internal π·(L/P)·dmin·(P/2 + 0.57735·(dmin − D2max))',
    sources: ['FED-STD-H28/2B', 'Limits of 6H/6g: ISO 965-1'],
    range: 'ISO metric threads 6H/6g, worst limits; an even load on all turns.',
    input: z.strictObject({
      diameter: length,
      pitch: length,
      engagement: length,
      shearStrength: z.strictObject({ external: stress, internal: stress }),
    }),
    output: z.strictObject({
      area: z.strictObject({ external: inUnit('m²'), internal: inUnit('m²') }),
      force: z.strictObject({ external: si('force'), internal: si('force') }),
    }),
    example: {
      diameter: '8 mm',
      pitch: '1.25 mm',
      engagement: '8 mm',
      shearStrength: { external: '380 MPa', internal: '160 MPa' },
    },
    run: (input) => threadStrip(input),
    assumptions: () => ['Threads at the worst limits of 6H/6g, undamaged.'],
  }),
]
