/** What a station delivers: entries and register lines in its own order, and the texts that entries name by digest. */
import { z } from 'zod'
import { fieldError } from './errors.ts'

export const id = z.uuid()
export const instant = z.iso.datetime({ precision: 3 })
export const digest = z.string().regex(/^[0-9a-f]{64}$/)

/** An entry inside a delivery; `body` is checked by the schema of its kind and version. */
export const entryItem = z.strictObject({
  is: z.literal('entry'),
  /** Whether the station had its line to the server open: a gate refuses only what was made online. */
  made: z.enum(['online', 'offline']),
  id,
  stream: z.string().regex(/^(job|unit):[0-9a-f-]{36}$/),
  stationNo: z.number().int().min(1),
  person: id,
  madeAt: instant,
  /** What the station's monotonic clock showed [ms]; a station older than this field, or without such a clock, has none. */
  clock: z.strictObject({ boot: id, reading: z.number().min(0) }).nullish(),
  kind: z.string(),
  version: z.number().int().min(1),
  seen: z.number().int().min(0),
  standing: z.discriminatedUnion('mode', [
    z.strictObject({ mode: z.literal('now') }),
    z.strictObject({ mode: z.literal('late'), doneAt: instant }),
    z.strictObject({ mode: z.literal('carried-over'), doneAt: instant }),
  ]),
  body: z.unknown(),
})

export const registerItem = z.strictObject({
  is: z.literal('register'),
  made: z.enum(['online', 'offline']),
  /** Of this change, so that delivering it twice changes nothing. */
  id,
  stationNo: z.number().int().min(1),
  person: id,
  madeAt: instant,
  register: z.enum(['people', 'riders', 'bikes', 'units', 'sheets', 'instruments', 'visits']),
  /** The version the station had; 0 for a new line. */
  seenVersion: z.number().int().min(0),
  body: z.unknown(),
})

export const deliveryItem = z.discriminatedUnion('is', [entryItem, registerItem])
export type DeliveryItem = z.infer<typeof deliveryItem>

export const delivery = z.strictObject({
  station: id,
  items: z.array(deliveryItem).min(1).max(200),
  texts: z.array(z.strictObject({ digest, text: z.string().max(10_000) })),
})
export type Delivery = z.infer<typeof delivery>

export const deliveryResult = z.object({
  id,
  stationNo: z.number().int(),
  /** `already`: the same id was here before; nothing changed. `refused`: nothing was written, and the number is used up. */
  status: z.enum(['written', 'already', 'refused']),
  seq: z.number().int().nullable(),
  receivedAt: z.string().nullable(),
  /** A register line written over a version the station had not seen. */
  overtook: z.number().int().nullable(),
  /** The gate that did not hold; the entry is kept, the job stops until a person decides. */
  contested: z.string().nullable(),
  errors: z.array(fieldError),
})
export type DeliveryResult = z.infer<typeof deliveryResult>

export const deliveryAnswer = z.object({
  results: z.array(deliveryResult),
  /** The station's last number the book has; the next expected is one more. */
  deliveredNo: z.number().int(),
})
export type DeliveryAnswer = z.infer<typeof deliveryAnswer>
