/** An entry as the book has it, with its place in the workshop's one order. */
import type { AnyBookEntry, EntryKind } from '@legwork/trade'
import { z } from 'zod'
import { entryItem, id, instant } from './delivery.ts'
import { entryBodies } from './entries.ts'

export type PlacedEntry = AnyBookEntry & { position: number }

const { stationNo, person, madeAt, clock, version, seen, standing } = entryItem.shape
const head = {
  id,
  workshop: id,
  stream: entryItem.shape.stream,
  station: id,
  stationNo,
  person,
  madeAt,
  receivedAt: instant,
  seq: z.number().int().min(1),
  position: z.number().int().min(0),
  clock,
  version,
  seen,
  standing,
}

// The names are those of the record that the bodies are typed by.
const [first, ...others] = (Object.keys(entryBodies) as EntryKind[]).map((kind) =>
  z.object({ ...head, kind: z.literal(kind), body: entryBodies[kind] }),
)
if (!first) throw new Error('no kind of entry has a schema')

/** By kind, its body in the newest version. */
export const placedEntry = z
  .discriminatedUnion('kind', [first, ...others])
  // `kind` and `body` belong together by the record; the union of objects does not keep that in its type.
  .meta({ id: 'Entry' }) as unknown as z.ZodType<PlacedEntry>
