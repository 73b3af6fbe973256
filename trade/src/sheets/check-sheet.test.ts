import { describe, expect, it } from 'vitest'
import { demoUnits } from '../demo/units.ts'
import { sheetOfDemo } from '../journal/written-job.ts'
import { checkSheet } from './check-sheet.ts'
import { sheetQuantities } from './sheet-quantities.ts'

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
    ['torques.axle', { value: 120, source }, 'torques.axle.value', 'sheet.number'],
    ['torques.stem', { value: 5, source }, 'torques.stem', 'sheet.unknown-field'],
    ['limits.clearance', { watch: 0.3, fail: 0.2, source }, 'limits.clearance.fail', 'sheet.limit-order'],
    ['limits.clearance', 3, 'limits.clearance', 'sheet.not-an-object'],
    ['limits.clearance', { source }, 'limits.clearance.fail', 'sheet.limit-missing'],
    ['limits.clearance', { watch: '1 mm', source }, 'limits.clearance.watch', 'sheet.number'],
    ['limits.clearance', { watch: 1, source: null }, 'limits.clearance.source', 'sheet.not-an-object'],
    ['limits.clearance', { failBelow: 2, watchBelow: 1, source }, 'limits.clearance.watchBelow', 'sheet.limit-order'],
    ['limits.shine', { watch: 1, fail: 2, source }, 'limits.shine', 'sheet.unknown-field'],
    ['stroke.source', { ...source, at: '2 May' }, 'stroke.source.at', 'sheet.instant'],
    ['stroke.source', { ...source, at: '2026-02-31T09:00:00.000Z' }, 'stroke.source.at', 'sheet.instant'],
    ['revision', 'a revision of more than twenty', 'revision', 'sheet.text'],
  ])('refuses %s = %s', (path, value, field, code) => {
    const check = checkSheet(spoiled(path, value))
    const errors = check.ok ? [] : check.errors
    expect(errors.map((error) => [error.field, error.code])).toContainEqual([field, code])
    const error = errors.find((one) => one.field === field)
    expect(error?.came).not.toBe('')
    expect(error?.allowed).not.toBe('')
    expect(error?.next).not.toBe('')
  })

  it('leaves empty what the maker’s sheet must say', () => {
    for (const path of ['maxPressure', 'freeLength', 'legs.left.bathOil', 'legs.right.footTorque', 'legs.left.washer'])
      expect(checkSheet(spoiled(path, null)).ok, path).toBe(true)
  })

  it('refuses a fork’s fasteners on a shock', () => {
    const check = checkSheet({ ...sheetOfDemo('U10'), torques: { axle: { value: 12, source } } })
    const errors = check.ok ? [] : check.errors
    expect(errors.map((error) => [error.field, error.code])).toEqual([['torques', 'sheet.torques-of-shock']])
  })

  it('refuses what is no object at all', () => {
    for (const value of [null, 7, 'sheet', []]) expect(checkSheet(value)).toMatchObject({ ok: false })
  })
})

/** A sheet on which every place of the table is filled. */
function fullSheet(): unknown {
  let sheet: unknown = sheetOfDemo('U01')
  for (const path of Object.keys(sheetQuantities).filter((one) => one.startsWith('spring.'))) {
    const { low, high } = sheetQuantities[path] ?? { low: 0, high: 0 }
    if (Reflect.get(Reflect.get(Object(sheet), 'spring'), path.slice(7)) === undefined)
      sheet = withPlace(sheet, path, { value: path === 'spring.positiveShaft' ? 0 : (low + high) / 2, source })
  }
  for (const [path, value] of [
    ['clicks.compression', 10],
    ['legs.left.bathOilViscosity', 46e-6],
    ['torques.lowerClamp', 7],
    ['torques.upperClamp', 6],
  ] as const)
    sheet = withPlace(sheet, path, { value, source })
  return sheet
}

function withPlace(sheet: unknown, path: string, value: unknown): unknown {
  const copy = structuredClone(sheet) as Loose // a sheet is an object
  const parts = path.split('.')
  const last = parts.pop() ?? ''
  const at = parts.reduce((here, part) => here[part] as Loose, copy) // the path comes from the table
  at[last] = value
  return copy
}

const places = Object.keys(sheetQuantities).flatMap((path) =>
  path.startsWith('legs.') ? [path.replace('legs.', 'legs.left.'), path.replace('legs.', 'legs.right.')] : [path],
)
const good = (path: string) => sheetQuantities[path.replace(/^legs\.(left|right)\./, 'legs.')] ?? { low: 0, high: 0 }

/** Every kind of wrong value, and the field that must be named. */
const wrongs: readonly [string, (path: string) => unknown, string][] = [
  ['a bare number', (path) => good(path).high, ''],
  ['a bare text', () => '150 mm', ''],
  ['a list', () => [0.1], ''],
  ['no value', () => ({ source }), '.value'],
  ['null as value', () => ({ value: null, source }), '.value'],
  ['a text as value', () => ({ value: '0.1', source }), '.value'],
  ['true as value', () => ({ value: true, source }), '.value'],
  ['not a number', () => ({ value: Number.NaN, source }), '.value'],
  ['infinity', () => ({ value: Number.POSITIVE_INFINITY, source }), '.value'],
  ['a thousand times too much', (path) => ({ value: good(path).high * 1000, source }), '.value'],
  ['a negative value', () => ({ value: -1e-9, source }), '.value'],
  ['a field too many', (path) => ({ value: good(path).high, source, unit: 'mm' }), '.unit'],
  ['no source', (path) => ({ value: good(path).high }), '.source'],
  ['a text as source', (path) => ({ value: good(path).high, source: 'the sheet' }), '.source'],
  ['an unknown source', (path) => ({ value: good(path).high, source: { ...source, kind: 'hearsay' } }), '.source.kind'],
  [
    'a maker’s sheet without its name',
    (path) => ({ value: good(path).high, source: { ...source, document: null } }),
    '.source.document',
  ],
  [
    'measured by nobody',
    (path) => ({
      value: good(path).high,
      source: { ...source, kind: 'measured-here', at: '2026-05-02T09:00:00.000Z' },
    }),
    '.source.person',
  ],
  [
    'measured at no time',
    (path) => ({ value: good(path).high, source: { ...source, kind: 'measured-here', person: 'p' } }),
    '.source.at',
  ],
  ['a page as a number', (path) => ({ value: good(path).high, source: { ...source, page: 4 } }), '.source.page'],
  [
    'an empty document',
    (path) => ({ value: good(path).high, source: { ...source, document: ' ' } }),
    '.source.document',
  ],
  [
    'a source with a field too many',
    (path) => ({ value: good(path).high, source: { ...source, colour: 'red' } }),
    '.source.colour',
  ],
]

describe.each(places)('%s on a sheet', (path) => {
  it('is filled on the sheet that is spoiled, and taken', () => {
    const check = checkSheet(fullSheet())
    expect(check.ok ? [] : check.errors).toEqual([])
    const value = path.split('.').reduce<unknown>((at, part) => Reflect.get(Object(at), part), fullSheet())
    expect(value, path).toMatchObject({ value: expect.any(Number) })
  })

  it.each(wrongs)('is refused by its name with %s', (_what, wrong, under) => {
    const check = checkSheet(withPlace(fullSheet(), path, wrong(path)))
    const errors = check.ok ? [] : check.errors
    const named = errors.find((error) => error.field === `${path}${under}`)
    expect(errors.map((error) => error.field)).toContain(`${path}${under}`)
    expect([named?.came, named?.allowed, named?.next].every(Boolean)).toBe(true)
    // Nothing is blamed that was not spoiled, but what stands beside it in the same chamber.
    const others = errors.filter((error) => !error.field.startsWith(path) && !/^(spring|stanchion)/.test(error.field))
    expect(others).toEqual([])
  })
})
