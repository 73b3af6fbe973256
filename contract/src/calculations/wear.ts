/** Wear: clearance of bushings, rock at the axle, fits. */
import { clearance, fitIso286, isoHoles, isoShafts, rock } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { count, pair, quantity, si, taken } from './fields.ts'
import { withoutGaps } from './spring-fields.ts'

const length = quantity('length')
const diameters = z.array(z.array(length).max(12)).max(12)
const metres = si('length')

export const wear = [
  calculation({
    name: 'clearance',
    group: 'Wear',
    title: 'Bushing clearance',
    summary: 'Clearance between bushing and stanchion with its band, ovality and taper, judged against a limit.',
    formula: 'clearance = mean bushing − mean stanchion at each height; band ±1.645·√(uStanchion² + uBushing²)',
    sources: ['Difference of two measured sizes; JCGM 100:2008 5.1.2'],
    range:
      'Diameters at two heights, upper then lower, in two or more directions. Larger is worse; a limit may be the most of an ISO 286 fit.',
    input: z.strictObject({
      stanchion: diameters,
      bushing: diameters,
      uStanchion: length,
      uBushing: length,
      limit: z.strictObject({ watch: length, fail: length }),
    }),
    output: z.strictObject({
      clearance: z.strictObject({ upper: metres, lower: metres }),
      band: pair(metres),
      ovality: metres,
      taper: metres,
      verdict: z.enum(['pass', 'watch', 'fail', 'cannot-tell']),
      wouldDecide: z.strictObject({ instrument: z.enum(['bore-gauge', 'micrometer', 'both']), u: metres }).nullable(),
    }),
    example: {
      stanchion: [
        ['34.97 mm', '34.96 mm'],
        ['34.96 mm', '34.95 mm'],
      ],
      bushing: [
        ['35.03 mm', '35.04 mm'],
        ['35.06 mm', '35.07 mm'],
      ],
      uStanchion: '0.003 mm',
      uBushing: '0.006 mm',
      limit: { watch: '0.12 mm', fail: '0.2 mm' },
    },
    run: (input) => clearance(input),
    assumptions: () => [
      'An instrument’s own error is common to all its readings: more of them do not narrow the band.',
      'The band is of the larger clearance, which is the one judged.',
      'Both at one temperature, clean and dry, the bushing in its place.',
    ],
  }),
  calculation({
    name: 'rock',
    group: 'Wear',
    title: 'Clearance from the rock at the axle',
    summary: 'What play felt at the axle means at the lower bushing.',
    formula: 'clearance = rock/(1 + (1 + share)·a/b)',
    sources: ['Geometry of a leg tilting between two bushings'],
    range: 'Play from end to end; hub, headset and axle without play of their own.',
    input: z.strictObject({ rock: length, a: length, b: length, share: taken(count, 1) }),
    output: z.strictObject({ clearance: metres }),
    example: { rock: '0.8 mm', a: '230 mm', b: '115 mm' },
    run: (input) => rock(withoutGaps(input)),
    assumptions: ({ share = 1 }) => [
      `The upper bushing has ${share} times the clearance of the lower.`,
      'Bending of the stanchion under the hand counts as rock here: push gently.',
    ],
  }),
  calculation({
    name: 'fit-iso286',
    group: 'Wear',
    title: 'Fit of a hole and a shaft',
    summary: 'Limits of size by their ISO classes, and the clearance between them.',
    formula: 'clearance = −es … IT_hole − es + IT_shaft',
    sources: ['ISO 286-1 and ISO 286-2'],
    range: 'Nominal sizes 3–80 mm; holes H6–H9; shafts e7, f6–f8, g5–g6, h5–h9.',
    input: z.strictObject({ size: length, hole: z.enum(isoHoles), shaft: z.enum(isoShafts) }),
    output: z.strictObject({
      deviations: z.strictObject({ hole: pair(metres), shaft: pair(metres) }),
      clearance: pair(metres),
    }),
    example: { size: '35 mm', hole: 'H8', shaft: 'f7' },
    run: (input) => fitIso286(input),
    assumptions: () => [
      'New parts, within their classes, at 20 °C.',
      'A maker’s clearance for a bushing is no ISO fit: where the sheet has one, that decides.',
    ],
  }),
]
