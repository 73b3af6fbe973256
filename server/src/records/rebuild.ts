/** Works every projection out anew from the book and the registers, and says what differed. */
import type { Id, Stream } from '@legwork/trade'
import type { Store, Writer } from '../store/store.ts'
import { projectJob } from './project-job.ts'
import { projectRegister } from './project-register.ts'

const projections = ['job_card', 'oil_used', 'search_word'] as const
type Projection = (typeof projections)[number]

export interface Rebuilt {
  /** Rows that stood there and are worked out otherwise, or not at all. */
  differing: Record<Projection, number>
  rows: Record<Projection, number>
}

async function rowsOf(write: Writer, table: Projection): Promise<string[]> {
  const rows = await write.selectFrom(table).selectAll().execute()
  return rows.map((row) => JSON.stringify(row, Object.keys(row).sort())).sort()
}

async function rebuildWorkshop(write: Writer, workshop: Id): Promise<void> {
  for (const table of projections) await write.deleteFrom(table).where('workshop', '=', workshop).execute()
  for (const register of ['units', 'riders'] as const) {
    const lines = await write.selectFrom(register).select(['body', 'person']).where('workshop', '=', workshop).execute()
    for (const { body, person } of lines)
      await projectRegister(write, workshop, { register, body: JSON.parse(body), person: person ?? '' })
  }
  const jobs = await write
    .selectFrom('entry')
    .select(['stream', 'received_at', 'seq'])
    .where('workshop', '=', workshop)
    .where('stream', 'like', 'job:%')
    .orderBy('stream')
    .orderBy('seq')
    .execute()
  // As of the last line that reached it, as it was worked out then.
  const last = new Map(jobs.map((entry) => [entry.stream, entry.received_at]))
  for (const [stream, at] of last) await projectJob(write, workshop, stream as Stream, at) // its pattern says so
}

/** One transaction: either all of it is worked out anew, or nothing was changed. */
export async function rebuild(store: Store): Promise<Rebuilt> {
  return store.write(async (write) => {
    const before = new Map<Projection, string[]>()
    for (const table of projections) before.set(table, await rowsOf(write, table))
    const workshops = await write.selectFrom('workshop').select('id').execute()
    for (const { id } of workshops) await rebuildWorkshop(write, id)
    const differing = { job_card: 0, oil_used: 0, search_word: 0 }
    const rows = { job_card: 0, oil_used: 0, search_word: 0 }
    for (const table of projections) {
      const after = new Set(await rowsOf(write, table))
      rows[table] = after.size
      const had = before.get(table) ?? []
      const kept = had.filter((row) => after.has(row)).length
      differing[table] = Math.max(had.length, after.size) - kept
    }
    return { differing, rows }
  })
}
