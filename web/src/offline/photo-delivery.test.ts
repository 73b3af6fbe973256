import 'fake-indexeddb/auto'
import type { AnyEntryDraft } from '@legwork/trade'
import { expect, test } from 'vitest'
import { Refused } from '../api/client.ts'
import { deliverOnce, type FlusherNeeds } from './flusher.ts'
import type { OwnPhoto } from './lines.ts'
import { appendLines, commitChange, commitPhoto, type LocalDb, openLocalDb, readEverything } from './local-db.ts'
import { Memory } from './memory.ts'
import { readInFile, unsentFileOf } from './unsent-file.ts'

let made = 0
const digest = 'd'.repeat(64)
const photo: OwnPhoto = {
  digest,
  stream: 'job:1',
  person: 'p',
  takenAt: '2026-05-02T09:00:00.000Z',
  width: 2,
  height: 1,
  state: 'kept',
  says: null,
}
const draft: AnyEntryDraft = {
  id: '0196c000-0000-7000-8000-000000000001',
  workshop: 'w',
  stream: 'job:1',
  station: 's',
  stationNo: 0,
  person: 'p',
  madeAt: '2026-05-02T09:00:00.000Z',
  kind: 'snapshot-kept',
  version: 1,
  seen: 0,
  standing: { mode: 'now' },
  body: { item: 'photos', reading: null, photos: [digest], notKnownBecause: null },
}

/** A station with one photo, and the entry that names it where `named`. */
async function station(named: boolean): Promise<LocalDb> {
  const db = await openLocalDb(`photos-${++made}`)
  await commitPhoto(db, photo, new Uint8Array([1, 2, 3]).buffer)
  if (named)
    await appendLines(
      db,
      (stationNo) => [{ is: 'entry', stationNo, made: 'offline', texts: [], draft: { ...draft, stationNo } }],
      [],
    )
  return db
}

const needs = (db: LocalDb, deliverPhoto: FlusherNeeds['deliverPhoto'], sent: string[] = []): FlusherNeeds => ({
  station: 's',
  read: (limit) => db.getAll('outbox', undefined, limit),
  commit: (change) => commitChange(db, change),
  deliver: async ({ items }) => {
    sent.push('line')
    const result = { status: 'written', seq: 1, receivedAt: draft.madeAt, overtook: null, contested: null } as const
    return { results: items.map(({ id, stationNo }) => ({ id, stationNo, ...result, errors: [] })), deliveredNo: 1 }
  },
  photo: async () => {
    const [next] = new Memory(await readEverything(db)).unsentPhotos
    const bytes = next && (await db.get('photoBytes', next.digest))
    return next && bytes ? { photo: next, bytes } : null
  },
  deliverPhoto,
  now: () => draft.madeAt,
  sleep: async () => undefined,
})
const photosOf = async (db: LocalDb) => (await readEverything(db)).photos.map(({ state, says }) => [state, says])

test('the line goes first, then its photo, byte for byte', async () => {
  const db = await station(true)
  const sent: string[] = []
  const asked = needs(db, async (_photo, bytes) => void sent.push(`photo ${new Uint8Array(bytes).join()}`), sent)
  for (let turn = 0; turn < 3; turn++) await deliverOnce(asked)
  expect(sent).toEqual(['line', 'photo 1,2,3'])
  expect(await photosOf(db)).toEqual([['sent', null]])
})

test('an answer that got lost: the photo is sent again', async () => {
  const db = await station(true)
  let tries = 0
  const asked = needs(db, async () => {
    tries += 1
    if (tries === 1) throw new TypeError('network lost')
  })
  await deliverOnce(asked)
  expect(await deliverOnce(asked)).toEqual({ state: 'waiting', tries: 1 })
  expect(await photosOf(db)).toEqual([['kept', null]])
  await deliverOnce(asked)
  expect([tries, await photosOf(db)]).toEqual([2, [['sent', null]]])
})

test('a photo that no entry names is not sent', async () => {
  const asked = needs(await station(false), async () => {
    throw new Error('sent')
  })
  expect(await deliverOnce(asked)).toEqual({ state: 'idle' })
})

test.each([
  [422, 'refused', [['refused', 'too large']]],
  [410, 'removed meanwhile', []],
])('%i: %s', async (status, _what, left) => {
  const db = await station(true)
  const problem = { type: 'about:blank', title: 'no', status, detail: 'too large', errors: [] }
  const asked = needs(db, async () => {
    throw new Refused(status, problem)
  })
  await deliverOnce(asked)
  await deliverOnce(asked)
  expect(await photosOf(db)).toEqual(left)
  expect((await db.getAllKeys('photoBytes')).length).toBe(left.length)
})

test('a photo goes into the file of unsent lines and comes out byte for byte', async () => {
  const shop = '0196c000-0000-7000-8000-00000000000a'
  const person = '0196c000-0000-7000-8000-00000000000b'
  const station = '0196c000-0000-7000-8000-00000000000c'
  const bytes = Uint8Array.from({ length: 20_000 }, (_, n) => (n * 7) % 256).buffer
  const text = unsentFileOf(shop, station, [], [{ digest, person, bytes }])
  const came: unknown[] = []
  const read = await readInFile(
    text,
    shop,
    () => Promise.reject(new Error('no line in it')),
    async (of, jpeg) => void came.push(of, new Uint8Array(jpeg)),
  )
  expect(read.ok).toBe(true)
  expect(came).toEqual([{ digest, person, station }, new Uint8Array(bytes)])
})
