/** A rider is taken out of the register and the texts of their jobs out of the book; entries and digests stay. */
import { randomBytes } from 'node:crypto'
import { type AnyEntry, type Id, newId, photosIn, type Rider } from '@legwork/trade'
import type { Store } from '../store/store.ts'
import { removePhotos } from './photos.ts'
import { readTexts } from './read.ts'
import { digestsIn, jobsOf, onlyIn, removeTexts } from './removed-rider.ts'
import { Trouble } from './trouble.ts'

/** @returns how many texts and photos were removed */
export async function eraseRider(
  store: Store,
  workshop: Id,
  riderId: Id,
  hand: { person: Id; station: Id },
  now: Date,
): Promise<{ removedOn: string; texts: number; photos: number }> {
  const at = now.toISOString()
  return store.write(async (write) => {
    const row = await write
      .selectFrom('riders')
      .selectAll()
      .where('workshop', '=', workshop)
      .where('id', '=', riderId)
      .executeTakeFirst()
    if (!row)
      throw new Trouble(404, 'No such rider', [
        {
          field: 'rider',
          code: 'rider.unknown',
          came: riderId,
          allowed: 'a rider of this workshop',
          next: 'Look the rider up.',
        },
      ])
    const streams = await jobsOf(write, workshop, riderId)
    const bodies = streams.length
      ? await write
          .selectFrom('entry')
          .select(['kind', 'body'])
          .where('workshop', '=', workshop)
          .where('stream', 'in', streams)
          .execute()
      : []
    const named = [...new Set(bodies.flatMap((entry) => digestsIn(entry.body)))]
    const digests = await onlyIn(write, workshop, streams, named)
    const texts = await readTexts(write, workshop, digests)
    await removeTexts(write, workshop, digests, at)
    const pictures = bodies.flatMap(({ kind, body }) =>
      // The schema of its kind has seen the body.
      photosIn({ kind, body: JSON.parse(body) } as AnyEntry),
    )
    const photos = await removePhotos(write, workshop, [...new Set(pictures)], hand, at)
    const name = `removed on ${at.slice(0, 10)}`
    const blank: Rider = {
      id: riderId,
      name,
      mass: null,
      posture: null,
      frontShare: null,
      hoursPerWeek: null,
      contact: null,
      removedOn: at,
    }
    const body = JSON.stringify(blank)
    const version = row.version + 1
    const shop = await write
      .selectFrom('workshop')
      .select('last_position')
      .where('id', '=', workshop)
      .executeTakeFirstOrThrow()
    const position = shop.last_position + 1
    await write
      .deleteFrom('register_history')
      .where('workshop', '=', workshop)
      .where('register', '=', 'riders')
      .where('id', '=', riderId)
      .execute()
    await write
      .updateTable('riders')
      .set({ name, mass: null, body, version, changed_at: at, ...hand })
      .where('workshop', '=', workshop)
      .where('id', '=', riderId)
      .execute()
    const change = { change_id: newId(now.getTime(), randomBytes(10)), position, body, changed_at: at }
    await write
      .insertInto('register_history')
      .values({ workshop, ...hand, register: 'riders', id: riderId, version, ...change })
      .execute()
    await write
      .deleteFrom('search_word')
      .where('workshop', '=', workshop)
      .where('kind', '=', 'rider')
      .where('target', '=', riderId)
      .execute()
    await write.updateTable('workshop').set({ last_position: position }).where('id', '=', workshop).execute()
    return { removedOn: at, texts: texts.filter((text) => text.text !== null).length, photos }
  })
}
