/** Doubt. */
import {
  type DoubtProgress,
  type DoubtResult,
  doubtInSteps as drawInSteps,
  Refusal,
  type RefusedField,
} from '@legwork/engine'
import { z } from 'zod'
import { type Answer, type Calculation, calculation, refusedFields } from './calculation.ts'
import { at, doubtsIn, type Step, sharedOf, stepsOf } from './doubtful-input.ts'
import { exampleFork } from './examples.ts'
import { count, inUnit, si, taken } from './fields.ts'
import { type DoubtedField, inside, questionOf, readDoubts, refuse } from './read-doubts.ts'

const spread = z.strictObject({
  median: inUnit('see unit'),
  low: inUnit('see unit'),
  high: inUnit('see unit'),
  unit: z.string(),
  shares: z.record(z.string(), si('fraction')),
})
const answered = z.object({ refused: si('number') }).catchall(spread)
type Answered = z.output<typeof answered>

const asked = z.strictObject({
  calc: z.string(),
  input: z.record(z.string(), z.unknown()),
  outputs: z.array(z.string().max(100)).min(1).max(20),
  draws: taken(count, 10_000),
  seed: taken(count, 1),
})
type Question = z.output<typeof asked>

/** Unit of one number that came out. */
function unitOf(one: Calculation, path: readonly Step[], answer: unknown): string {
  const named = path.map((step) => (typeof step === 'number' ? '[]' : step))
  const same = Object.entries(one.units).find(([known]) => {
    const steps = known.split(/\.|(?=\[)/)
    return steps.length === named.length && steps.every((step, index) => step === '*' || step === named[index])
  })
  const unit = same?.[1] ?? '1'
  if (unit !== 'see unit') return unit
  const beside = path.map((_, back) => at(answer, [...path.slice(0, path.length - 1 - back), 'unit']))
  return String(beside.find((found) => typeof found === 'string') ?? '1')
}

function checkDraws({ draws = 10_000, seed = 1 }: Question): { draws: number; seed: number } {
  if (!(Number.isInteger(draws) && draws >= 100 && draws <= 100_000)) {
    refuse('draws', 'out-of-range', String(draws), 'a whole number from 100 to 100000', 'Ask for 10000.')
  }
  if (!Number.isSafeInteger(seed)) refuse('seed', 'not-whole', String(seed), 'a whole number', 'Leave it out for 1.')
  return { draws, seed }
}

/** Puts a draw where the doubts stand. */
function placed(question: unknown, doubts: readonly DoubtedField[]): (values: Float64Array) => void {
  const places = doubts.map(({ path }) => {
    // Read from this very path before: it has an owner and a key.
    const owner = at(question, path.slice(0, -1)) as Record<Step, unknown>
    return { owner, key: path.at(-1) ?? '' }
  })
  return (values) => {
    for (let index = 0; index < places.length; index += 1) {
      const place = places[index]
      if (place) place.owner[place.key] = values[index]
    }
  }
}

/** What was drawn, and how it is told. */
interface Doubted {
  readonly output: Answered
  readonly result: DoubtResult
}

/** Draws the doubtful inputs and works the calculation out each time. */
function* work(one: Calculation, question: Question): Generator<DoubtProgress, Doubted, void> {
  const { input, outputs } = question
  const { draws, seed } = checkDraws(question)
  const doubts = readDoubts(one, input)
  const drawn = questionOf(one, input)
  const first = inside(() => one.run(drawn))
  const paths = outputs.map(stepsOf)
  paths.forEach((path, index) => {
    if (typeof at(first, path) === 'number') return
    const allowed = `a path of a number that ${one.name} gives: ${Object.keys(one.units).join(', ')}`
    const came = JSON.stringify(outputs[index])
    refuse(`outputs[${index}]`, 'not-a-choice', came, allowed, 'Write one of these; [] takes a number.')
  })
  const place = placed(drawn, doubts)
  const numbers = new Float64Array(paths.length)
  const result = yield* drawInSteps({
    inputs: doubts.map(({ doubt }) => doubt),
    names: doubts.map(({ name }) => name),
    outputs: paths.length,
    draws,
    seed,
    run(values) {
      place(values)
      try {
        const answer = one.run(drawn)
        for (let index = 0; index < paths.length; index += 1) {
          const number = at(answer, paths[index] ?? [])
          if (typeof number !== 'number') return null
          numbers[index] = number
        }
        return numbers
      } catch (error) {
        if (error instanceof Refusal) return null
        throw error
      }
    },
  })
  const certain = Object.fromEntries(doubts.map(({ name }) => [name, 0]))
  const told = outputs.map((output, index) => {
    const { spread: band, shares = {} } = result.outputs[index] ?? {}
    return [output, { ...band, unit: unitOf(one, paths[index] ?? [], first), shares: { ...certain, ...shares } }]
  })
  // TypeScript has no type for a named field beside others of another type.
  return { output: { ...Object.fromEntries(told), refused: result.refused } as unknown as Answered, result }
}

function asksOf(others: Readonly<Record<string, Calculation>>, question: Question): Calculation {
  const one = Object.hasOwn(others, question.calc) ? others[question.calc] : undefined
  if (one) return one
  const allowed = Object.keys(others).join(', ')
  return refuse('calc', 'unknown-calculation', JSON.stringify(question.calc), allowed, 'Choose one of these.')
}

/** Which fields an error moves together, in words. */
function together(question: Question): string[] {
  const fields = new Map<string, number>()
  for (const doubt of doubtsIn(question.input)) {
    for (const name of Object.keys(sharedOf(doubt))) fields.set(name, (fields.get(name) ?? 0) + 1)
  }
  return [...fields].map(([name, many]) => {
    const moved = many === 1 ? '1 field: it moves by it' : `${many} fields: they move together`
    return `The error “${name}” is one and the same for ${moved}.`
  })
}

/** The calculation that carries doubt through any of the others. */
export function doubtOver(others: Readonly<Record<string, Calculation>>): Calculation {
  return calculation({
    name: 'doubt',
    group: 'Doubt',
    title: 'How sure an answer is',
    summary:
      'Carries the doubt of inputs through any calculation: median, 90 % band, and which input the doubt comes from.',
    formula: 'draws from each input’s distribution; shares Var(E[y|x])/Var(y)',
    sources: ['JCGM 101:2008 (GUM supplement 1)', 'Sobol’ 2001, first-order index'],
    range:
      '{value, u} is normal, with freedom Student’s t; {value, low, high} rectangular, with shape triangular or arcsine, with ends of inexact limits. Fields that name the same error, like shared: {"pump 3": "1 psi"}, move together by it; else inputs are independent.',
    input: asked,
    output: answered,
    example: {
      calc: 'pressure-for-sag',
      input: {
        spring: { ...exampleFork, bore: { value: '32 mm', low: '31.9 mm', high: '32.1 mm' } },
        load: { value: '351 N', u: '10 N' },
        sag: '20 %',
      },
      outputs: ['pressure'],
      draws: 1000,
    },
    run(question) {
      const steps = work(asksOf(others, question), question)
      for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value.output
    },
    assumptions: (question) => [
      ...together(question),
      'All other errors are independent of each other; everything else is taken as exact.',
      'Bands are 90 %. Shares are first-order: what an error explains by itself; they need not add up to 1.',
    ],
  })
}

/** Told while the draws go on, and at their end of every number that was drawn. */
export interface DoubtWatch {
  progress: (done: number, of: number) => void
  drawn: (output: string, numbers: readonly number[]) => void
}

/** What a question in steps comes to: the calculation's answer, and every draw of each output for a picture. */
export type DoubtInSteps = { answer: Answer; drawn: Readonly<Record<string, Float64Array>> }

/** `doubt` in steps: it can be shown how far it is, and stopped by asking for no more. Never throws for a wrong input. */
export function* doubtStepsOver(
  others: Readonly<Record<string, Calculation>>,
  doubt: Calculation,
  input: unknown,
): Generator<DoubtProgress, DoubtInSteps, void> {
  const refused = (errors: readonly RefusedField[]): DoubtInSteps => ({ answer: { ok: false, errors }, drawn: {} })
  const checked = asked.safeParse(input)
  if (!checked.success) return refused(refusedFields(checked.error, input))
  const question = checked.data
  try {
    const { output, result } = yield* work(asksOf(others, question), question)
    const told = { ...output, units: doubt.units, assumptions: doubt.assumptions(question) }
    const drawn = question.outputs.map((name, index) => [name, result.outputs[index]?.values ?? new Float64Array()])
    return { answer: { ok: true, output: told }, drawn: Object.fromEntries(drawn) }
  } catch (error) {
    if (error instanceof Refusal) return refused(error.errors)
    throw error
  }
}
