/** A book added up, as text: what the server's build and the pages' build of the same reduction are compared by. */
import { type JobContext, type Role, reduceJob, type Sheet, type Unit } from '@legwork/trade'

/** What the entries don't say themselves, as plain data. */
export interface PlainContext {
  unit: Unit
  sheet: Sheet
  roles: Record<string, Role>
  now: string
}

/** Sets in order, so that one state has one text. */
const inOrder = (_name: string, value: unknown): unknown => (value instanceof Set ? [...value].sort() : value)

/** @param entries, context  JSON, as they cross a wire */
export function replayed(entries: string, context: string): string {
  const { unit, sheet, roles, now } = JSON.parse(context) as PlainContext // written by the test from that very type
  const sheetAt: JobContext['sheetAt'] = (id, revision) =>
    id === sheet.id && revision === sheet.revision ? sheet : undefined
  const roleOf = (person: string): Role | null => roles[person] ?? null
  return JSON.stringify(reduceJob(JSON.parse(entries), { unit, sheetAt, currentSheet: sheet, roleOf, now }), inOrder)
}
