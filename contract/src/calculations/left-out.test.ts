/** What a schema says is taken for a field left out is what is taken. */
import { describe, expect, it } from 'vitest'
import { calculations, describeCalculation, runCalculation } from './index.ts'
import type { SchemaPart } from './units-of.ts'

interface Default {
  path: (string | number)[]
  instead: unknown
}

function partFor(part: SchemaPart, value: object): SchemaPart {
  const choices = [...(part.oneOf ?? []), ...(part.anyOf ?? [])].filter(({ properties }) => properties)
  return choices.find(({ properties }) => properties?.kind?.const === Reflect.get(value, 'kind')) ?? part
}

/** Every field with a default in the objects that an input has. */
function defaultsIn(part: SchemaPart, value: unknown, path: Default['path'] = []): Default[] {
  if (Array.isArray(value)) {
    const { items } = part
    return typeof items === 'object' ? value.flatMap((one, index) => defaultsIn(items, one, [...path, index])) : []
  }
  if (value === null || typeof value !== 'object') return []
  return Object.entries(partFor(part, value).properties ?? {}).flatMap(([key, inner]) => [
    ...('default' in inner ? [{ path: [...path, key], instead: inner.default }] : []),
    ...defaultsIn(inner, Reflect.get(value, key), [...path, key]),
  ])
}

function withField(input: unknown, path: Default['path'], write: (owner: object, key: string | number) => void) {
  const copy: unknown = structuredClone(input)
  let owner: unknown = copy
  for (const step of path.slice(0, -1)) owner = owner && typeof owner === 'object' ? Reflect.get(owner, step) : owner
  const key = path.at(-1)
  if (owner && typeof owner === 'object' && key !== undefined) write(owner, key)
  return copy
}

/** The answer's numbers; its sentences may say that something was taken. */
function outputOf(name: string, input: unknown): unknown {
  const answer = runCalculation(name, input)
  return answer.ok ? { ...answer.output, assumptions: null } : answer.errors
}

const cases = Object.values(calculations).flatMap((one) =>
  defaultsIn(describeCalculation(one).schema, one.example).map((found) => ({
    name: one.name,
    field: found.path.join('.'),
    ...found,
  })),
)

describe('a field left out', () => {
  it('is told of in many places', () => expect(cases.length).toBeGreaterThan(60))

  it.each(cases)('$name, $field', ({ name, path, instead }) => {
    const example = calculations[name]?.example
    const without = withField(example, path, (owner, key) => Reflect.deleteProperty(owner, key))
    const given = withField(example, path, (owner, key) => Reflect.set(owner, key, instead))
    expect(outputOf(name, given)).toEqual(outputOf(name, without))
  })
})
