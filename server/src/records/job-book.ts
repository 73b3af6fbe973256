/** A job's book as the database has it, with what its reduction asks for. */
import type { PlacedEntry } from '@legwork/contract'
import type { Id, JobContext, Person, Sheet, Stream, Unit } from '@legwork/trade'
import type { Reader } from '../store/store.ts'
import { entryOf } from './rows.ts'

export interface JobBook {
  entries: PlacedEntry[]
  context: JobContext
}

/** Reads the entries of one stream in order. */
export async function readStream(read: Reader, workshop: Id, stream: Stream, after = 0): Promise<PlacedEntry[]> {
  const rows = await read
    .selectFrom('entry')
    .selectAll()
    .where('workshop', '=', workshop)
    .where('stream', '=', stream)
    .where('seq', '>', after)
    .orderBy('seq')
    .execute()
  return rows.map(entryOf)
}

/** What a reduction needs beside the entries: the unit, its sheets in every revision, the roles of the people. */
export async function readContext(
  read: Reader,
  workshop: Id,
  unitId: Id | null,
  sheetIds: readonly Id[],
): Promise<JobContext> {
  const unitRow = unitId
    ? await read
        .selectFrom('units')
        .select('body')
        .where('workshop', '=', workshop)
        .where('id', '=', unitId)
        .executeTakeFirst()
    : undefined
  // Bodies of registers were checked by their schema before they were written.
  const unit = unitRow ? (JSON.parse(unitRow.body) as Unit) : null
  const ids = [...new Set([...sheetIds, ...(unit ? [unit.sheet] : [])])]
  const sheetRows = ids.length
    ? await read
        .selectFrom('register_history')
        .select('body')
        .where('workshop', '=', workshop)
        .where('register', '=', 'sheets')
        .where('id', 'in', ids)
        .orderBy('version', 'desc')
        .execute()
    : []
  const sheets = sheetRows.map((row) => JSON.parse(row.body) as Sheet)
  const people = await read.selectFrom('people').select('body').where('workshop', '=', workshop).execute()
  const roles = new Map(
    people.map((row) => {
      const person = JSON.parse(row.body) as Person
      return [person.id, person.role]
    }),
  )
  return {
    unit,
    sheetAt: (id, revision) => sheets.find((sheet) => sheet.id === id && sheet.revision === revision),
    currentSheet: unit ? (sheets.find((sheet) => sheet.id === unit.sheet) ?? null) : null,
    roleOf: (person) => roles.get(person) ?? null,
  }
}

/** Units and sheets that entries name. */
export function namedIn(entries: readonly PlacedEntry[]): { unit: Id | null; sheets: Id[] } {
  let unit: Id | null = null
  const sheets: Id[] = []
  for (const entry of entries) {
    if (entry.kind === 'job-opened') unit = entry.body.unit
    if (entry.kind === 'plan-agreed') sheets.push(entry.body.sheet.id)
  }
  return { unit, sheets }
}

export async function readJobBook(read: Reader, workshop: Id, stream: Stream): Promise<JobBook> {
  const entries = await readStream(read, workshop, stream)
  const named = namedIn(entries)
  return { entries, context: await readContext(read, workshop, named.unit, named.sheets) }
}
