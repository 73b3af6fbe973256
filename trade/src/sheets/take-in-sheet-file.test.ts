import { describe, expect, it } from 'vitest'
import { sheetOfDemo } from '../journal/written-job.ts'
import type { Sheet } from './sheet.ts'
import { writeSheetFile } from './sheet-file.ts'
import { takeInSheetFile } from './take-in-sheet-file.ts'

const names = { person: () => null, instrument: () => null }
const out = { person: () => null, instrument: () => null }
const id = '0190b5a0-0000-7000-8000-00000000000a'
const sheet: Sheet = { ...sheetOfDemo('U01'), id }
const other: Sheet = { ...sheetOfDemo('U02'), id: '0190b5a0-0000-7000-8000-00000000000b' }
const newId = () => '0190b5a0-0000-7000-8000-0000000000ff'
const takeIn = (text: string, sheets: readonly Sheet[]) => takeInSheetFile(text, { sheets, names, newId })
const text = writeSheetFile(sheet, out)

describe('taking in a sheet’s file', () => {
  it('makes a new sheet where none of its id or name is here', () => {
    expect(takeIn(text, [other])).toMatchObject({ ok: true, became: 'new', sheet: { id, revision: 'C' } })
    const nameless = text.replace(/ {2}"id".*\n/, '')
    expect(takeIn(nameless, [other])).toMatchObject({ became: 'new', sheet: { id: newId() } })
  })

  it('writes nothing where it says what is here already, in whatever order', () => {
    const { format, version, ...rest } = JSON.parse(text) as Record<string, unknown> // the text is a file of our own
    const shuffled = JSON.stringify({ ...Object.fromEntries(Object.entries(rest).reverse()), version, format })
    expect(takeIn(shuffled, [sheet, other])).toMatchObject({ ok: true, became: 'same' })
  })

  it('counts a taken revision on, and keeps a free one', () => {
    const changed = text.replace('"25 N·m"', '"24 N·m"')
    expect(takeIn(changed, [sheet])).toMatchObject({ became: 'revision', sheet: { id, revision: 'C.1' } })
    const first = { ...sheet, revision: 'C.1', generic: true }
    expect(takeIn(changed, [sheet, first])).toMatchObject({ sheet: { revision: 'C.2' } })
    expect(takeIn(changed.replace('"revision": "C"', '"revision": "D"'), [sheet])).toMatchObject({
      became: 'revision',
      sheet: { revision: 'D' },
    })
  })

  it('writes nothing when a file is read in a second time, and one more when it goes back to what was before', () => {
    const changed = text.replace('"25 N·m"', '"24 N·m"')
    const first = takeIn(changed, [sheet])
    if (!first.ok) throw new Error('it was refused')
    expect(takeIn(changed, [sheet, first.sheet])).toMatchObject({ became: 'same', sheet: { revision: 'C.1' } })
    const later = { ...sheet, revision: 'C.2', generic: true }
    expect(takeIn(changed, [sheet, first.sheet, later])).toMatchObject({
      became: 'revision',
      sheet: { revision: 'C.3' },
    })
  })

  it('finds the sheet by its name where the file has no id, or an unknown one', () => {
    const changed = text.replace('"25 N·m"', '"24 N·m"')
    for (const file of [changed.replace(/ {2}"id".*\n/, ''), changed.replace(id, newId())])
      expect(takeIn(file.replace('"Q35-150"', '" q35-150"'), [sheet, other])).toMatchObject({
        became: 'revision',
        sheet: { id, revision: 'C.1' },
      })
  })

  it('refuses a sheet of another kind under the same name, on its line', () => {
    const coil = writeSheetFile({ ...sheetOfDemo('U08'), id: newId(), name: 'Q35-150' }, out)
    const taken = takeIn(coil, [sheet])
    const line = coil.split('\n').findIndex((row) => row.startsWith('  "kind"')) + 1
    expect(taken).toMatchObject({ ok: false, errors: [{ code: 'sheet.other-kind', field: 'kind', line }] })
  })

  it('refuses a wrong file and touches nothing', () => {
    expect(takeIn(text.replace('150 mm', '150 m'), [sheet])).toMatchObject({ ok: false })
    expect(sheet).toEqual({ ...sheetOfDemo('U01'), id })
  })
})
