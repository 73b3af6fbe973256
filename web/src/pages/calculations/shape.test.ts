import { calculations, describeCalculation, runCalculation } from '@legwork/contract/calculations/index.ts'
import { describe, expect, it } from 'vitest'
import { inputOf, isRecord, withValue } from './draft.ts'
import { blank, type GroupShape, type Shape, shapeOf } from './shape.ts'

const shapeFor = (name: string): Shape => {
  const one = calculations[name]
  if (!one) throw new Error(`no calculation ${name}`)
  return shapeOf(describeCalculation(one).schema)
}

function field(shape: Shape, name: string): Shape | undefined {
  return shape.is === 'group' ? shape.fields.find((one) => one.name === name)?.shape : undefined
}

/** Every field of a group, and of the groups in it. */
function allFields({ fields }: GroupShape): string[] {
  return fields.flatMap(({ name, shape }) => [name, ...(shape.is === 'group' ? allFields(shape) : [])])
}

describe('the form of a schema', () => {
  it('knows quantities by their kind, kinds by their word, forms by what they are', () => {
    const sag = shapeFor('sag')
    expect(field(sag, 'load')).toEqual({ is: 'quantity', kind: 'force' })
    expect(field(sag, 'spring')).toMatchObject({
      is: 'kinds',
      by: 'kind',
      options: [{ word: 'air' }, { word: 'coil' }],
    })
    expect(field(shapeFor('shock-load'), 'leverage')).toMatchObject({
      is: 'forms',
      options: [{ is: 'number' }, { is: 'group' }, { is: 'list' }],
    })
    expect(field(shapeFor('side-friction'), 'mu')).toEqual({ is: 'places', of: [{ is: 'number' }, { is: 'number' }] })
    expect(field(shapeFor('due'), 'hoursLeft')).toEqual({ is: 'quantity', kind: 'duration', counts: 'h' })
    expect(shapeFor('fork-load')).toMatchObject({
      ways: [
        ['wheelLoad', 'unsprungMass'],
        ['riderMass', 'frontShare', 'bikeFrontMass'],
      ],
    })
  })

  it.each(Object.values(calculations))('$name: every field has a form', ({ name, example }) => {
    const shape = shapeFor(name)
    if (shape.is !== 'group') throw new Error('an input is a group of fields')
    expect(Object.keys(example).filter((key) => !allFields(shape).includes(key))).toEqual([])
  })

  it.each(Object.values(calculations))(
    '$name: an empty form is refused field by field, not by its form',
    ({ name }) => {
      const answer = runCalculation(name, inputOf(blank(shapeFor(name))))
      if (answer.ok) return
      expect(answer.errors.filter(({ code }) => code === 'unknown-field')).toEqual([])
      // `doubt` has a field of that name.
      const form = name === 'doubt' ? '' : 'input'
      expect(answer.errors.filter(({ field: named }) => named === form)).toEqual([])
    },
  )
})

describe('a draft', () => {
  it('keeps the places of its fields, makes what is missing on the way, takes out what is emptied', () => {
    const draft = { a: 1, b: { c: [1, 2] }, d: 4 }
    expect(JSON.stringify(withValue(draft, ['a'], 5))).toBe('{"a":5,"b":{"c":[1,2]},"d":4}')
    expect(withValue(draft, ['b', 'c', 1], 7)).toEqual({ a: 1, b: { c: [1, 7] }, d: 4 })
    expect(withValue(draft, ['e', 'f'], 'x')).toMatchObject({ e: { f: 'x' } })
    expect(withValue(draft, ['d'], undefined)).toEqual({ a: 1, b: { c: [1, 2] } })
    expect(draft).toEqual({ a: 1, b: { c: [1, 2] }, d: 4 })
  })

  it('sends nothing for a field emptied by hand', () => {
    expect(inputOf({ a: '', b: { c: '', d: 1 }, e: ['', 2] })).toEqual({ b: { d: 1 }, e: ['', 2] })
    expect(isRecord([])).toBe(false)
  })
})
