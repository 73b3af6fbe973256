/** Unsent lines as a file: the way out of a tablet whose network does not come back, read in on any other station. */
import { type Delivery, type DeliveryAnswer, delivery, digest } from '@legwork/contract'
import type { Digest, Id } from '@legwork/trade'
import { z } from 'zod'
import { deliveryOf, mostLines } from './delivery.ts'
import type { OutboxLine } from './lines.ts'

const unsentFile = z.strictObject({
  legwork: z.literal('unsent'),
  version: z.literal(1),
  workshop: z.uuid(),
  deliveries: z.array(delivery),
  /** Pictures that its lines or earlier ones name. */
  photos: z.array(z.strictObject({ digest, person: z.uuid(), station: z.uuid(), jpeg: z.base64() })).default([]),
})
export type UnsentFile = z.infer<typeof unsentFile>

/** A browser's `btoa` takes letters, one a byte; all at once they are more than a call takes. */
function base64Of(bytes: Uint8Array): string {
  let letters = ''
  for (let from = 0; from < bytes.length; from += 8192)
    letters += String.fromCharCode(...bytes.subarray(from, from + 8192))
  return btoa(letters)
}

/** The file's text. Lines keep their station and numbers, so that delivering them twice changes nothing. */
export function unsentFileOf(
  workshop: Id,
  station: Id,
  lines: readonly OutboxLine[],
  photos: readonly { digest: Digest; person: Id; bytes: ArrayBuffer }[] = [],
): string {
  const deliveries: Delivery[] = []
  for (let from = 0; from < lines.length; from += mostLines)
    deliveries.push(deliveryOf(station, lines.slice(from, from + mostLines)))
  const pictures = photos.map(({ bytes, ...of }) => ({ ...of, station, jpeg: base64Of(new Uint8Array(bytes)) }))
  const file: UnsentFile = { legwork: 'unsent', version: 1, workshop, deliveries, photos: pictures }
  return JSON.stringify(file, null, 1)
}

export type ReadIn =
  | { ok: true; written: number; already: number; refused: number }
  | { ok: false; because: 'not-ours' | 'other-workshop' }

/** Delivers a file's lines under the number of the station that wrote them. */
export async function readInFile(
  text: string,
  workshop: Id,
  deliver: (delivery: Delivery) => Promise<DeliveryAnswer>,
  deliverPhoto: (of: { digest: Digest; person: Id; station: Id }, bytes: ArrayBuffer) => Promise<void>,
): Promise<ReadIn> {
  let came: unknown
  try {
    came = JSON.parse(text)
  } catch {
    return { ok: false, because: 'not-ours' }
  }
  const file = unsentFile.safeParse(came)
  if (!file.success) return { ok: false, because: 'not-ours' }
  if (file.data.workshop !== workshop) return { ok: false, because: 'other-workshop' }
  const count = { written: 0, already: 0, refused: 0 }
  for (const one of file.data.deliveries) {
    const { results } = await deliver(one)
    for (const { status } of results) count[status] += 1
  }
  for (const { jpeg, ...of } of file.data.photos)
    await deliverPhoto(of, Uint8Array.from(atob(jpeg), (letter) => letter.charCodeAt(0)).buffer)
  return { ok: true, ...count }
}
