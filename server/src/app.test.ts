import { randomBytes } from 'node:crypto'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { calculations } from '@legwork/contract/calculations/index.ts'
import { newId } from '@legwork/trade'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from './app.ts'
import { everyDatabase, type TestDatabase } from './store/every-database.ts'
import { openSqlite } from './store/sqlite/open-sqlite.ts'
import type { Store } from './store/store.ts'

const now = new Date('2026-06-03T10:00:00Z')
const clock = () => now
const headers = { host: '127.0.0.1:4720' }
const fresh = (): string => newId(now.getTime(), randomBytes(10))

describe('every request', () => {
  let app: FastifyInstance
  let store: Store
  beforeAll(async () => {
    store = await openSqlite(join(mkdtempSync(join(tmpdir(), 'legwork-app-')), 'book.sqlite'))
    app = await buildApp({ store, clock, pages: null })
  })
  afterAll(async () => {
    await app.close()
    await store.close()
  })

  it('a route that names no permission fails the build', async () => {
    const other = await buildApp({ store, clock, pages: null })
    expect(() => other.get('/odd', () => 'odd')).toThrow('names no permission')
    await other.close()
  })

  it.each([
    ['another host', { host: 'legwork.example' }, 421, 'host.wrong'],
    ['another page', { ...headers, origin: 'http://legwork.example' }, 403, 'origin.wrong'],
  ])('from %s is refused as a problem document', async (_who, sent, status, code) => {
    const answer = await app.inject({ url: '/api/workshops', headers: sent })
    expect(answer.statusCode).toBe(status)
    expect(answer.headers['content-type']).toContain('application/problem+json')
    expect(answer.json()).toMatchObject({
      status,
      errors: [{ code, came: expect.any(String), allowed: expect.any(String) }],
    })
  })

  it('describes itself as OpenAPI 3.1, every calculation and delivery in it', async () => {
    const { openapi, paths } = (await app.inject({ url: '/api/openapi.json', headers })).json()
    expect(openapi).toBe('3.1.0')
    expect(Object.keys(paths)).toEqual(
      expect.arrayContaining(['/api/calc/{name}', '/api/workshops/{workshop}/deliveries']),
    )
  })

  it.each(Object.values(calculations))(
    'tells what goes in and comes out of $name',
    async ({ name, example, units }) => {
      const { paths } = (await app.inject({ url: '/api/openapi.json', headers })).json()
      const { requestBody, responses } = paths[`/api/calc/${name}`].post
      const body = requestBody.content['application/json'].schema
      const answer = responses['200'].content['application/json'].schema
      expect(body.additionalProperties).toBe(false)
      expect(Object.keys(body.properties)).toEqual(expect.arrayContaining(Object.keys(example)))
      expect(Object.keys(example)).toEqual(expect.arrayContaining(body.required ?? []))
      const told = await app.inject({ method: 'POST', url: `/api/calc/${name}`, headers, payload: example })
      const given = told.json()
      // A star stands for a name the question chooses.
      if (!Object.keys(units).some((path) => path.startsWith('*')))
        expect(Object.keys(answer.properties)).toEqual(expect.arrayContaining(Object.keys(given)))
      expect(Object.keys(given)).toEqual(expect.arrayContaining(answer.required))
      expect(responses['4XX']).toEqual({ $ref: '#/components/responses/Refused' })
    },
  )

  it('calculates, and refuses with field, value, what is allowed and what to do', async () => {
    const right = await app.inject({
      method: 'POST',
      url: '/api/calc/air-pressure',
      headers,
      payload: { altitude: '0 m' },
    })
    // ISO 2533: 101 325 Pa at sea level.
    expect(right.json()).toMatchObject({ ambient: 101_325 })
    const wrong = await app.inject({
      method: 'POST',
      url: '/api/calc/air-pressure',
      headers,
      payload: { altitude: '0 kg' },
    })
    expect(wrong.statusCode).toBe(422)
    expect(wrong.json().errors[0]).toMatchObject({ field: 'altitude', came: '"0 kg"' })
  })
})

describe.each(everyDatabase)('deliveries on $kind', ({ create }) => {
  let database: TestDatabase
  let store: Store
  let app: FastifyInstance
  let workshop: string
  let person: string
  beforeAll(async () => {
    database = await create()
    store = await database.open()
    app = await buildApp({ store, clock, pages: null })
    const measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }
    const who = { name: 'Odalys', initials: 'O.', role: 'owner', measures }
    const made = await app.inject({
      method: 'POST',
      url: '/api/workshops',
      headers,
      payload: { name: 'Shop', home: false, person: who },
    })
    workshop = made.json().workshop.id
    person = made.json().person.id
  })
  afterAll(async () => {
    await app.close()
    await store.close()
    await database.drop()
  })

  const post = async (url: string, payload: object) => app.inject({ method: 'POST', url, headers, payload })
  async function stationOf(): Promise<string> {
    const id = fresh()
    await post('/api/stations', { id, workshop, name: 'Tablet' })
    return id
  }
  it('gives a station without an id one, and the same station to an id that is known', async () => {
    const made = (await post('/api/stations', { workshop, name: 'Second' })).json()
    expect(made).toMatchObject({ station: { workshop, name: 'Second' }, deliveredNo: 0 })
    const again = await post('/api/stations', { id: made.station.id, workshop, name: 'Second' })
    expect(again.json()).toEqual(made)
    const other = (await post('/api/stations', { workshop, name: 'Second' })).json()
    expect(other.station.id).not.toBe(made.station.id)
  })

  const deliver = async (station: string, items: object[], texts: object[] = []) =>
    post(`/api/workshops/${workshop}/deliveries`, { station, items, texts })
  const line = (
    stationNo: number,
    stream: string,
    kind: string,
    body: object,
    made: 'online' | 'offline' = 'online',
  ) => ({
    is: 'entry',
    made,
    id: fresh(),
    stream,
    stationNo,
    person,
    madeAt: now.toISOString(),
    kind,
    version: 1,
    seen: 0,
    standing: { mode: 'now' },
    body,
  })
  const opened = (stationNo: number, stream: string) =>
    line(stationNo, stream, 'job-opened', {
      unit: fresh(),
      rider: null,
      bike: null,
      visit: fresh(),
      asked: null,
      spendAllowed: null,
    })
  // Air out before the snapshot and without a plan: no book takes that.
  const airOut = { step: 'air-out', leg: null, reading: null, wrenchSet: null, saidSo: ['R5'] }

  it('the same line again changes nothing', async () => {
    const station = await stationOf()
    const item = opened(1, `job:${fresh()}`)
    expect((await deliver(station, [item])).json().results[0]).toMatchObject({ status: 'written', seq: 1 })
    expect((await deliver(station, [item])).json()).toMatchObject({
      results: [{ status: 'already', seq: 1 }],
      deliveredNo: 1,
    })
  })

  it('a gap in the numbers waits', async () => {
    const station = await stationOf()
    const answer = await deliver(station, [opened(3, `job:${fresh()}`)])
    expect(answer.statusCode).toBe(409)
    expect(answer.json().errors[0]).toMatchObject({ code: 'delivery.gap', came: '3', allowed: '1' })
  })

  it('online a shut gate refuses before anything is written; the refusal is remembered', async () => {
    const station = await stationOf()
    const stream = `job:${fresh()}`
    await deliver(station, [opened(1, stream)])
    const item = line(2, stream, 'step-done', airOut)
    const refused = (await deliver(station, [item])).json()
    expect(refused.results[0]).toMatchObject({ status: 'refused', seq: null })
    expect(refused.results[0].errors[0]).toMatchObject({
      code: expect.stringMatching(/^gate\.R|/),
      next: expect.any(String),
    })
    expect((await deliver(station, [item])).json().results[0].status).toBe('refused')
    const book = await app.inject({ url: `/api/workshops/${workshop}/streams/${stream}/entries?after=0`, headers })
    expect(book.json().entries).toHaveLength(1)
  })

  it('from offline it is kept as contested, and the job stops', async () => {
    const station = await stationOf()
    const stream = `job:${fresh()}`
    await deliver(station, [opened(1, stream)])
    const kept = (await deliver(station, [line(2, stream, 'step-done', airOut, 'offline')])).json()
    expect(kept.results[0]).toMatchObject({ status: 'written', seq: 2, contested: expect.any(String) })
    const { jobs } = (await app.inject({ url: `/api/workshops/${workshop}/jobs`, headers })).json()
    expect(jobs.find((job: { stream: string }) => job.stream === stream)).toMatchObject({
      state: 'stopped',
      contested: 1,
    })
  })

  it('a body of a wrong shape is refused by field, and the tablet goes on', async () => {
    const station = await stationOf()
    const stream = `unit:${fresh()}`
    const reading = { value: 1, measure: 'stone', instrument: null, how: null }
    const wrong = line(1, stream, 'measured', { what: 'ring', leg: null, phase: 'received', reading })
    const right = line(2, stream, 'measured', {
      what: 'ring',
      leg: null,
      phase: 'received',
      reading: { ...reading, measure: 'm' },
    })
    const { results, deliveredNo } = (await deliver(station, [wrong, right])).json()
    expect(results).toMatchObject([
      { status: 'refused', errors: [{ field: 'body.reading.measure' }] },
      { status: 'written' },
    ])
    expect(deliveredNo).toBe(2)
  })
})
