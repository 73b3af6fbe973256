import { randomBytes } from 'node:crypto'
import { demoSheet, demoUnits, newId, writeSheetFile } from '@legwork/trade'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../app.ts'
import { everyDatabase, type TestDatabase } from '../store/every-database.ts'
import type { Store } from '../store/store.ts'

const now = new Date('2026-06-03T10:00:00Z')
const headers = { host: '127.0.0.1:4720' }
const fresh = (): string => newId(now.getTime(), randomBytes(10))
const unit = demoUnits.find(({ key }) => key === 'U04')
const sheetId = fresh()
const text = unit ? writeSheetFile(demoSheet(unit, sheetId), { person: () => null, instrument: () => null }) : ''

describe.each(everyDatabase)('sheets as files on $kind', ({ create }) => {
  let database: TestDatabase
  let store: Store
  let app: FastifyInstance
  let workshop: string
  let person: string

  const ask = (method: 'POST' | 'GET', url: string, payload?: object) =>
    app.inject({ method, url, headers, ...(payload ? { payload } : {}) })
  const send = (file: string, by = person) =>
    ask('POST', `/api/workshops/${workshop}/sheets/file`, { person: by, file })
  const registers = async () => (await ask('GET', `/api/workshops/${workshop}/registers`)).json()

  beforeAll(async () => {
    database = await create()
    store = await database.open()
    app = await buildApp({ store, clock: () => now, pages: null })
    const measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }
    const owner = { name: 'Odalys Fennimarch', initials: 'OF', role: 'owner', measures }
    const made = (await ask('POST', '/api/workshops', { name: 'Bench', home: false, person: owner })).json()
    workshop = made.workshop.id
    person = made.person.id
  })
  afterAll(async () => {
    await app.close()
    await store.close()
    await database.drop()
  })

  it('come in as a new sheet, then as a revision; every revision stays', async () => {
    expect((await send(text)).json()).toEqual({ became: 'new', id: sheetId, name: 'Q38-170', revision: 'A' })
    const before = (await registers()).position
    expect((await send(text)).json()).toMatchObject({ became: 'same' })
    expect((await registers()).position).toBe(before)
    expect((await send(text.replace('"25 N·m"', '"24 N·m"'))).json()).toMatchObject({
      became: 'revision',
      revision: 'A.1',
    })
    const { sheets, position } = await registers()
    expect(position).toBe(before + 1)
    expect(
      sheets.map((line: { version: number; body: { revision: string } }) => [line.version, line.body.revision]),
    ).toEqual([
      [1, 'A'],
      [2, 'A.1'],
    ])
  })

  it('go out as they came in, by revision', async () => {
    const file = `/api/workshops/${workshop}/sheets/${sheetId}/file`
    const first = await ask('GET', `${file}?revision=A`)
    expect(first.body).toBe(text)
    expect(first.headers['content-disposition']).toBe("attachment; filename*=UTF-8''Q38-170-A.json")
    expect((await ask('GET', file)).body).toContain('"24 N·m"')
    expect((await ask('GET', `${file}?revision=Z`)).json()).toMatchObject({
      status: 404,
      errors: [{ field: 'revision', code: 'sheet.unknown', came: 'Z', allowed: 'A, A.1' }],
    })
  })

  it('are refused with line and column of every error, and write nothing', async () => {
    const before = (await registers()).position
    const wrong = text.replace('"25 N·m"', '"25 m"').replace('"bladder-cartridge"', '"magic"')
    const line = (piece: string) => wrong.split('\n').findIndex((row) => row.includes(piece)) + 1
    const answer = await send(wrong)
    expect(answer.headers['content-type']).toContain('application/problem+json')
    expect(answer.json()).toMatchObject({
      status: 422,
      errors: [
        { field: 'damper', code: 'sheet.choice', line: line('magic'), column: expect.any(Number) },
        { field: 'spring.capTorque.value', code: 'wrong-measure', line: line('25 m') },
      ],
    })
    expect((await send('{')).json()).toMatchObject({ errors: [{ code: 'sheet.not-json', line: 1, column: 2 }] })
    expect((await send(text, fresh())).json()).toMatchObject({ status: 422, errors: [{ field: 'person' }] })
    expect((await registers()).position).toBe(before)
  })
})
