/** Reading the records. */
import type {
  EntriesAnswer,
  EntryChange,
  JobCard,
  KeptText,
  RegisterChange,
  RegistersAnswer,
  WorkshopLine,
} from '@legwork/contract'
import type { Digest, Id, RegisterName, Registers, Stream } from '@legwork/trade'
import { wordsOf } from '@legwork/trade/words/found-by.ts'
import type { Reader } from '../store/store.ts'
import type { Tables } from '../store/tables.ts'
import { readStream } from './job-book.ts'
import { digestsIn as digestsInBody, goneAt } from './removed-rider.ts'
import { entryOf } from './rows.ts'
import { Trouble } from './trouble.ts'

export function workshopLine(row: Tables['workshop']): WorkshopLine {
  const { id, name, address, phone, terms } = row
  return { id, name, address, phone, terms, demo: row.demo === 1, home: row.home === 1, createdAt: row.created_at }
}

export async function readWorkshops(read: Reader): Promise<WorkshopLine[]> {
  const rows = await read.selectFrom('workshop').selectAll().orderBy('created_at').execute()
  return rows.map(workshopLine)
}

export async function readWorkshop(read: Reader, workshop: Id): Promise<Tables['workshop']> {
  const row = await read.selectFrom('workshop').selectAll().where('id', '=', workshop).executeTakeFirst()
  if (row) return row
  throw new Trouble(404, 'No such workshop', [
    {
      field: 'workshop',
      code: 'workshop.unknown',
      came: workshop,
      allowed: 'a workshop of this server',
      next: 'Ask for the list of workshops.',
    },
  ])
}

/** Every register as it is now; of sheets every revision, because plans rest on old ones. */
export async function readRegisters(read: Reader, workshop: Id): Promise<RegistersAnswer> {
  const shop = await readWorkshop(read, workshop)
  const lines = async (register: RegisterName): Promise<{ version: number; body: never }[]> => {
    const rows =
      register === 'sheets'
        ? await read
            .selectFrom('register_history')
            .select(['version', 'body'])
            .where('workshop', '=', workshop)
            .where('register', '=', 'sheets')
            .orderBy('position')
            .execute()
        : await read
            .selectFrom(register)
            .select(['version', 'body'])
            .where('workshop', '=', workshop)
            .orderBy('id')
            .execute()
    // Bodies were checked by the schema of their register before they were written.
    return rows.map((row) => ({ version: row.version, body: JSON.parse(row.body) as never }))
  }
  const all = {
    people: await lines('people'),
    riders: await lines('riders'),
    bikes: await lines('bikes'),
    units: await lines('units'),
    sheets: await lines('sheets'),
    instruments: await lines('instruments'),
    visits: await lines('visits'),
  } satisfies Record<RegisterName, unknown>
  return { workshop: workshopLine(shop), position: shop.last_position, ...all }
}

/** Texts that entries name, and which texts and photos were removed. */
export async function readTexts(read: Reader, workshop: Id, digests: readonly Digest[]): Promise<KeptText[]> {
  const found: KeptText[] = []
  for (let from = 0; from < digests.length; from += 500) {
    const rows = await read
      .selectFrom('entry_text')
      .selectAll()
      .where('workshop', '=', workshop)
      .where('digest', 'in', digests.slice(from, from + 500))
      .execute()
    for (const row of rows) found.push({ digest: row.digest, text: row.content, removedOn: row.removed_at })
    const gone = await read
      .selectFrom('photo')
      .select(['digest', 'removed_at'])
      .where('workshop', '=', workshop)
      .where('digest', 'in', digests.slice(from, from + 500))
      .where('removed_at', 'is not', null)
      .execute()
    for (const photo of gone) found.push({ digest: photo.digest, text: null, removedOn: photo.removed_at })
  }
  return found
}

function digestsIn(entries: readonly { body: unknown }[]): Digest[] {
  return [...new Set(entries.flatMap((entry) => digestsInBody(JSON.stringify(entry.body))))]
}

/** Entries after a position of the workshop, at most `limit`, with their texts. */
export async function readEntries(read: Reader, workshop: Id, after: number, limit: number): Promise<EntriesAnswer> {
  const rows = await read
    .selectFrom('entry')
    .selectAll()
    .where('workshop', '=', workshop)
    .where('position', '>', after)
    .orderBy('position')
    .limit(limit)
    .execute()
  const entries = rows.map(entryOf)
  const texts = await readTexts(read, workshop, digestsIn(entries))
  const shop = await readWorkshop(read, workshop)
  const position = rows.length < limit ? shop.last_position : (rows.at(-1)?.position ?? after)
  return { entries, texts, position }
}

export async function readStreamEntries(
  read: Reader,
  workshop: Id,
  stream: Stream,
  after: number,
): Promise<EntriesAnswer> {
  const entries = await readStream(read, workshop, stream, after)
  return {
    entries,
    texts: await readTexts(read, workshop, digestsIn(entries)),
    position: entries.at(-1)?.position ?? 0,
  }
}

export async function readJobCards(read: Reader, workshop: Id): Promise<{ jobs: JobCard[]; position: number }> {
  const shop = await readWorkshop(read, workshop)
  const rows = await read
    .selectFrom('job_card')
    .select('card')
    .where('workshop', '=', workshop)
    .orderBy('number', 'desc')
    .execute()
  // Cards were written by the projection.
  return { jobs: rows.map((row) => JSON.parse(row.card) as JobCard), position: shop.last_position }
}

export type Change = { is: 'entry'; change: EntryChange } | { is: 'register'; change: RegisterChange }

async function registerChange(read: Reader, workshop: Id, line: Tables['register_history']): Promise<Change> {
  const { position, version, changed_at } = line
  const body = JSON.parse(line.body)
  const register = line.register as RegisterName // the table checks the name
  const removed = register === 'riders' && body.removedOn === changed_at
  const gone = removed ? { gone: await goneAt(read, workshop, changed_at) } : {}
  return { is: 'register', change: { position, register, version, body, ...gone } }
}

/** What happened after a position, entries and register lines, in order. */
export async function readChanges(read: Reader, workshop: Id, after: number): Promise<Change[]> {
  const { entries, texts } = await readEntries(read, workshop, after, 500)
  const lines = await read
    .selectFrom('register_history')
    .selectAll()
    .where('workshop', '=', workshop)
    .where('position', '>', after)
    .orderBy('position')
    .limit(500)
    .execute()
  const changes: Change[] = [
    ...entries.map((entry): Change => {
      const named = new Set(digestsIn([entry]))
      const own = texts.filter((text) => named.has(text.digest))
      return { is: 'entry', change: { position: entry.position, entry, texts: own } }
    }),
    ...(await Promise.all(lines.map(async (line) => registerChange(read, workshop, line)))),
  ]
  return changes.sort((a, b) => a.change.position - b.change.position).slice(0, 500)
}

export interface Hit {
  kind: 'unit' | 'rider' | 'job'
  id: Id | Stream
  title: string
  detail: string
}

const parsed = <T>(row: { body: string } | undefined): T | null => (row ? (JSON.parse(row.body) as T) : null) // checked when it was written

/** What a found thing is called. */
async function named(read: Reader, workshop: Id, kind: Hit['kind'], id: string): Promise<Hit | null> {
  const line = (register: 'units' | 'riders', of: Id) =>
    read.selectFrom(register).select('body').where('workshop', '=', workshop).where('id', '=', of).executeTakeFirst()
  if (kind === 'unit') {
    const unit = parsed<Registers['units']>(await line('units', id))
    return unit && { kind, id, title: unit.label, detail: unit.description }
  }
  if (kind === 'rider') {
    const rider = parsed<Registers['riders']>(await line('riders', id))
    return rider && { kind, id, title: rider.name, detail: rider.posture ?? '' }
  }
  const row = await read
    .selectFrom('job_card')
    .select('card')
    .where('workshop', '=', workshop)
    .where('stream', '=', id)
    .executeTakeFirst()
  if (!row) return null
  const card = JSON.parse(row.card) as JobCard // the projection wrote it
  const unit = parsed<Registers['units']>(await line('units', card.unit))
  const title = `J${String(card.number).padStart(2, '0')}`
  return { kind, id: card.stream, title, detail: unit ? `${unit.label} ${unit.description}` : '' }
}

/** What every word of the query begins. */
export async function search(read: Reader, workshop: Id, query: string): Promise<Hit[]> {
  const words = wordsOf(query)
  if (words.length === 0) return []
  const found = await Promise.all(
    words.map((word) =>
      read
        .selectFrom('search_word')
        .select(['kind', 'target'])
        .where('workshop', '=', workshop)
        .where('word', 'like', `${word.replaceAll(/[%_]/g, '')}%`)
        .distinct()
        .limit(200)
        .execute(),
    ),
  )
  const [first = [], ...rest] = found
  const hits = first.filter((hit) => rest.every((others) => others.some((other) => other.target === hit.target)))
  const all = await Promise.all(hits.slice(0, 30).map((hit) => named(read, workshop, hit.kind, hit.target)))
  return all.filter((hit) => hit !== null)
}
