/** Doubt. */
import { type Doubtful, drawOf, firstOrderIndex, Refusal, type Spread, seededDraws, spreadOf } from '@legwork/engine'
import { z } from 'zod'
import { type Calculation, calculation, refusedFields } from './calculation.ts'
import { at, doubtful, doubtsIn, plain, stepsOf, textOf, zeroOf } from './doubtful-input.ts'
import { exampleFork } from './examples.ts'
import { count, inUnit, si, taken } from './fields.ts'

const spread = z.strictObject({
  median: inUnit('see unit'),
  low: inUnit('see unit'),
  high: inUnit('see unit'),
  unit: z.string(),
  shares: z.record(z.string(), si('fraction')),
})

const answered = z.object({ refused: si('number') }).catchall(spread)

interface DoubtOut extends Spread {
  unit: string
  shares: Record<string, number>
}

function refuse(field: string, code: string, came: string, allowed: string, next: string): never {
  throw new Refusal([{ field, code, came, allowed, next }])
}

/** The same refusals, seen from outside `input`. */
function inside<T>(work: () => T): T {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    throw new Refusal(error.errors.map((one) => ({ ...one, field: `input.${one.field}` })))
  }
}

function read(one: Calculation, question: unknown): unknown {
  const checked = one.input.safeParse(question)
  if (checked.success) return checked.data
  return inside(() => {
    throw new Refusal(refusedFields(checked.error, question))
  })
}

/** Each doubt of the question with its figures in SI, by path. */
function doubtsOf(one: Calculation, question: unknown): { path: readonly (string | number)[]; doubt: Doubtful }[] {
  const written = doubtsIn(question)
  if (written.length === 0 || written.length > 50) {
    const came = `${written.length} doubtful fields`
    refuse(
      'input',
      'wrong-count',
      came,
      '1 to 50 fields as {value, u} or {value, low, high}',
      'Give the doubt of at least one field.',
    )
  }
  const value = read(
    one,
    plain(question, (doubt) => doubt.value),
  )
  const u = read(
    one,
    plain(question, (doubt) => doubt.u ?? doubt.value),
  )
  const zero = read(
    one,
    plain(question, (doubt) => (doubt.u === undefined ? doubt.value : zeroOf(doubt.u))),
  )
  const low = read(
    one,
    plain(question, (doubt) => doubt.low ?? doubt.value),
  )
  const high = read(
    one,
    plain(question, (doubt) => doubt.high ?? doubt.value),
  )
  return written.map((doubt) => {
    const { path } = doubt
    const figures = {
      value: at(value, path),
      u: at(u, path),
      zero: at(zero, path),
      low: at(low, path),
      high: at(high, path),
    }
    const worked = doubtful(doubt, figures)
    if (worked) return { path, doubt: worked }
    const allowed = 'a quantity with u of 0 or more, or with low no larger than high'
    return refuse(
      `input.${textOf(path)}`,
      'wrong-form',
      JSON.stringify(doubt.value) ?? 'missing',
      allowed,
      'Give the doubt in the same measure.',
    )
  })
}

function set(target: unknown, path: readonly (string | number)[], value: number): void {
  const owner = at(target, path.slice(0, -1))
  const key = path.at(-1)
  if (owner !== null && typeof owner === 'object' && key !== undefined) Reflect.set(owner, key, value)
}

function numbersIn(value: unknown): number {
  if (value === null || typeof value !== 'object') return 1
  return Object.values(value).reduce<number>((sum, inner) => sum + numbersIn(inner), 0)
}

interface Question {
  calc: string
  input: Record<string, unknown>
  outputs: string[]
  draws?: number | undefined
  seed?: number | undefined
}

/** Told while the draws go on, and at their end of every number that was drawn. */
export interface DoubtWatch {
  progress: (done: number, of: number) => void
  drawn: (output: string, numbers: readonly number[]) => void
}

/** Draws the doubtful inputs and works the calculation out each time. */
function work(
  one: Calculation,
  { input, outputs, draws = 10_000, seed = 1 }: Question,
  watch?: DoubtWatch,
): z.output<typeof answered> {
  if (!(Number.isInteger(draws) && draws >= 100 && draws <= 100_000)) {
    refuse('draws', 'out-of-range', String(draws), 'a whole number from 100 to 100000', 'Ask for 10000.')
  }
  if (!Number.isSafeInteger(seed)) refuse('seed', 'not-whole', String(seed), 'a whole number', 'Leave it out for 1.')
  const doubts = doubtsOf(one, input)
  const question = read(
    one,
    plain(input, (doubt) => doubt.value),
  )
  const first = inside(() => one.run(question))
  const paths = outputs.map(stepsOf)
  paths.forEach((path, index) => {
    if (typeof at(first, path) === 'number') return
    const allowed = `a path of a number that ${one.name} gives: ${Object.keys(one.units).join(', ')}`
    refuse(
      `outputs[${index}]`,
      'not-a-choice',
      JSON.stringify(outputs[index]),
      allowed,
      'Write one of these; [] takes a number.',
    )
  })
  if (numbersIn(first) * draws > 5e6) {
    refuse(
      'draws',
      'out-of-range',
      String(draws),
      'fewer, for a calculation with so long an answer',
      'Ask for fewer draws or fewer points.',
    )
  }
  const draw = seededDraws(seed)
  const drawn = doubts.map(() => [] as number[])
  const given = paths.map(() => [] as number[])
  let refused = 0
  for (let round = 0; round < draws; round += 1) {
    if (round % 100 === 0) watch?.progress(round, draws)
    const values = doubts.map(({ doubt }) => drawOf(doubt, draw))
    doubts.forEach(({ path }, index) => {
      set(question, path, values[index] ?? 0)
    })
    try {
      const answer = one.run(question)
      const numbers = paths.map((path) => at(answer, path)).filter((number) => typeof number === 'number')
      if (numbers.length < paths.length) refused += 1
      else {
        values.forEach((value, index) => {
          drawn[index]?.push(value)
        })
        numbers.forEach((number, index) => {
          given[index]?.push(number)
        })
      }
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      refused += 1
    }
    if (refused > draws / 100) {
      const allowed = 'doubts whose draws are answered, but for 1 in 100'
      refuse(
        'input',
        'no-answer',
        `${refused} of ${round + 1} draws refused`,
        allowed,
        'Give smaller doubts, or values further from their limits.',
      )
    }
  }
  const results: Record<string, DoubtOut> = {}
  outputs.forEach((output, index) => {
    const numbers = given[index] ?? []
    watch?.drawn(output, numbers)
    const shares = doubts.map(
      ({ path }, which) => [textOf(path), firstOrderIndex(drawn[which] ?? [], numbers)] as const,
    )
    const unit = one.units[output.replace(/\[\d+\]/g, '[]')] ?? '1'
    results[output] = { ...spreadOf(numbers), unit, shares: Object.fromEntries(shares) }
  })
  // TypeScript has no type for a named field beside others of another type.
  return { ...results, refused } as unknown as z.output<typeof answered>
}

/** The calculation that carries doubt through any of the others. */
export function doubtOver(others: Readonly<Record<string, Calculation>>, watch?: DoubtWatch): Calculation {
  return calculation({
    name: 'doubt',
    group: 'Doubt',
    title: 'How sure an answer is',
    summary:
      'Carries the doubt of inputs through any calculation: median, 90 % band, and which input the doubt comes from.',
    formula: 'draws from each input’s distribution; shares Var(E[y|x])/Var(y)',
    sources: ['JCGM 101:2008 (GUM supplement 1)', 'Sobol’ 2001, first-order index'],
    range: '{value, u} is normal, {value, low, high} rectangular; inputs independent of each other.',
    input: z.strictObject({
      calc: z.string(),
      input: z.record(z.string(), z.unknown()),
      outputs: z.array(z.string().max(100)).min(1).max(20),
      draws: taken(count, 10_000),
      seed: taken(count, 1),
    }),
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
      const one = Object.hasOwn(others, question.calc) ? others[question.calc] : undefined
      if (one) return work(one, question, watch)
      const allowed = Object.keys(others).join(', ')
      return refuse('calc', 'unknown-calculation', JSON.stringify(question.calc), allowed, 'Choose one of these.')
    },
    assumptions: () => [
      'The doubtful inputs are independent of each other; everything else is taken as exact.',
      'Bands are 90 %.',
    ],
  })
}
