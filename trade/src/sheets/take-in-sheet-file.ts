/** What reading in a sheet's file does to the sheets that are here: a new sheet, one more revision, or nothing. */
import type { Id } from '../journal/entry.ts'
import { cameAs } from './field-check.ts'
import type { SourceNames } from './file-sources.ts'
import { nextRevision } from './next-revision.ts'
import { type PlacedProblem, readSheetFile } from './read-sheet-file.ts'
import { sameValue } from './same-value.ts'
import type { Sheet } from './sheet.ts'

export type SheetTakenIn =
  | { ok: true; became: 'new' | 'revision' | 'same'; sheet: Sheet }
  | { ok: false; errors: readonly PlacedProblem[] }

export interface SheetsHere {
  /** Every revision of every sheet, oldest first. */
  sheets: readonly Sheet[]
  names: SourceNames
  newId: () => Id
}

/** Whether the newest revision is what this file became when it was read in before: only its revision was counted on. */
function wasReadIn(newest: Sheet, sheet: Sheet): boolean {
  const { revision } = newest
  const counted = revision.startsWith(`${sheet.revision}.`) && /^\d+$/.test(revision.slice(sheet.revision.length + 1))
  return counted && sameValue(newest, { ...sheet, revision })
}

/** All revisions of the sheet that a file is of: by its id, else by its name. */
function revisionsOf(sheets: readonly Sheet[], id: Id | null, name: string): readonly Sheet[] {
  const own = sheets.filter((sheet) => sheet.id === id)
  if (own.length > 0) return own
  const plain = (text: string): string => text.trim().toLocaleLowerCase('en-GB')
  const named = sheets.filter((sheet) => plain(sheet.name) === plain(name)).at(-1)
  return named ? sheets.filter((sheet) => sheet.id === named.id) : []
}

/**
 * The sheet that a file becomes here. Nothing that is here is changed: a revision whose name is taken is counted on.
 *
 * @returns `same` where a revision here says exactly that already; then nothing is to be written
 * @example takeInSheetFile(text, here) // { ok: true, became: 'revision', sheet: { revision: 'C.1', … } }
 */
export function takeInSheetFile(text: string, { sheets, names, newId }: SheetsHere): SheetTakenIn {
  const read = readSheetFile(text, names)
  if (!read.ok) return read
  const revisions = revisionsOf(sheets, read.id, read.sheet.name)
  const newest = revisions.at(-1)
  if (!newest) return { ok: true, became: 'new', sheet: { ...read.sheet, id: read.id ?? newId() } }
  if (newest.kind !== read.sheet.kind) {
    const next = 'Give it a name of its own, and no id.'
    const error = { field: 'kind', code: 'sheet.other-kind', came: cameAs(read.sheet.kind), allowed: newest.kind, next }
    return { ok: false, errors: [{ ...error, ...read.placeOf('kind') }] }
  }
  const sheet: Sheet = { ...read.sheet, id: newest.id }
  const same = revisions.find((one) => sameValue(one, sheet)) ?? (wasReadIn(newest, sheet) ? newest : undefined)
  if (same) return { ok: true, became: 'same', sheet: same }
  const taken = revisions.map(({ revision }) => revision)
  const revision = taken.includes(sheet.revision) ? nextRevision(sheet.revision, taken) : sheet.revision
  return { ok: true, became: 'revision', sheet: { ...sheet, revision } }
}
