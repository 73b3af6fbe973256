/** Sends the outbox: in order, one delivery at a time, again and again until the server has answered for every line. */
import type { Delivery, DeliveryAnswer } from '@legwork/contract'
import type { Id, Instant } from '@legwork/trade'
import { Refused } from '../api/client.ts'
import { afterDelivery, deliveryOf, mostLines } from './delivery.ts'
import type { Change, OutboxLine, OwnPhoto } from './lines.ts'

export interface FlusherNeeds {
  station: Id
  /** The first lines of the outbox, as they are on the disk. */
  read: (limit: number) => Promise<readonly OutboxLine[]>
  commit: (change: Change) => Promise<void>
  deliver: (delivery: Delivery) => Promise<DeliveryAnswer>
  /** The first photo that the server lacks, and what hands it over. */
  photo: () => Promise<{ photo: OwnPhoto; bytes: ArrayBuffer } | null>
  deliverPhoto: (photo: OwnPhoto, bytes: ArrayBuffer) => Promise<void>
  now: () => Instant
  /** Waits, or less where `wake` was called. */
  sleep: (ms: number) => Promise<void>
}

/** `stuck`: the server does not take these lines as they are; nothing is lost, a person has to look. */
export type Delivering =
  | { state: 'idle' }
  | { state: 'sending' }
  | { state: 'waiting'; tries: number }
  | { state: 'stuck'; says: string; next: string | null }

const firstWait = 1000
const longestWait = 30_000

/** Waiting time before a further try [ms]: 1 s, doubled each time, 30 s at most. */
export const waitBefore = (tries: number): number => Math.min(longestWait, firstWait * 2 ** Math.max(0, tries - 1))

/** A 4xx other than 408 and 429 does not go away by trying again. */
const isFinal = (error: unknown): error is Refused =>
  error instanceof Refused && error.status >= 400 && error.status < 500 && error.status !== 408 && error.status !== 429

/** Photos go after the lines: an entry is small and matters more, and the server takes no photo that none names. */
async function deliverPhotoOnce(needs: FlusherNeeds): Promise<Delivering> {
  const next = await needs.photo()
  if (!next) return { state: 'idle' }
  const { photo, bytes } = next
  try {
    await needs.deliverPhoto(photo, bytes)
    await needs.commit({ photos: [{ ...photo, state: 'sent' }] })
  } catch (error) {
    if (!isFinal(error)) return { state: 'waiting', tries: 1 }
    // Removed meanwhile: it does not stay here either.
    if (error.status === 410) await needs.commit({ photosGone: [photo.digest] })
    else await needs.commit({ photos: [{ ...photo, state: 'refused', says: error.message }] })
  }
  return { state: 'sending' }
}

/** Delivers the first lines; how it went. A run of lines the server can't read is tried line by line, to find which one it is. */
export async function deliverOnce(needs: FlusherNeeds, limit = mostLines): Promise<Delivering> {
  const lines = await needs.read(limit)
  if (lines.length === 0) return deliverPhotoOnce(needs)
  try {
    const answer = await needs.deliver(deliveryOf(needs.station, lines))
    await needs.commit(afterDelivery(lines, answer, needs.now()))
    return { state: 'sending' }
  } catch (error) {
    if (!isFinal(error)) return { state: 'waiting', tries: 1 }
    if (lines.length > 1) return deliverOnce(needs, 1)
    return { state: 'stuck', says: error.message, next: error.problem?.errors[0]?.next ?? null }
  }
}

/** Runs until it is stopped. Only one page of a station runs it at a time (`leader.ts`). */
export async function runFlusher(
  needs: FlusherNeeds,
  stopped: AbortSignal,
  tell: (how: Delivering) => void,
): Promise<void> {
  let tries = 0
  while (!stopped.aborted) {
    const how = await deliverOnce(needs)
    if (how.state === 'sending') {
      tries = 0
      tell(how)
      continue
    }
    tries = how.state === 'idle' ? 0 : tries + 1
    tell(how.state === 'waiting' ? { state: 'waiting', tries } : how)
    await needs.sleep(how.state === 'idle' ? longestWait : waitBefore(tries))
  }
}
