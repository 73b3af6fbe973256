import 'fake-indexeddb/auto'
import type { DeliveryAnswer, DeliveryResult } from '@legwork/contract'
import type { AnyEntryDraft } from '@legwork/trade'
import { expect, test } from 'vitest'
import { Refused } from '../api/client.ts'
import type { deliveryOf } from './delivery.ts'
import { deliverOnce, type FlusherNeeds, waitBefore } from './flusher.ts'
import type { OutboxLine } from './lines.ts'
import { appendLines, commitChange, type LocalDb, openLocalDb, readEverything } from './local-db.ts'
import { Memory } from './memory.ts'

let made = 0
const fresh = () => openLocalDb(`test-${++made}`)

function draft(n: number): AnyEntryDraft {
  return {
    id: `0196c000-0000-7000-8000-${String(n).padStart(12, '0')}`,
    workshop: 'w',
    stream: 'job:1',
    station: 's',
    stationNo: 0,
    person: 'p',
    madeAt: '2026-05-02T09:00:00.000Z',
    kind: 'noted',
    version: 1,
    seen: 0,
    standing: { mode: 'now' },
    body: { text: 'a'.repeat(64) },
  }
}
const lineOf =
  (n: number) =>
  (stationNo: number): OutboxLine[] => [
    { is: 'entry', stationNo, made: 'offline', texts: [], draft: { ...draft(n), stationNo } },
  ]
const write = (db: LocalDb, n: number) => appendLines(db, lineOf(n), [])
const numbers = async (db: LocalDb) => (await readEverything(db)).outbox.map(({ stationNo }) => stationNo)

/** A server that keeps what it wrote, and can break off after writing, before it answers. */
function server() {
  const written = new Map<string, number>()
  const arrived: number[] = []
  let breaks = false
  return {
    written,
    arrived,
    breakNext: () => {
      breaks = true
    },
    deliver: async (delivery: ReturnType<typeof deliveryOf>): Promise<DeliveryAnswer> => {
      const results = delivery.items.map(({ id, stationNo }): DeliveryResult => {
        const had = written.get(id)
        if (had === undefined) {
          written.set(id, written.size + 1)
          arrived.push(stationNo)
        }
        const status = had === undefined ? 'written' : 'already'
        const seq = written.get(id) ?? null
        return {
          id,
          stationNo,
          status,
          seq,
          receivedAt: '2026-05-02T09:00:01.000Z',
          overtook: null,
          contested: null,
          errors: [],
        }
      })
      if (breaks) {
        breaks = false
        throw new TypeError('network lost')
      }
      return { results, deliveredNo: delivery.items.at(-1)?.stationNo ?? 0 }
    },
  }
}

const needsOf = (db: LocalDb, deliver: FlusherNeeds['deliver']): FlusherNeeds => ({
  station: 's',
  read: (limit) => db.getAll('outbox', undefined, limit),
  commit: (change) => commitChange(db, change),
  deliver,
  photo: async () => null,
  deliverPhoto: async () => undefined,
  now: () => '2026-05-02T09:00:02.000Z',
  sleep: async () => undefined,
})

test('two pages writing at once never give one number twice', async () => {
  const db = await fresh()
  await Promise.all(Array.from({ length: 20 }, (_, n) => write(db, n)))
  expect(await numbers(db)).toEqual(Array.from({ length: 20 }, (_, n) => n + 1))
})

test('lines go out in order and leave the outbox for the book', async () => {
  const db = await fresh()
  for (let n = 0; n < 30; n++) await write(db, n)
  const shop = server()
  expect(await deliverOnce(needsOf(db, shop.deliver))).toEqual({ state: 'sending' })
  expect(shop.arrived).toEqual(Array.from({ length: 30 }, (_, n) => n + 1))
  const { outbox, book } = await readEverything(db)
  expect(outbox).toEqual([])
  expect(book.map(({ seq }) => seq).sort((a, b) => a - b)).toEqual(shop.arrived)
})

test('an answer that got lost is asked for again, and nothing is written twice', async () => {
  const db = await fresh()
  await write(db, 1)
  await write(db, 2)
  const shop = server()
  shop.breakNext()
  expect(await deliverOnce(needsOf(db, shop.deliver))).toEqual({ state: 'waiting', tries: 1 })
  expect(await numbers(db)).toEqual([1, 2])
  await deliverOnce(needsOf(db, shop.deliver))
  expect(shop.arrived).toEqual([1, 2])
  expect(await numbers(db)).toEqual([])
})

test('a store that is opened again goes on with the next number', async () => {
  const db = await fresh()
  await write(db, 1)
  const name = `test-${made}`
  db.close()
  const again = await openLocalDb(name)
  await write(again, 2)
  expect(await numbers(again)).toEqual([1, 2])
})

test('a refused line leaves the outbox and is kept apart, to be read', async () => {
  const db = await fresh()
  await write(db, 1)
  const errors = [
    { field: 'body', code: 'gate.R16', came: 'fill-quarter', allowed: 'Both feet first.', next: 'Right leg first' },
  ]
  const deliver = async (): Promise<DeliveryAnswer> => ({
    results: [
      {
        id: draft(1).id,
        stationNo: 1,
        status: 'refused',
        seq: null,
        receivedAt: null,
        overtook: null,
        contested: null,
        errors,
      },
    ],
    deliveredNo: 1,
  })
  await deliverOnce(needsOf(db, deliver))
  const { outbox, book, refused } = await readEverything(db)
  expect([outbox, book]).toEqual([[], []])
  expect(refused.map((line) => [line.stationNo, line.errors])).toEqual([[1, errors]])
})

test('a line that the server can’t read stays, and is found among its neighbours', async () => {
  const db = await fresh()
  for (const n of [1, 2]) await write(db, n)
  const sizes: number[] = []
  const how = await deliverOnce(
    needsOf(db, async ({ items }) => {
      sizes.push(items.length)
      throw new Refused(400, null)
    }),
  )
  expect([how.state, sizes, await numbers(db)]).toEqual(['stuck', [2, 1], [1, 2]])
})

test('memory shows the server’s order, then what is only here, each entry once', async () => {
  const db = await fresh()
  await write(db, 1)
  const memory = new Memory(await readEverything(db))
  expect(memory.entriesOf('job:1').map(({ seq }) => seq)).toEqual([null])
  // The live line may bring an entry before the answer of its delivery does.
  memory.apply({
    entries: [
      { ...draft(1), kind: 'noted', body: { text: 'a'.repeat(64) }, seq: 7, receivedAt: '2026-05-02T09:00:01.000Z' },
    ],
  })
  expect(memory.entriesOf('job:1').map(({ seq }) => seq)).toEqual([7])
})

test('a place in the shop’s book that came before its answer is still there after a reload', async () => {
  const db = await fresh()
  const taken = {
    ...draft(1),
    kind: 'noted' as const,
    body: { text: 'a'.repeat(64) },
    seq: 7,
    receivedAt: '2026-05-02T09:00:01.000Z',
  }
  await commitChange(db, { entries: [Object.assign({ position: 12 }, taken)] })
  await commitChange(db, { entries: [taken] })
  expect((await readEverything(db)).book).toMatchObject([{ seq: 7, position: 12 }])
})

// 1 s doubled each time, 30 s at most: as `waitBefore` says of itself, worked out by hand
test.each([
  [1, 1000],
  [2, 2000],
  [5, 16_000],
  [6, 30_000],
  [50, 30_000],
])('waits before try %i', (tries, ms) => {
  expect(waitBefore(tries)).toBe(ms)
})
