import 'fake-indexeddb/auto'
import type { RegisterChange } from '@legwork/contract'
import type { Rider } from '@legwork/trade'
import { expect, it } from 'vitest'
import { runLiveLine } from './live-line.ts'
import { commitChange, commitPhoto, openLocalDb, readEverything } from './local-db.ts'
import { Memory } from './memory.ts'

const rider: Rider = {
  id: '0196c000-0000-7000-8000-000000000001',
  name: 'Mateus',
  mass: 82,
  posture: null,
  frontShare: null,
  hoursPerWeek: null,
  contact: null,
}
const [said, other, picture] = ['a', 'b', 'c'].map((letter) => letter.repeat(64))
if (!said || !other || !picture) throw new Error('no digests')

/** A line to a server that says one thing once it is held. */
function lineThatSays(change: RegisterChange) {
  const heard = new Map<string, (event: { data: string }) => void>()
  return {
    addEventListener(name: string, listener: (event: { data: string }) => void) {
      heard.set(name, listener)
      if (name === 'register') queueMicrotask(() => listener({ data: JSON.stringify(change) }))
    },
    close: () => undefined,
  }
}

it('a tablet that was away lets go of a removed rider’s texts and photos, on its disk too, and keeps the others', async () => {
  const db = await openLocalDb('removed-rider')
  const kept = { register: 'riders', key: `riders/${rider.id}`, version: 1, body: rider } as const
  await commitChange(db, {
    registers: [kept],
    texts: [
      { digest: said, text: 'Mateus calls on Monday', removedOn: null },
      { digest: other, text: 'the wiper is dry', removedOn: null },
    ],
    meta: { position: 7 },
  })
  const photo = { stream: 'job:1', person: 'p', takenAt: '2026-05-02T08:00:00.000Z', width: 4, height: 3 } as const
  await commitPhoto(db, { ...photo, digest: picture, state: 'sent', says: null }, new ArrayBuffer(9))
  const memory = new Memory(await readEverything(db))
  const removedOn = '2026-05-03T08:00:00.000Z'
  const gone = [said, picture].map((digest) => ({ digest, text: null, removedOn }))
  const blank = { ...rider, name: 'removed on 2026-05-03', mass: null, removedOn }
  const stop = new AbortController()
  await new Promise<void>((done) => {
    void runLiveLine(
      {
        workshop: 'w',
        api: {
          entries: async () => ({ entries: [], texts: [], position: 8 }),
          registers: () => Promise.reject(new Error('not asked for: it was filled before')),
          changes: () => '',
          clockOffset: async () => 0,
        },
        position: () => memory.meta.position,
        commit: async (change) => {
          await commitChange(db, change)
          memory.apply(change)
          if (memory.meta.position !== 8) return
          stop.abort()
          done()
        },
        sleep: async () => undefined,
        // Of an EventSource the line uses these two.
        source: () => lineThatSays({ position: 8, register: 'riders', version: 2, body: blank, gone }) as never,
      },
      stop.signal,
      () => undefined,
    )
  })
  const disk = await readEverything(db)
  for (const texts of [disk.texts, [...memory.texts.values()]])
    expect(texts.filter(({ text }) => text !== null).map(({ digest }) => digest)).toEqual([other])
  expect(disk.registers.map(({ body }) => body)).toEqual([blank])
  expect(disk.photos).toEqual([])
  expect(await db.getAllKeys('photoBytes')).toEqual([])
  expect(memory.photos.size).toBe(0)
  db.close()
})
