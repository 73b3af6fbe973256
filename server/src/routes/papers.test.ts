import { execFileSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { JobCard } from '@legwork/contract'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildApp } from '../app.ts'
import { openSqlite } from '../store/sqlite/open-sqlite.ts'

const now = new Date('2026-06-03T10:00:00Z')
const folder = mkdtempSync(join(tmpdir(), 'legwork-papers-'))
const store = await openSqlite(join(folder, 'book.sqlite'))
const app = await buildApp({ store, clock: () => now, pages: null })
const headers = { host: '127.0.0.1:8080' }
let workshop = ''
let jobs: JobCard[] = []

beforeAll(async () => {
  const made = await app.inject({ method: 'POST', url: '/api/demo', headers })
  workshop = made.json().workshop.id
  jobs = (await app.inject({ url: `/api/workshops/${workshop}/jobs`, headers })).json().jobs
})
afterAll(async () => {
  await app.close()
  await store.close()
})

const paper = (number: number, name: string) =>
  app.inject({
    url: `/api/workshops/${workshop}/jobs/${jobs.find((job) => job.number === number)?.stream}/${name}`,
    headers,
  })
// Read by poppler's pdftotext and pdfinfo, programs outside the project.
const ask = (program: string, pdf: Uint8Array, ...rest: string[]) =>
  execFileSync(program, ['-', ...rest], { input: pdf }).toString()

test('every job of the demo prints its hand-over page on one A4 sheet', async () => {
  for (const { number, openedAt } of jobs) {
    const answer = await paper(number, 'hand-over.pdf')
    expect(answer.statusCode, `J${number} of ${openedAt}`).toBe(200)
    expect(ask('pdfinfo', answer.rawPayload)).toMatch(/Pages:\s+1\nEncrypted:.*\nPage size:\s+595\.5 x 842\.25 pts/)
  }
}, 60_000)

test('the hand-over page of the job on the bench says what was asked for and the caution', async () => {
  const answer = await paper(25, 'hand-over.pdf')
  expect(answer.headers['content-type']).toBe('application/pdf')
  expect(answer.headers['content-disposition']).toBe('inline; filename="J25-hand-over.pdf"')
  const text = ask('pdftotext', answer.rawPayload, '-layout', '-').replace(/\s+/g, ' ')
  // What the rider asked for in the demo's job 25, and the largest pressure of its unit's sheet.
  expect(text).toContain('a bit dry, and the 50 hours are up')
  expect(text).toContain('Never fill above 130 psi')
})

test('only a stopped job has a notice', async () => {
  const stopped = await paper(4, 'notice.pdf')
  expect(ask('pdftotext', stopped.rawPayload, '-')).toContain('was not rebuilt')
  const sound = await paper(25, 'notice.pdf')
  expect(sound.statusCode).toBe(404)
  expect(sound.json().errors[0]).toMatchObject({ code: 'job.not-stopped', came: 'J25' })
})

test('the label has no name of the rider on it', async () => {
  const label = ask('pdftotext', (await paper(25, 'label.pdf')).rawPayload, '-')
  expect(label).toContain('J25')
})

test('a shock is handed over with checks of a shock, not of a fork', async () => {
  // J18 of the demo's paper book is an air shock.
  const text = ask('pdftotext', (await paper(18, 'hand-over.pdf')).rawPayload, '-')
  expect(text).toContain('Both bolts of the shock')
  expect(text).not.toContain('wheel square in the fork')
})
