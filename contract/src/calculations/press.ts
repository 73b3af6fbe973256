/** Bench tests: the press. */
import { coolingTimes, holdFriction, type PressQuestion, pressTest, type Spring, sheetDoubt } from '@legwork/engine'
import { z } from 'zod'
import { calculation } from './calculation.ts'
import { exampleFork } from './examples.ts'
import { inUnit, pair, quantity, si, taken } from './fields.ts'
import { springAssumptions } from './spring-and-load.ts'
import { ambientField, springField, withoutGaps } from './spring-fields.ts'

const force = quantity('force')
const length = quantity('length')
const faults = ['pressure-off', 'negative-off', 'volume-less', 'volume-more', 'bath-over', 'rate-off'] as const
const newtons = si('force')
const seeUnit = inUnit('see unit')

/** Drawn, not measured: the example fork with 18 ml of oil in its chamber, 4 N and 0.7 mm of doubt. */
const exampleReadings = [
  [10, 173, 145],
  [20, 277, 249],
  [25, 321, 287],
  [30, 382, 345],
  [35, 414, 391],
  [40, 462, 465],
  [55, 600, 567],
  [70, 729, 709],
  [85, 907, 848],
  [100, 1075, 1024],
  [113, 1257, 1250],
  [127, 1540, 1501],
].map(([stroke, pressing, releasing]) => ({
  stroke: `${stroke} mm`,
  pressing: `${pressing} N`,
  releasing: `${releasing} N`,
}))

const ml = (volume: number) => `${Math.round(volume * 1e6)} ml`

/** The reason for the hold, in this spring's own figures. */
function whyHold(spring: Spring, question: PressQuestion): string {
  const press = question.presses.reduce((most, one) => ((one.pressure ?? 0) > (most.pressure ?? 0) ? one : most))
  const strokes = press.readings.map(({ stroke }) => stroke).sort((one, other) => one - other)
  const { pressure } = press
  const { ambient } = question
  const after = (hold: number) => {
    const { friction } = holdFriction(spring, withoutGaps({ pressure, ambient, strokes, hold }))
    return friction.map((newton) => Math.round(newton)).join('–')
  }
  return (
    'Hold each stop until the scale moves less than 1 N in 5 s, usually 15–30 s: the gas warmed by a step cools with a ' +
    `time constant of ${coolingTimes.join('–')} s (estimate). Held for 5 s, these stops would read ${after(5)} N of ` +
    `friction that is none; held for 20 s, ${after(20)} N.`
  )
}

export const press = [
  calculation({
    name: 'press-test',
    group: 'Bench tests',
    title: 'What a press says of a spring',
    summary:
      'Friction, and which one fault explains the readings: with how far, how sure, and what else explains them.',
    formula: 'readings = F(x) ± F_f; σ² = forceSd² + (dF/dx)²·strokeSd²; BIC = −2·ln L + extra·ln n',
    sources: [
      'Force balance; ideal gas, isothermal',
      'G. Schwarz, Ann. Stat. 6 (1978) 461: BIC',
      'Limits of ΔBIC 6 and of p(χ²) 1e-6: ours, held by drawn forks (docs/soak.md)',
    ],
    range: 'One fault at a time; slow presses, each stop held; strokes up to the end of the unit.',
    input: z.strictObject({
      spring: springField,
      presses: z
        .array(
          z.strictObject({
            pressure: quantity('pressure').optional(),
            readings: z.array(z.strictObject({ stroke: length, pressing: force, releasing: force })).max(200),
          }),
        )
        .max(10),
      forceSd: force,
      strokeSd: length,
      gaugeSd: taken(quantity('fraction'), 0.02),
      ambient: ambientField,
    }),
    output: z.strictObject({
      friction: newtons,
      frictionBand: pair(newtons),
      hypotheses: z.array(
        z.strictObject({
          name: z.enum(['as-sheet', ...faults]),
          estimate: seeUnit.nullable(),
          unit: z.enum(['1', 'm³']).nullable(),
          band: pair(seeUnit).nullable(),
          bic: inUnit('1'),
        }),
      ),
      verdict: z.enum(['as-sheet', ...faults, 'cannot-tell', 'nothing-fits']),
      together: z.array(z.enum(faults)).optional(),
      nextTest: z.literal('second-press-half-pressure').nullable(),
    }),
    example: {
      spring: exampleFork,
      presses: [
        {
          pressure: '88 psi',
          readings: exampleReadings,
        },
      ],
      forceSd: '4 N',
      strokeSd: '0.7 mm',
    },
    run: ({ spring, ...question }) => pressTest(spring, withoutGaps<PressQuestion>(question)),
    assumptions: ({ spring, ...asked }) => {
      const question = withoutGaps<PressQuestion>(asked)
      return [
        ...springAssumptions(spring),
        whyHold(spring, question),
        'Forces along the leg, the scale set to zero with the leg on it; the same stops down and back.',
        ...(spring.kind === 'air'
          ? ['One gauge filled every chamber at every press: its error is one share, the same for all of them.']
          : []),
        'All but the one thing a hypothesis changes is taken as the sheet says. Sheets are off too: on a 35 mm test fork, ' +
          `sound forks (drawn, not measured) looked like up to ${ml(sheetDoubt.chamberOil)} of oil in the chamber, ` +
          `${ml(sheetDoubt.bathOil)} in each bath or ${100 * sheetDoubt.negative} % of the negative pressure. ` +
          'A fault smaller than that may be the sheet’s.',
        'Friction is measured in every hypothesis and judged against its limit; it is never the explanation.',
      ]
    },
  }),
]
