import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { wordsOf } from '@legwork/trade/words/found-by.ts'
import { expect, it } from 'vitest'
import { buildApp } from '../app.ts'
import { openSqlite } from '../store/sqlite/open-sqlite.ts'

it('takes a text into words without accents and capitals', () => {
  expect(wordsOf('Emre Yaldızanlı, ÅSE 35 mm')).toEqual(['emre', 'yaldizanli', 'ase', '35', 'mm'])
})

it('finds a rider, a unit and a job of the demo by the beginnings of words', async () => {
  const store = await openSqlite(join(mkdtempSync(join(tmpdir(), 'legwork-search-')), 'book.sqlite'))
  const app = await buildApp({ store, clock: () => new Date('2026-06-03T10:00:00Z'), pages: null })
  const headers = { host: '127.0.0.1' }
  const { workshop } = (await app.inject({ method: 'POST', url: '/api/demo', headers })).json()
  const hits = async (q: string) =>
    (await app.inject({ url: `/api/workshops/${workshop.id}/search?q=${encodeURIComponent(q)}`, headers })).json().hits
  expect(await hits('yaldi emre')).toMatchObject([{ kind: 'rider', title: 'Emre Yaldizanlı' }])
  expect(await hits('dual')).toMatchObject([{ kind: 'unit', title: 'U07' }])
  expect(await hits('J25')).toMatchObject([{ kind: 'job', title: 'J25' }])
  expect(await hits('nobody')).toEqual([])
  await app.close()
  await store.close()
})
