/** Every field, answer and choice of every calculation has its own word: nothing on these pages is spelled from code. */
import { calculations, describeCalculation, type SchemaPart } from '@legwork/contract/calculations/index.ts'
import { isWordKey } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import './words.ts'

interface Named {
  name: string
  owner: string
  words: string[]
}

function partsOf(part: SchemaPart): SchemaPart[] {
  const lists = [part.items, part.additionalProperties].filter((one) => typeof one === 'object')
  return [...(part.anyOf ?? []), ...(part.oneOf ?? []), ...(part.prefixItems ?? []), ...lists]
}

/** Names with what they belong to, and the words that may stand there. */
function namesIn(part: SchemaPart, owner: string): Named[] {
  const own = Object.entries(part.properties ?? {}).flatMap(([name, inner]) => [
    { name, owner, words: wordsOf(inner) },
    ...namesIn(inner, name),
  ])
  return [...own, ...partsOf(part).flatMap((inner) => namesIn(inner, owner))]
}

function wordsOf(part: SchemaPart): string[] {
  const here = part.enum ?? (typeof part.const === 'string' ? [part.const] : [])
  const kinds = partsOf(part).flatMap(({ properties }) =>
    properties?.kind?.const === undefined ? [] : [properties.kind.const],
  )
  const inside = part.properties ? [] : partsOf(part).flatMap(wordsOf)
  return [...here, ...kinds, ...inside].map(String)
}

const hasOne = (keys: string[]): boolean => keys.some(isWordKey)
/** Names of standards and units are the same in every language. */
const isData = (word: string): boolean => /^(?:[A-Za-z]?\d|[efghH]\d|D7152|Refutas|m³?$|1$)/.test(word)

describe.each(Object.values(calculations))('$name', (one) => {
  const { schema, answer } = describeCalculation(one)
  const fields = namesIn(schema, one.name)
  const answers = namesIn(answer, one.name).filter(({ name }) => !['units', 'assumptions', 'unit'].includes(name))

  it('has a word for every field', () => {
    const lacking = fields.filter(({ name, owner }) => !hasOne([`calc.field.${owner}.${name}`, `calc.field.${name}`]))
    expect(lacking.map(({ name, owner }) => `${owner}.${name}`)).toEqual([])
  })

  it('has a word for every answer', () => {
    const keys = ({ name, owner }: Named) =>
      ['out', 'field'].flatMap((where) => [`calc.${where}.${owner}.${name}`, `calc.${where}.${name}`])
    expect(answers.filter((named) => !hasOne(keys(named))).map(({ name, owner }) => `${owner}.${name}`)).toEqual([])
  })

  it('has a word for every choice', () => {
    const lacking = [...fields, ...answers].flatMap(({ name, owner, words }) =>
      words.filter(
        (word) =>
          !isData(word) &&
          !hasOne([`calc.choice.${name}.${word}`, `calc.choice.${owner}.${word}`, `calc.choice.${word}`]),
      ),
    )
    expect(lacking).toEqual([])
  })
})
