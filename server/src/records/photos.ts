/** Photos by digest: the same picture is kept once; an erased one does not come back. */
import { createHash } from 'node:crypto'
import { type FieldError, type PhotoCode, photoTrouble } from '@legwork/contract'
import { type Digest, type Id, photoKinds } from '@legwork/trade'
import type { Reader, Store, Writer } from '../store/store.ts'
import { Trouble } from './trouble.ts'

function wrong(
  field: string,
  code: PhotoCode | `${'person' | 'station'}.unknown`,
  came: string,
  allowed: string,
  next: string,
): FieldError {
  return { field, code, came, allowed, next }
}

async function rowOf(read: Reader | Writer, workshop: Id, digest: Digest) {
  return read
    .selectFrom('photo')
    .select(['content', 'removed_at'])
    .where('workshop', '=', workshop)
    .where('digest', '=', digest)
    .executeTakeFirst()
}

function removed(digest: Digest, removedOn: string): Trouble {
  const on = removedOn.slice(0, 10)
  return new Trouble(410, `The photo was removed on ${on}`, [
    wrong('digest', 'photo.removed', digest, 'a photo that was not removed', `It was removed on ${on}, for good.`),
  ])
}

/** Only what the book names is kept: a photo comes after the entry it belongs to. */
async function isNamed(write: Writer, workshop: Id, digest: Digest): Promise<boolean> {
  const entry = await write
    .selectFrom('entry')
    .select('id')
    .where('workshop', '=', workshop)
    .where('kind', 'in', photoKinds)
    .where('body', 'like', `%"${digest}"%`)
    .limit(1)
    .executeTakeFirst()
  return entry !== undefined
}

async function checkHand(write: Writer, workshop: Id, person: Id, station: Id): Promise<void> {
  for (const [field, table, came] of [
    ['person', 'people', person],
    ['station', 'station', station],
  ] as const) {
    const known = await write
      .selectFrom(table)
      .select('id')
      .where('workshop', '=', workshop)
      .where('id', '=', came)
      .executeTakeFirst()
    if (known) continue
    const error = wrong(
      field,
      `${field}.unknown`,
      came,
      `a ${field} of this workshop`,
      `Name a ${field} of this workshop.`,
    )
    throw new Trouble(422, 'The photo is not taken', [error])
  }
}

/**
 * Keeps a photo; the same one again changes nothing.
 *
 * @throws Trouble for bytes that are no plain JPEG, of another digest, that no entry names, or removed before
 */
export async function keepPhoto(
  store: Store,
  of: { workshop: Id; digest: Digest; person: Id; station: Id; bytes: Uint8Array },
  now: Date,
): Promise<{ digest: Digest; kept: 'now' | 'already' }> {
  const { workshop, digest, person, station, bytes } = of
  const trouble = photoTrouble(bytes)
  if (trouble) throw new Trouble(422, 'The photo is not taken', [trouble])
  const own = createHash('sha256').update(bytes).digest('hex')
  if (own !== digest)
    throw new Trouble(422, 'The photo is not taken', [
      wrong('digest', 'photo.digest', digest, own, 'Send the bytes that the digest was made of.'),
    ])
  return store.write(async (write) => {
    const row = await rowOf(write, workshop, digest)
    if (row?.removed_at) throw removed(digest, row.removed_at)
    if (row) return { digest, kept: 'already' }
    if (!(await isNamed(write, workshop, digest)))
      throw new Trouble(422, 'The photo is not taken', [
        wrong('digest', 'photo.unnamed', digest, 'a photo that an entry names', 'Deliver its entry first.'),
      ])
    await checkHand(write, workshop, person, station)
    await write
      .insertInto('photo')
      .values({
        workshop,
        person,
        station,
        digest,
        content: Buffer.from(bytes),
        kept_at: now.toISOString(),
        removed_at: null,
      })
      .execute()
    return { digest, kept: 'now' }
  })
}

/** @throws Trouble where there is none, or it was removed */
export async function readPhoto(read: Reader, workshop: Id, digest: Digest): Promise<Buffer> {
  const row = await rowOf(read, workshop, digest)
  if (row?.removed_at) throw removed(digest, row.removed_at)
  if (!row?.content)
    throw new Trouble(404, 'No such photo', [
      wrong(
        'digest',
        'photo.unknown',
        digest,
        'a photo of this workshop',
        'It may still be on the tablet it was taken with.',
      ),
    ])
  return Buffer.from(row.content)
}

/** The bytes of a photo, or null where it has not come or was removed. */
export async function photoBytesOf(read: Reader, workshop: Id, digest: Digest): Promise<Buffer | null> {
  const row = await rowOf(read, workshop, digest)
  return row?.content ? Buffer.from(row.content) : null
}

/** Takes photos out for good, those too that have not come yet; their digests and the day stay. */
export async function removePhotos(
  write: Writer,
  workshop: Id,
  digests: readonly Digest[],
  hand: { person: Id; station: Id },
  at: string,
): Promise<number> {
  let taken = 0
  for (const digest of digests) {
    const row = await rowOf(write, workshop, digest)
    if (row?.content) {
      taken += 1
      await write
        .updateTable('photo')
        .set({ content: null, removed_at: at })
        .where('workshop', '=', workshop)
        .where('digest', '=', digest)
        .execute()
    }
    if (!row)
      await write
        .insertInto('photo')
        .values({ workshop, ...hand, digest, content: null, kept_at: at, removed_at: at })
        .execute()
  }
  return taken
}
