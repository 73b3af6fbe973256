/** What a station delivers, written in its order: once, in one transaction, refused only where it may be refused. */
import { createHash } from 'node:crypto'
import {
  type Delivery,
  type DeliveryAnswer,
  type DeliveryItem,
  type DeliveryResult,
  entryBodies,
  type FieldError,
  fieldErrors,
  liftBody,
  newestVersion,
  type PlacedEntry,
} from '@legwork/contract'
import { type AnyEntryDraft, checkEntry, type EntryKind, type Id, reduceJob, type Stream } from '@legwork/trade'
import type { Store, Writer } from '../store/store.ts'
import { type JobBook, namedIn, readContext, readJobBook } from './job-book.ts'
import { projectJob } from './project-job.ts'
import { projectRegister } from './project-register.ts'
import { writeRegister } from './registers.ts'
import { entryOf, rowOf } from './rows.ts'
import { Trouble } from './trouble.ts'

type EntryItem = Extract<DeliveryItem, { is: 'entry' }>

/** The state of one delivery while it is written. */
interface Writing {
  write: Writer
  workshop: Id
  station: Id
  at: string
  position: number
  books: Map<Stream, JobBook>
}

const isKind = (kind: string): kind is EntryKind => kind in entryBodies

function nothing(item: DeliveryItem, status: DeliveryResult['status']): DeliveryResult {
  return {
    id: item.id,
    stationNo: item.stationNo,
    status,
    seq: null,
    receivedAt: null,
    overtook: null,
    contested: null,
    errors: [],
  }
}

function wrong(field: string, code: string, came: string, allowed: string, next: string): FieldError {
  return { field, code, came, allowed, next }
}

/** An item whose number the book has already: the same again changes nothing, another content is an error. */
async function seenBefore(writing: Writing, item: DeliveryItem): Promise<DeliveryResult> {
  const { write, workshop, station } = writing
  const refusal = await write
    .selectFrom('refusal')
    .selectAll()
    .where('station', '=', station)
    .where('station_no', '=', item.stationNo)
    .executeTakeFirst()
  // A refusal was written by this module as JSON of field errors.
  if (refusal?.id === item.id)
    return { ...nothing(item, 'refused'), errors: JSON.parse(refusal.errors) as FieldError[] }
  if (item.is === 'register') {
    const change = await write
      .selectFrom('register_history')
      .select('version')
      .where('change_id', '=', item.id)
      .executeTakeFirst()
    if (change) return nothing(item, 'already')
  } else {
    const row = await write
      .selectFrom('entry')
      .selectAll()
      .where('workshop', '=', workshop)
      .where('id', '=', item.id)
      .executeTakeFirst()
    if (row && row.station_no === item.stationNo && sameContent(entryOf(row), item))
      return { ...nothing(item, 'already'), seq: row.seq, receivedAt: row.received_at }
  }
  throw new Trouble(409, 'The number was used for something else', [
    wrong(
      'items.stationNo',
      'delivery.number-used',
      String(item.stationNo),
      'the item that had this number',
      'Sign the tablet in anew and deliver the unsent lines under its new name.',
    ),
  ])
}

function sameContent(entry: PlacedEntry, item: EntryItem): boolean {
  return (
    entry.stream === item.stream &&
    entry.kind === item.kind &&
    JSON.stringify(entry.body) === JSON.stringify(sorted(entry.body, item.body))
  )
}

/** The item's body with its keys in the stored order, so that two spellings of one body compare equal. */
function sorted(like: unknown, body: unknown): unknown {
  if (Array.isArray(like) && Array.isArray(body)) return body.map((value, index) => sorted(like[index], value))
  if (typeof like !== 'object' || like === null || typeof body !== 'object' || body === null) return body
  const keys = [...new Set([...Object.keys(like), ...Object.keys(body)])]
  return Object.fromEntries(
    keys.filter((key) => key in body).map((key) => [key, sorted(Reflect.get(like, key), Reflect.get(body, key))]),
  )
}

async function bookOf(writing: Writing, stream: Stream): Promise<JobBook> {
  const known = writing.books.get(stream)
  if (known) return known
  const read = await readJobBook(writing.write, writing.workshop, stream)
  writing.books.set(stream, read)
  return read
}

async function refuse(writing: Writing, item: DeliveryItem, errors: FieldError[]): Promise<DeliveryResult> {
  const { write, workshop, station, at } = writing
  await write
    .insertInto('refusal')
    .values({
      workshop,
      station,
      person: item.person,
      id: item.id,
      station_no: item.stationNo,
      errors: JSON.stringify(errors),
      refused_at: at,
    })
    .execute()
  return { ...nothing(item, 'refused'), errors }
}

/** Checks the shape of an entry by the schema of its kind. */
function draftOf(writing: Writing, item: EntryItem): { draft: AnyEntryDraft } | { errors: FieldError[] } {
  if (!isKind(item.kind))
    return {
      errors: [
        wrong(
          'kind',
          'entry.kind-unknown',
          item.kind,
          Object.keys(entryBodies).join(', '),
          'Bring server and tablet to one version.',
        ),
      ],
    }
  const newest = newestVersion(item.kind)
  if (item.version > newest)
    return {
      errors: [
        wrong(
          'version',
          'entry.version-unknown',
          String(item.version),
          `1 to ${newest}`,
          'Bring the server to the tablet’s version.',
        ),
      ],
    }
  // An old tablet's body is checked and kept as the newest version has it.
  const lifted = liftBody(item.kind, item.version, item.body)
  const body = entryBodies[item.kind].safeParse(lifted)
  if (!body.success) return { errors: fieldErrors(body.error, lifted, 'body') }
  const { is: _is, made: _made, ...line } = item
  // The schema of the kind has checked the body, the delivery's schema the rest.
  return {
    draft: {
      ...line,
      version: newest,
      workshop: writing.workshop,
      station: writing.station,
      body: body.data,
    } as AnyEntryDraft,
  }
}

async function appendEntry(writing: Writing, item: EntryItem): Promise<DeliveryResult> {
  const shaped = draftOf(writing, item)
  if ('errors' in shaped) return refuse(writing, item, shaped.errors)
  const { draft } = shaped
  const { write, workshop, station, at } = writing
  const person = await write
    .selectFrom('people')
    .select('id')
    .where('workshop', '=', workshop)
    .where('id', '=', item.person)
    .executeTakeFirst()
  if (!person)
    return refuse(writing, item, [
      wrong('person', 'entry.person-unknown', item.person, 'a person of this workshop', 'Choose who has hands on it.'),
    ])
  const taken = await write.selectFrom('entry').select('id').where('id', '=', item.id).executeTakeFirst()
  if (taken)
    return refuse(writing, item, [
      wrong('id', 'entry.id-reused', item.id, 'a new id for a new entry', 'Write it again; it gets an id of its own.'),
    ])
  const book = await bookOf(writing, draft.stream)
  if (draft.kind === 'job-opened') book.context = await readContext(write, workshop, draft.body.unit, [])
  if (draft.kind === 'plan-agreed')
    book.context = await readContext(write, workshop, book.context.unit?.id ?? null, [
      ...namedIn(book.entries).sheets,
      draft.body.sheet.id,
    ])
  if (item.made === 'online' && draft.standing.mode !== 'carried-over' && draft.stream.startsWith('job:')) {
    const context = { ...book.context, now: at, by: draft.person }
    const check = checkEntry(reduceJob(book.entries, context), draft, context)
    if (!check.ok) return refuse(writing, item, [wrong(check.field, check.code, check.came, check.allowed, check.next)])
  }
  const head = book.entries.at(-1)?.seq ?? 0
  if (head === 0)
    await write
      .insertInto('stream')
      .values({ workshop, station, person: item.person, id: draft.stream, head_seq: 1, created_at: at })
      .execute()
  else
    await write
      .updateTable('stream')
      .set({ head_seq: head + 1 })
      .where('workshop', '=', workshop)
      .where('id', '=', draft.stream)
      .execute()
  writing.position += 1
  const entry: PlacedEntry = { ...draft, receivedAt: at, seq: head + 1, position: writing.position }
  await write.insertInto('entry').values(rowOf(entry)).execute()
  book.entries.push(entry)
  return { ...nothing(item, 'written'), seq: entry.seq, receivedAt: at }
}

async function appendItem(writing: Writing, item: DeliveryItem): Promise<DeliveryResult> {
  if (item.is === 'entry') return appendEntry(writing, item)
  const { write, workshop, station, at } = writing
  const outcome = await writeRegister(write, item, {
    workshop,
    station,
    person: item.person,
    at,
    position: writing.position + 1,
  })
  if (outcome.status === 'refused') return refuse(writing, item, outcome.errors)
  writing.position += 1
  // Its line may be what a job's reduction rests on.
  writing.books.clear()
  await projectRegister(write, workshop, item)
  return { ...nothing(item, 'written'), receivedAt: at, overtook: outcome.overtook }
}

async function keepTexts(writing: Writing, texts: Delivery['texts'], person: Id): Promise<void> {
  const { write, workshop, station, at } = writing
  for (const { digest, text } of texts) {
    const real = createHash('sha256').update(text).digest('hex')
    if (real !== digest)
      throw new Trouble(422, 'A text does not belong to its digest', [
        wrong('texts.digest', 'text.digest-wrong', digest, real, 'Send the SHA-256 of the text’s UTF-8 bytes.'),
      ])
    await write
      .insertInto('entry_text')
      .values({ workshop, station, person, digest, content: text, kept_at: at, removed_at: null })
      .onConflict((conflict) => conflict.columns(['workshop', 'digest']).doNothing())
      .execute()
  }
}

/**
 * Writes a delivery.
 *
 * @param now  the server's clock
 * @returns one result an item, and the last number the book has of this station
 * @throws Trouble 404 for a workshop or station that is not here, 409 for a gap in the numbers or a number used otherwise
 */
export async function append(store: Store, workshop: Id, delivery: Delivery, now: Date): Promise<DeliveryAnswer> {
  return store.write(async (write) => {
    const lock = write.selectFrom('workshop').select('last_position').where('id', '=', workshop)
    const shop = await (store.kind === 'postgres' ? lock.forUpdate() : lock).executeTakeFirst()
    if (!shop)
      throw new Trouble(404, 'No such workshop', [
        wrong('workshop', 'workshop.unknown', workshop, 'a workshop of this server', 'Ask for the list of workshops.'),
      ])
    const station = await write
      .selectFrom('station')
      .select('delivered_no')
      .where('id', '=', delivery.station)
      .where('workshop', '=', workshop)
      .executeTakeFirst()
    if (!station)
      throw new Trouble(404, 'No such station', [
        wrong(
          'station',
          'station.unknown',
          delivery.station,
          'a station signed in to this workshop',
          'Sign the station in first.',
        ),
      ])
    const writing: Writing = {
      write,
      workshop,
      station: delivery.station,
      at: now.toISOString(),
      position: shop.last_position,
      books: new Map(),
    }
    const first = delivery.items[0]
    if (first) await keepTexts(writing, delivery.texts, first.person)
    let deliveredNo = station.delivered_no
    const results: DeliveryResult[] = []
    const touched = new Set<Stream>()
    for (const item of delivery.items) {
      if (item.stationNo > deliveredNo + 1) {
        if (results.length > 0) break
        throw new Trouble(409, 'Lines are missing before this one', [
          wrong(
            'items.stationNo',
            'delivery.gap',
            String(item.stationNo),
            String(deliveredNo + 1),
            'Deliver the missing lines first.',
          ),
        ])
      }
      if (item.stationNo <= deliveredNo) {
        results.push(await seenBefore(writing, item))
        continue
      }
      const result = await appendItem(writing, item)
      deliveredNo = item.stationNo
      results.push(result)
      if (item.is === 'entry' && result.status === 'written') touched.add(item.stream as Stream) // its pattern says so
    }
    for (const stream of touched) {
      const state = await projectJob(write, workshop, stream, writing.at)
      for (const result of results) {
        const contested = state?.contested.find((one) => one.entry === result.id)
        if (contested) result.contested = contested.gate ?? 'order'
      }
    }
    await write.updateTable('workshop').set({ last_position: writing.position }).where('id', '=', workshop).execute()
    await write.updateTable('station').set({ delivered_no: deliveredNo }).where('id', '=', delivery.station).execute()
    return { results, deliveredNo }
  })
}
