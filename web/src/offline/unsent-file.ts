/** Unsent lines as a file: the way out of a tablet whose network does not come back, read in on any other station. */
import { type Delivery, type DeliveryAnswer, delivery } from '@legwork/contract'
import type { Id } from '@legwork/trade'
import { z } from 'zod'
import { deliveryOf, mostLines } from './delivery.ts'
import type { OutboxLine } from './lines.ts'

const unsentFile = z.strictObject({
  legwork: z.literal('unsent'),
  version: z.literal(1),
  workshop: z.uuid(),
  deliveries: z.array(delivery),
})
export type UnsentFile = z.infer<typeof unsentFile>

/** The file's text. Lines keep their station and numbers, so that delivering them twice changes nothing. */
export function unsentFileOf(workshop: Id, station: Id, lines: readonly OutboxLine[]): string {
  const deliveries: Delivery[] = []
  for (let from = 0; from < lines.length; from += mostLines)
    deliveries.push(deliveryOf(station, lines.slice(from, from + mostLines)))
  const file: UnsentFile = { legwork: 'unsent', version: 1, workshop, deliveries }
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
  return { ok: true, ...count }
}
