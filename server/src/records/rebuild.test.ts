import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../app.ts'
import { everyDatabase, type TestDatabase } from '../store/every-database.ts'
import type { Store } from '../store/store.ts'
import { rebuild } from './rebuild.ts'

describe.each(everyDatabase)('rebuilding on $kind', ({ create }) => {
  let database: TestDatabase
  let store: Store
  let app: FastifyInstance
  beforeAll(async () => {
    database = await create()
    store = await database.open()
    app = await buildApp({ store, clock: () => new Date('2026-06-03T10:00:00Z'), pages: null })
    await app.inject({ method: 'POST', url: '/api/demo', headers: { host: '127.0.0.1' } })
  })
  afterAll(async () => {
    await app.close()
    await store.close()
    await database.drop()
  })

  it('finds what was written with the book as it is worked out from the book', async () => {
    const { differing, rows } = await rebuild(store)
    expect(differing).toEqual({ job_card: 0, oil_used: 0, search_word: 0 })
    // 24 jobs of the paper book and five of today; J25 and J29 have oil in both legs.
    expect(rows).toMatchObject({ job_card: 29, oil_used: 4 })
  })

  it('finds a card that somebody changed, and mends it', async () => {
    await store.write((write) => write.updateTable('job_card').set({ card: '{}' }).where('number', '=', 25).execute())
    expect((await rebuild(store)).differing.job_card).toBe(1)
    expect((await rebuild(store)).differing.job_card).toBe(0)
  })
})
