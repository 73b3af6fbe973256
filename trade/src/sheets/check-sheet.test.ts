import { describe, expect, it } from 'vitest'
import { demoUnits } from '../demo/units.ts'
import { sheetOfDemo } from '../journal/written-job.ts'
import { checkSheet, readSheet, springRanges } from './check-sheet.ts'

type Loose = Record<string, unknown>
/** A deep copy of the demo sheet of U01 with one place changed. */
function spoiled(path: string, value: unknown): unknown {
  const sheet = structuredClone(sheetOfDemo('U01')) as unknown as Loose // to be spoiled
  const parts = path.split('.')
  const last = parts.pop() ?? ''
  let at: Loose = sheet
  for (const part of parts) at = at[part] as Loose // the path is written below for that sheet
  if (value === undefined) delete at[last]
  else at[last] = value
  return sheet
}
const source = structuredClone(sheetOfDemo('U01').stroke.source)

describe('checking a sheet', () => {
  it.each(demoUnits.map((unit) => unit.key))('takes the demo sheet of %s', (key) => {
    const check = checkSheet(sheetOfDemo(key))
    expect(check.ok ? [] : check.errors).toEqual([])
  })

  // Every kind of wrong value, by field and code.
  it.each([
    ['id', '', 'id', 'sheet.text'],
    ['name', 7, 'name', 'sheet.text'],
    ['revision', undefined, 'revision', 'sheet.text'],
    ['generic', 'no', 'generic', 'sheet.flag'],
    ['kind', 'fork', 'kind', 'sheet.choice'],
    ['kind', 'fork-coil', 'springKind', 'sheet.spring-kind'],
    ['body', 'in-line', 'body', 'sheet.body-kind'],
    ['damper', 'magic', 'damper', 'sheet.choice'],
    ['colour', 'red', 'colour', 'sheet.unknown-field'],
    ['stroke', null, 'stroke', 'sheet.not-an-object'],
    ['stroke.value', -0.15, 'stroke.value', 'sheet.number'],
    ['stroke.value', 150, 'stroke.value', 'sheet.number'],
    ['stroke.value', '150', 'stroke.value', 'sheet.number'],
    ['stroke.value', Number.NaN, 'stroke.value', 'sheet.number'],
    ['stroke.source', null, 'stroke.source', 'sheet.not-an-object'],
    ['stroke.source', { ...source, kind: 'hearsay' }, 'stroke.source.kind', 'sheet.choice'],
    ['stroke.source', { ...source, document: null }, 'stroke.source.document', 'sheet.source-document'],
    ['stroke.source', { ...source, kind: 'measured-here' }, 'stroke.source.person', 'sheet.source-person'],
    ['stroke.source', { ...source, page: 4 }, 'stroke.source.page', 'sheet.text'],
    ['spring.bore', { value: 0.036, source }, 'spring.bore.value', 'sheet.bore-over-stanchion'],
    ['spring.shaft', { value: 0.033, source }, 'spring.shaft.value', 'sheet.shaft-over-bore'],
    ['spring.positiveVolume', { value: 1.1e-4, source }, 'spring.positiveVolume.value', 'sheet.chamber-too-short'],
    ['spring.negativeVolume', { value: 31, source }, 'spring.negativeVolume.value', 'sheet.number'],
    ['spring.flavour', { value: 1, source }, 'spring.flavour', 'sheet.unknown-field'],
    ['spacers', { value: 1.5, source }, 'spacers.value', 'sheet.whole-number'],
    ['maxPressure', { value: 140, source }, 'maxPressure.value', 'sheet.number'],
    ['bushings', { a: { value: 0.23, source } }, 'bushings.b', 'sheet.not-an-object'],
    ['clicks', null, 'clicks', 'sheet.not-an-object'],
    ['clicks.rebound', { value: 0, source }, 'clicks.rebound.value', 'sheet.number'],
    ['legs', null, 'legs', 'sheet.legs-missing'],
    ['legs.right', undefined, 'legs.right', 'sheet.not-an-object'],
    ['legs.left.role', 'none', 'legs.left.role', 'sheet.choice'],
    ['legs.left.fixing', 'glue', 'legs.left.fixing', 'sheet.choice'],
    ['legs.left.bathOil', { value: -1e-6, source }, 'legs.left.bathOil.value', 'sheet.number'],
    ['legs.left.washer', { value: '', source }, 'legs.left.washer.value', 'sheet.text'],
    ['legs.left.footTorque', { value: 55, source }, 'legs.left.footTorque.value', 'sheet.number'],
    ['limits.clearance', { watch: 0.3, fail: 0.2, source }, 'limits.clearance.fail', 'sheet.limit-order'],
    ['limits.clearance', 3, 'limits.clearance', 'sheet.not-an-object'],
  ])('refuses %s = %s', (path, value, field, code) => {
    const check = checkSheet(spoiled(path, value))
    const errors = check.ok ? [] : check.errors
    expect(errors.map((error) => [error.field, error.code])).toContainEqual([field, code])
    const error = errors.find((one) => one.field === field)
    expect(error?.came).not.toBe('')
    expect(error?.allowed).not.toBe('')
    expect(error?.next).not.toBe('')
  })

  it('refuses a number of every spring field outside its range, and no other field with it', () => {
    for (const [name, [, high]] of Object.entries(springRanges)) {
      const check = checkSheet(spoiled(`spring.${name}`, { value: high * 1000, source }))
      expect(check.ok ? [] : check.errors.map((error) => error.field), name).toEqual([`spring.${name}.value`])
    }
  })

  it('leaves empty what the maker’s sheet must say', () => {
    for (const path of ['maxPressure', 'freeLength', 'legs.left.bathOil', 'legs.right.footTorque', 'legs.left.washer'])
      expect(checkSheet(spoiled(path, null)).ok, path).toBe(true)
  })

  it('refuses what is no object at all', () => {
    for (const value of [null, 7, 'sheet', []]) expect(checkSheet(value)).toMatchObject({ ok: false })
  })
})

describe('reading a sheet from JSON', () => {
  it('takes what it wrote itself', () => {
    expect(readSheet(JSON.stringify(sheetOfDemo('U04')))).toMatchObject({ ok: true })
  })

  it('names line and field', () => {
    const text = JSON.stringify(spoiled('legs.left.footTorque', { value: 55, source }), null, 2)
    const line = text.split('\n').findIndex((row) => row.includes('"value": 55')) + 1
    expect(line).toBeGreaterThan(100)
    expect(readSheet(text)).toMatchObject({
      ok: false,
      errors: [{ field: 'legs.left.footTorque.value' }],
      lines: [line],
    })
  })

  it('says that a text is no JSON', () => {
    expect(readSheet('{"id": ')).toMatchObject({ ok: false, errors: [{ code: 'sheet.not-json' }] })
  })
})
