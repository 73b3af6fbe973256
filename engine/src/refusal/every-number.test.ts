/** Every number that goes in: not a number, infinite, or far outside is refused; nothing comes back that is not finite. */
import { describe, expect, it } from 'vitest'
import * as engine from '../index.ts'
import { soundQuestions } from './questions-for-tests.ts'

function numberPaths(value: unknown, path: string[] = []): string[][] {
  if (typeof value === 'number') return [path]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, inner]) => numberPaths(inner, [...path, key]))
}

function withNumber(question: object, path: readonly string[], number: number): object {
  const copy = structuredClone(question)
  let owner: object = copy
  for (const step of path.slice(0, -1)) {
    const inner: unknown = Reflect.get(owner, step)
    if (inner !== null && typeof inner === 'object') owner = inner
  }
  Reflect.set(owner, path.at(-1) ?? '', number)
  return copy
}

/** Last name of a field with its index: `legs[0].oil` → `oil`, `mu[1]` → `mu[1]`; '' where the number has no name. */
function lastName(path: readonly string[]): string {
  const from = path.findLastIndex((step) => !/^\d+$/.test(step))
  return from < 0
    ? ''
    : path
        .slice(from)
        .map((step, index) => (index === 0 ? step : `[${step}]`))
        .join('')
}

describe.each(soundQuestions)('%s', (_name, run, question) => {
  // Every case hands its function what its own question is a sound example of.
  const ask = (asked: object) => run(asked as never)
  function refusedBy(asked: object): readonly engine.RefusedField[] {
    try {
      ask(asked)
    } catch (trouble) {
      if (trouble instanceof engine.Refusal) return trouble.errors
      throw trouble
    }
    return []
  }

  it('answers the sound question', () => {
    expect(numberPaths(ask(question)).length).toBeGreaterThan(0)
  })

  it.each(numberPaths(question).map((path) => [path.join('.'), path]))('%s', (_path, path) => {
    const own = lastName(path as string[])
    for (const number of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1e12, 1e15]) {
      const errors = refusedBy(withNumber(question, path as string[], number))
      const named = errors.map(({ field }) => field.split('.').at(-1))
      expect(errors.length, `${number}`).toBeGreaterThan(0)
      if (own !== '') expect(named, `${number}`).toContain(own)
      for (const { allowed, next } of errors) expect(`${allowed} ${next}`).not.toMatch(/NaN|Infinity|undefined/)
    }
  })
})

/** Of a spring, a leverage or readings that were checked where they came in; words and draws; measures and messages. */
const takesNoQuestion = [
  ...['fullStroke', 'springElsewhere', 'supposedSpring', 'pressFits', 'sheetDoubt', 'dueDates', 'dueDraws', 'due'],
  ...['doubtAtOnce', 'doubtInSteps', 'normalDraw', 'seededDraws', 'Refusal', 'refusalSentence'],
  ...['parseQuantity', 'formatQuantity', 'figure', 'toSI', 'fromSI'],
]

it('leaves no public function out', () => {
  const asked = soundQuestions.map(([name]) => name.split(/[ ,]/)[0])
  const all = Object.entries(engine).flatMap(([name, value]) => (typeof value === 'function' ? [name] : []))
  expect(all.filter((name) => !asked.includes(name) && !takesNoQuestion.includes(name))).toEqual([])
})
