/** Faults. */
import { diagnose, type FaultNetwork } from '@legwork/engine'
import { faultNetwork } from '@legwork/trade/faults/fault-network.ts'
import { groupFactors } from '@legwork/trade/faults/group-factors.ts'
import { unitKinds } from '@legwork/trade/faults/unit-kinds.ts'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { count, inUnit } from './fields.ts'
import { withoutGaps } from './spring-fields.ts'

const id = z.string().min(1).max(50)
const chance = z.number().meta({ 'x-unit': '1' })
const links = z.record(id, chance)
const kinds = z.array(z.enum(unitKinds)).optional()
const ids = z.array(id).max(500)

/** A network of the question's own instead of ours. */
const network = z.strictObject({
  signs: z.array(z.strictObject({ id, kinds, leak: chance })).max(200),
  causes: z
    .array(
      z.strictObject({
        id,
        kinds,
        group: z.enum(['wear', 'set-up', 'assembly', 'damage', 'not-the-unit']).optional(),
        prior: chance,
        links,
        safety: z.boolean().optional(),
      }),
    )
    .max(200),
  tests: z
    .array(z.strictObject({ id, minutes: count.meta({ 'x-unit': 'min' }), falsePositive: chance, links }))
    .max(200),
  pairs: z
    .array(z.strictObject({ sign: id, test: id }))
    .max(500)
    .optional(),
})

export const faults = [
  calculation({
    name: 'diagnose',
    group: 'Faults',
    title: 'What may be wrong',
    summary: 'Causes ranked by what the signs say of them, and the test that tells most in a minute.',
    formula: 'P(sign absent) = (1 − leak)·Π over causes there (1 − link); gain = posterior odds/prior odds',
    sources: [
      'Pearl 1988: noisy-OR, summed out exactly',
      'Chances: one technician’s estimate, no source; each is worth about 20 past jobs',
    ],
    range: 'Signs and tests of the unit’s kind; what is neither present nor absent is unknown.',
    input: z.strictObject({
      kind: z.enum(unitKinds),
      present: ids,
      absent: ids,
      factors: z
        .strictObject({
          hoursOverInterval: count.optional(),
          servicedWithinDays: count.optional(),
          secondHand: z.boolean().optional(),
          crashed: z.boolean().optional(),
        })
        .optional(),
      network: network.optional(),
    }),
    output: z.strictObject({
      posteriors: z.record(z.string(), inUnit('1')),
      ranking: z.array(
        z.strictObject({ fault: z.string(), prior: inUnit('1'), posterior: inUnit('1'), gain: inUnit('1').nullable() }),
      ),
      nextTests: z.array(
        z.strictObject({
          test: z.string(),
          minutes: inUnit('min'),
          gainPerMinute: inUnit('bit/min'),
          because: z.array(z.string()),
          safety: z.boolean(),
        }),
      ),
      ignored: z.array(z.string()),
    }),
    example: {
      kind: 'fork-air',
      present: ['S10', 'S15'],
      absent: ['S33'],
      factors: { hoursOverInterval: 2.5, crashed: false },
    },
    run: ({ kind, present, absent, factors = {}, network: own }) =>
      diagnose(own ? withoutGaps<FaultNetwork>(own) : faultNetwork, {
        kind,
        present,
        absent,
        factors: groupFactors(withoutGaps(factors)),
      }),
    assumptions: ({ network: own }) => [
      own ? 'Chances as given.' : 'Chances are one technician’s estimate, no source.',
      'Causes are independent beforehand, signs given the causes; they are not quite, so that it is a little too sure: read likely, possible, unlikely.',
      'What was not looked for is unknown, not absent.',
      'Of a sign and a test that are one observation the test counts; the sign is in ignored.',
      'Tests of what may hurt somebody stand first until it is ruled out (0.02).',
    ],
  }),
]
