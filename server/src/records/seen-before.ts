/** A number the book has already: the same line again changes nothing, another one under its number is an error. */
import { isDeepStrictEqual } from 'node:util'
import {
  type DeliveryItem,
  type DeliveryResult,
  entryBodies,
  type FieldError,
  liftBody,
  newestVersion,
  registerBodies,
} from '@legwork/contract'
import type { EntryKind, Id } from '@legwork/trade'
import type { Writer } from '../store/store.ts'
import type { Tables } from '../store/tables.ts'
import { entryOf } from './rows.ts'
import { Trouble } from './trouble.ts'

export type EntryItem = Extract<DeliveryItem, { is: 'entry' }>
type RegisterChange = Extract<DeliveryItem, { is: 'register' }>

export const isKind = (kind: string): kind is EntryKind => Object.hasOwn(entryBodies, kind)

/** A result that says nothing but its status. */
export function nothing(item: DeliveryItem, status: DeliveryResult['status']): DeliveryResult {
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

/** As the table gives it back, so that a spelling of zero or a field without a value makes no difference. */
const asKept = (value: unknown): unknown => JSON.parse(JSON.stringify(value))
const alike = (one: unknown, other: unknown): boolean => isDeepStrictEqual(asKept(one), asKept(other))

/** Whatever a person wrote: who, when, about what. */
const written = ({ stream, kind, person, madeAt, standing, seen, clock }: Omit<EntryItem, 'body' | 'is' | 'made'>) => ({
  stream,
  kind,
  person,
  madeAt,
  standing,
  seen,
  clock: clock ?? null,
})

/** An older body and the same body lifted when it was written are one content. */
function sameEntry(row: Tables['entry'], item: EntryItem): boolean {
  if (!isKind(item.kind) || item.version > newestVersion(item.kind)) return false
  const body = entryBodies[item.kind].safeParse(liftBody(item.kind, item.version, item.body))
  const entry = entryOf(row)
  return body.success && alike(written(item), written(entry)) && alike(body.data, entry.body)
}

/** Both are read by today's shape: a field that has come since is in neither or in both. */
function sameChange(row: Tables['register_history'], item: RegisterChange): boolean {
  const shape = registerBodies[item.register]
  const [came, kept] = [shape.safeParse(item.body), shape.safeParse(JSON.parse(row.body))]
  return (
    row.register === item.register &&
    row.person === item.person &&
    came.success &&
    kept.success &&
    alike(came.data, kept.data)
  )
}

async function keptResult(
  write: Writer,
  workshop: Id,
  station: Id,
  item: DeliveryItem,
): Promise<DeliveryResult | null> {
  if (item.is === 'register') {
    const change = await write
      .selectFrom('register_history')
      .selectAll()
      .where('workshop', '=', workshop)
      .where('station', '=', station)
      .where('change_id', '=', item.id)
      .executeTakeFirst()
    return change && sameChange(change, item) ? { ...nothing(item, 'already'), receivedAt: change.changed_at } : null
  }
  const row = await write
    .selectFrom('entry')
    .selectAll()
    .where('workshop', '=', workshop)
    .where('station', '=', station)
    .where('id', '=', item.id)
    .executeTakeFirst()
  return row && row.station_no === item.stationNo && sameEntry(row, item)
    ? { ...nothing(item, 'already'), seq: row.seq, receivedAt: row.received_at }
    : null
}

/**
 * What was answered when this line came first.
 *
 * @throws Trouble 409 where its number was used for something else: another id, another person, time or content
 */
export async function seenBefore(
  write: Writer,
  workshop: Id,
  station: Id,
  item: DeliveryItem,
): Promise<DeliveryResult> {
  const refusal = await write
    .selectFrom('refusal')
    .selectAll()
    .where('station', '=', station)
    .where('station_no', '=', item.stationNo)
    .executeTakeFirst()
  // A refusal was written by `append.ts` as JSON of field errors.
  if (refusal?.id === item.id)
    return { ...nothing(item, 'refused'), errors: JSON.parse(refusal.errors) as FieldError[] }
  const kept = await keptResult(write, workshop, station, item)
  if (kept) return kept
  throw new Trouble(409, 'The number was used for something else', [
    {
      field: 'items.stationNo',
      code: 'delivery.number-used',
      came: String(item.stationNo),
      allowed: 'the item that had this number',
      next: 'Sign the tablet in anew and deliver the unsent lines under its new name.',
    },
  ])
}
