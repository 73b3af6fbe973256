/**
 * Whatever comes in: an answer with finite numbers, or documented refusals; never a throw, never NaN.
 * LEGWORK_PROPERTY_RUNS raises the count: 10,000 objects over all calculations by default.
 */
import { refusalCodes, seededDraws } from '@legwork/engine'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawnQuestion } from './drawn-inputs-for-tests.ts'
import { calculations, runCalculation } from './index.ts'

const names = Object.keys(calculations)
const runs = Math.ceil(Number(process.env.LEGWORK_PROPERTY_RUNS ?? 10_000) / names.length)

const oddNumber = fc.oneof(
  fc.double({ noNaN: false }),
  fc.double({ min: 0, max: 1, noNaN: true }),
  fc.double({ min: 1e-6, max: 1e7, noNaN: true }),
  fc.constantFrom(0, -0, 1, -1, Number.NaN, Number.POSITIVE_INFINITY, 5e-324, 1.7e308, 0.15, 101_325),
)
const oddText = fc.oneof(
  fc
    .tuple(oddNumber, fc.constantFrom('psi', 'mm', 'ml', 'N', '°C', 'bar', '%', 'N·m', 'mm²/s', '°', '', 'cats'))
    .map(([number, measure]) => `${number} ${measure}`),
  fc.constantFrom('1,500 N', '5,5 bar', '1:25:30', '80', '', '1/2 turn', 'NaN psi', '-5 mm', '1e400 m'),
  fc.string({ maxLength: 12 }),
)
const oddValue = fc.oneof(
  { weight: 8, arbitrary: oddNumber },
  { weight: 4, arbitrary: oddText },
  {
    weight: 1,
    arbitrary: fc.constantFrom<unknown>(null, undefined, true, [], {}, [1], { kind: 'air' }, 'coil', 'port'),
  },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 2 }) },
)

interface Change {
  at: number
  how: 'replace' | 'scale' | 'drop' | 'add'
  value: unknown
  factor: number
}
const wildChange = fc.record<Change>({
  at: fc.nat(200),
  how: fc.constantFrom('replace', 'scale', 'scale', 'drop', 'add'),
  value: oddValue,
  factor: fc.oneof(fc.double({ min: 0.3, max: 3, noNaN: true }), fc.constantFrom(0, 1e-9, 1e9, -1, 1e300)),
})
const mildChange = fc.record<Change>({
  at: fc.nat(200),
  how: fc.constant('scale'),
  value: fc.constant(null),
  factor: fc.double({ min: 0.9, max: 1.12, noNaN: true }),
})
/** Sound questions as they are or nearly so; sound ones with one place spoiled, however deep; and several at once. */
const changes = fc.oneof(
  { weight: 5, arbitrary: fc.array(mildChange, { maxLength: 3 }) },
  { weight: 4, arbitrary: wildChange.map((one) => [one]) },
  { weight: 1, arbitrary: fc.array(wildChange, { minLength: 2, maxLength: 4 }) },
)

/** Every place of an object a change can happen at. */
function places(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (value === null || typeof value !== 'object') return []
  const keys: (string | number)[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value)
  return keys.flatMap((key) => [[...path, key], ...places(Reflect.get(value, key), [...path, key])])
}

function apply(input: object, { at, how, value, factor }: Change): void {
  const all = places(input)
  const path = all[at % Math.max(1, all.length)]
  const key = path?.at(-1)
  if (!path || key === undefined) return
  let owner: object = input
  for (const step of path.slice(0, -1)) {
    const next: unknown = Reflect.get(owner, step)
    if (next === null || typeof next !== 'object') return
    owner = next
  }
  const before: unknown = Reflect.get(owner, key)
  if (how === 'drop') Reflect.deleteProperty(owner, key)
  else if (how === 'add') Reflect.set(owner, Array.isArray(owner) ? owner.length : 'stray', value)
  else if (how === 'replace') Reflect.set(owner, key, value)
  else if (typeof before === 'number') Reflect.set(owner, key, before * factor)
  else if (typeof before === 'string')
    Reflect.set(
      owner,
      key,
      before.replace(/^[\d.]+/, (n) => String(Number(n) * factor)),
    )
}

/** A path whose number is not finite, or null. */
function wrongNumber(value: unknown, path = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : path
  if (value === undefined) return path
  if (value === null || typeof value !== 'object') return null
  for (const [key, inner] of Object.entries(value)) {
    const wrong = wrongNumber(inner, `${path}.${key}`)
    if (wrong !== null) return wrong
  }
  return null
}

/** @returns whether it was answered */
function check(name: string, input: unknown): boolean {
  const answer = runCalculation(name, input)
  if (answer.ok) {
    expect(wrongNumber(answer.output)).toBeNull()
    const { units: _units, assumptions: _assumptions, ...output } = answer.output
    expect(calculations[name]?.output.safeParse(output).error).toBeUndefined()
    return true
  }
  expect(answer.errors.length).toBeGreaterThan(0)
  for (const error of answer.errors) {
    expect(Object.keys(refusalCodes)).toContain(error.code)
    for (const text of [error.field, error.came, error.allowed, error.next]) expect(text.length).toBeGreaterThan(0)
  }
  return false
}

describe.each(names)('%s on any input', (name) => {
  it('answers with finite numbers or refuses as documented', { timeout: 600_000 }, () => {
    const example = { ...calculations[name]?.example }
    const seen = { answered: 0, refused: 0 }
    fc.assert(
      fc.property(fc.nat(), changes, (seed, made) => {
        const input = structuredClone(drawnQuestion(name, example, seededDraws(seed)))
        for (const change of made) apply(input, change)
        if (check(name, input)) seen.answered += 1
        else seen.refused += 1
      }),
      { numRuns: runs, seed: 20_260_502 },
    )
    // Were one of them seldom reached, the other would prove little.
    expect(seen.answered).toBeGreaterThan(runs / 4)
    expect(seen.refused).toBeGreaterThan(runs / 5)
  })

  it('takes no object at all for a refusal too', () => {
    for (const odd of [null, undefined, 5, 'x', [], {}]) check(name, odd)
  })
})
