/** `doubt` over HTTP: the same answer, and other requests have their turn while it draws. */
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { calculations, runCalculation } from '@legwork/contract/calculations/index.ts'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { buildApp } from '../app.ts'
import { openSqlite } from '../store/sqlite/open-sqlite.ts'
import type { Store } from '../store/store.ts'

const headers = { host: '127.0.0.1:4720' }
let app: FastifyInstance
let store: Store
beforeAll(async () => {
  store = await openSqlite(join(mkdtempSync(join(tmpdir(), 'legwork-calc-')), 'book.sqlite'))
  app = await buildApp({ store, clock: () => new Date('2026-06-03T10:00:00Z'), pages: null })
})
afterAll(async () => {
  await app.close()
  await store.close()
})

const ask = (payload: object) => app.inject({ method: 'POST', url: '/api/calc/doubt', headers, payload })

it('answers as the command line does', async () => {
  const payload = { ...calculations.doubt?.example }
  const answer = runCalculation('doubt', payload)
  expect((await ask(payload)).json()).toEqual(answer.ok ? answer.output : null)
})

it('refuses as the command line does', async () => {
  const answer = await ask({ ...calculations.doubt?.example, outputs: ['nothing'] })
  expect(answer.statusCode).toBe(422)
  expect(answer.json()).toMatchObject({ errors: [{ field: 'outputs[0]', code: 'not-a-choice' }] })
})

it('a long one lets others through', async () => {
  const order: string[] = []
  const long = ask({ ...calculations.doubt?.example, draws: 60_000 }).then(() => order.push('doubt'))
  const short = app.inject({ url: '/healthz', headers }).then(() => order.push('health'))
  await Promise.all([long, short])
  expect(order).toEqual(['health', 'doubt'])
})
