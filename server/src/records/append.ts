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
import {
  type AnyEntry,
  type AnyEntryDraft,
  checkEntry,
  type Digest,
  type Id,
  photosIn,
  reduceJob,
  type Stream,
} from '@legwork/trade'
import type { Store, Writer } from '../store/store.ts'
import { type JobBook, namedIn, readContext, readJobBook } from './job-book.ts'
import { removePhotos } from './photos.ts'
import { projectJob } from './project-job.ts'
import { projectRegister } from './project-register.ts'
import { writeRegister } from './registers.ts'
import { digestsIn, jobsOf, onlyIn, removedOn, removeTexts } from './removed-rider.ts'
import { rowOf } from './rows.ts'
import { type EntryItem, isKind, nothing, seenBefore } from './seen-before.ts'
import { Trouble } from './trouble.ts'

/** The state of one delivery while it is written. */
interface Writing {
  write: Writer
  workshop: Id
  station: Id
  at: string
  position: number
  books: Map<Stream, JobBook>
}

function wrong(field: string, code: string, came: string, allowed: string, next: string): FieldError {
  return { field, code, came, allowed, next }
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
    const check = checkEntry(reduceJob(book.entries, context), { ...draft, receivedAt: at }, context)
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

const digestsOf = ({ items }: Delivery, stream: Stream): Digest[] =>
  items.flatMap((item) => (item.is === 'entry' && item.stream === stream ? digestsIn(JSON.stringify(item.body)) : []))

/** Words and photos of a removed rider: neither is kept, and a photo that comes later finds that it is gone. */
async function keepAway(writing: Writing, rider: Id, delivery: Delivery, stream: Stream): Promise<void> {
  const { write, workshop, station, at } = writing
  const digests = await onlyIn(write, workshop, await jobsOf(write, workshop, rider), digestsOf(delivery, stream))
  await removeTexts(write, workshop, digests, at)
  const [person] = delivery.items.map((item) => item.person)
  const photos = delivery.items.flatMap((item) =>
    // What was written is of its kind's shape.
    item.is === 'entry' && item.stream === stream ? photosIn(item as unknown as AnyEntry) : [],
  )
  if (person) await removePhotos(write, workshop, [...new Set(photos)], { person, station }, at)
}

/** A gap in the numbers waits, wherever in the delivery it is: nothing of such a delivery is written. */
function refuseGap(items: readonly DeliveryItem[], deliveredNo: number): void {
  let last = deliveredNo
  for (const [index, { stationNo }] of items.entries()) {
    if (stationNo > last + 1)
      throw new Trouble(409, 'Lines are missing before this one', [
        wrong(
          index === 0 ? 'items.stationNo' : `items.${index}.stationNo`,
          'delivery.gap',
          String(stationNo),
          String(last + 1),
          'Deliver the missing lines first.',
        ),
      ])
    last = Math.max(last, stationNo)
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
    refuseGap(delivery.items, deliveredNo)
    const results: DeliveryResult[] = []
    const touched = new Set<Stream>()
    for (const item of delivery.items) {
      if (item.stationNo <= deliveredNo) {
        results.push(await seenBefore(write, workshop, delivery.station, item))
        continue
      }
      const result = await appendItem(writing, item)
      deliveredNo = item.stationNo
      results.push(result)
      if (item.is === 'entry' && result.status === 'written') touched.add(item.stream as Stream) // its pattern says so
    }
    for (const stream of touched) {
      const state = await projectJob(write, workshop, stream, writing.at)
      const rider = state?.opened?.rider ?? null
      // What a station wrote before it heard of the removal comes without its words.
      if (rider !== null && (await removedOn(write, workshop, rider)) !== null)
        await keepAway(writing, rider, delivery, stream)
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
