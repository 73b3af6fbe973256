/** A source from outside: of a kind that is known, with what its kind must say. */
import type { FieldCheck } from './field-check.ts'
import { sourceKinds } from './sheet-choices.ts'

const names = ['kind', 'document', 'revision', 'page', 'person', 'at', 'instrument']

export function checkSource(check: FieldCheck, value: unknown, field: string): void {
  const found = check.fields(value, field, names)
  if (!found) return
  check.oneOf(found.kind, `${field}.kind`, sourceKinds)
  for (const name of names.slice(1)) check.textOrNull(found[name], `${field}.${name}`)
  if (typeof found.at === 'string') check.instant(found.at, `${field}.at`)
  if (found.kind === 'makers-sheet' && found.document === null)
    check.refuse(`${field}.document`, 'source-document', null, 'the name of the maker’s document')
  if (found.kind !== 'measured-here') return
  for (const name of ['person', 'at'] as const)
    if (found[name] === null)
      check.refuse(`${field}.${name}`, 'source-person', null, 'who measured it here, and when', 'Say who and when.')
}
