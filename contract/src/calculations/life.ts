/** Hours and life: how long parts last. */
import { type LifeQuestion, life } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { inUnit, pair } from './fields.ts'
import { hours } from './hours.ts'
import { withoutGaps } from './spring-fields.ts'

const h = inUnit('h')
const share = inUnit('1')

export const lives = [
  calculation({
    name: 'life',
    group: 'Hours and life',
    title: 'How long parts last',
    summary: 'From lives that ended and lives that still run: shape, scale, B10, and the interval that costs least.',
    formula: 'R(t) = e^(−(t/scale)^shape); cost(t) = (plannedCost·R + failureCost·(1 − R))/∫₀ᵗR',
    sources: [
      'Meeker & Escobar 1998, chapter 8: maximum likelihood, lives cut short',
      'Kaplan & Meier 1958; Kalbfleisch & Prentice 1980 for the band',
      'Barlow & Proschan 1965: age replacement',
    ],
    range: 'Five failures for a forecast; under that the curve alone.',
    input: z.strictObject({
      lives: z.array(z.strictObject({ hours, failed: z.boolean() })).max(100_000),
      plannedCost: z.number().optional(),
      failureCost: z.number().optional(),
    }),
    output: z.strictObject({
      shape: share.nullable(),
      scale: h.nullable(),
      bands: z.strictObject({
        shape: pair(share).nullable(),
        scale: pair(h).nullable(),
        b10: pair(h).nullable(),
      }),
      logLikelihood: share.nullable(),
      b10: h.nullable(),
      bestInterval: h.nullable(),
      enough: z.boolean(),
      curve: z.array(z.strictObject({ hours: h, survival: share, low: share.nullable(), high: share.nullable() })),
    }),
    example: {
      lives: [
        ...['48 h', '77 h', '91 h', '104 h', '126 h', '139 h'].map((ran) => ({ hours: ran, failed: true })),
        ...['60 h', '118 h', '150 h'].map((ran) => ({ hours: ran, failed: false })),
      ],
      plannedCost: 60,
      failureCost: 240,
    },
    run: (input) => life(withoutGaps<LifeQuestion>(input)),
    assumptions: () => [
      'Parts of one kind under one kind of riding; a life cut short says nothing of why.',
      'Bands are 90 %, log-normal from the observed information; the curve’s are Greenwood’s on ln(−ln S).',
      'An interval is given where wear sets in (shape over 1) and a failure costs more than replacing in time.',
    ],
  }),
]
