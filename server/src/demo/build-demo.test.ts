import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { JobCard } from '@legwork/contract'
import { expect, it } from 'vitest'
import { buildApp } from '../app.ts'
import { openSqlite } from '../store/sqlite/open-sqlite.ts'

const now = new Date('2026-06-03T10:00:00Z')

it('makes the demo workshop through the API: 24 jobs of the paper book, five of today', async () => {
  const store = await openSqlite(join(mkdtempSync(join(tmpdir(), 'legwork-demo-test-')), 'book.sqlite'))
  const app = await buildApp({ store, clock: () => now, pages: null })
  const headers = { host: '127.0.0.1' }
  const made = await app.inject({ method: 'POST', url: '/api/demo', headers })
  expect(made.statusCode).toBe(200)
  const { workshop } = made.json()
  const again = await app.inject({ method: 'POST', url: '/api/demo', headers })
  expect(again.json().workshop.id).toBe(workshop.id)
  const answer = await app.inject({ url: `/api/workshops/${workshop.id}/jobs`, headers })
  const jobs: JobCard[] = answer.json().jobs
  expect(jobs).toHaveLength(29)
  expect(jobs.filter((job) => job.carriedOver)).toHaveLength(24)
  expect(jobs.every((job) => job.contested === 0)).toBe(true)
  // The paper book's J04: the crown moves, so the unit is not rebuilt.
  expect(jobs.find((job) => job.number === 4)).toMatchObject({ state: 'stopped', blockedBy: 'R1' })
  expect(jobs.find((job) => job.number === 25)).toMatchObject({ state: 'under-way', chapter: 'work' })
  expect(jobs.find((job) => job.number === 27)).toMatchObject({ state: 'waiting', stepCount: 17 })
  expect(jobs.find((job) => job.number === 28)).toMatchObject({ state: 'waiting', chapter: 'plan' })
  expect(jobs.find((job) => job.number === 29)).toMatchObject({ state: 'ready', chapter: 'hand-over', blockedBy: null })
  const last = jobs.filter((job) => job.carriedOver).map((job) => job.openedAt)
  // The month's last job is on 29 May of the story, a Monday, 1 to 7 days before: Monday 1 June 2026.
  expect(last.sort().at(-1)?.slice(0, 10)).toBe('2026-06-01')
  await app.close()
  await store.close()
})
