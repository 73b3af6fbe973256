/** Every code that leaves the server stands in docs/errors.md, and each that stands there is used. */
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { photoCodes } from '@legwork/contract'
import { schemaCodes, serverCodes } from '@legwork/contract/server-codes.ts'
import { refusalCodes } from '@legwork/engine'
import { newId } from '@legwork/trade'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from './app.ts'
import { openSqlite } from './store/sqlite/open-sqlite.ts'
import type { Store } from './store/store.ts'

const root = join(import.meta.dirname, '../..')
const page = readFileSync(join(root, 'docs/errors.md'), 'utf8')

function tableUnder(title: string): Record<string, string> {
  const section = page.split(`## ${title}`)[1]?.split('\n## ')[0] ?? ''
  const rows = [...section.matchAll(/^\| `([a-z.-]+)` +\| (.+?) +\|$/gm)]
  return Object.fromEntries(rows.map(([, code = '', when = '']) => [code, when]))
}

function sourcesUnder(folder: string): string {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.includes('test') && !name.includes('server-codes'))
    .map((name) => readFileSync(join(root, folder, name), 'utf8'))
    .join('\n')
}

describe('codes of the server', () => {
  it('stand in docs/errors.md with the same words, no more and no less', () => {
    expect(tableUnder('Requests to the server')).toEqual(serverCodes)
    expect(tableUnder('What a schema says')).toEqual(schemaCodes)
  })

  it('are all used, and no other is', () => {
    const text = sourcesUnder('server/src') + sourcesUnder('contract/src')
    // In a literal, or handed to the function that makes one: second after the field, or first.
    const written = [
      /\bcode: '([a-z-]+\.[a-z-]+)'/g,
      /\b(?:wrong|refused)\([\s\S]{1,140}?,\s*'([a-z-]+\.[a-z-]+)'/g,
      /\b(?:wrong|bodyError)\(\s*'([a-z-]+\.[a-z-]+)'/g,
    ].flatMap((pattern) => [...text.matchAll(pattern)].map(([, code = '']) => code))
    // A text's digest is named as a field where a code is read.
    const used = new Set(written.filter((code) => code !== 'texts.digest'))
    const documented = [...Object.keys(serverCodes), ...Object.keys(photoCodes)]
    expect([...used].sort()).toEqual([...documented].sort())
  })
})

describe('whatever a request has wrong, its code stands in docs/errors.md', () => {
  const known = new Set([...page.matchAll(/^\| `([a-z.-]+)`/gm)].map(([, code = '']) => code))
  const headers = { host: '127.0.0.1:4720', 'content-type': 'application/json' }
  const unknown = newId(1_780_000_000_000, new Uint8Array(10))
  let app: FastifyInstance
  let store: Store
  beforeAll(async () => {
    store = await openSqlite(join(mkdtempSync(join(tmpdir(), 'legwork-codes-')), 'book.sqlite'))
    app = await buildApp({ store, clock: () => new Date('2026-06-03T10:00:00Z'), pages: null })
  })
  afterAll(async () => {
    await app.close()
    await store.close()
  })

  it('knows the codes of the engine too', () => {
    expect(Object.keys(refusalCodes).filter((code) => !known.has(code))).toEqual([])
  })

  it.each([
    ['no such address', { url: '/api/nothing' }, 404, 'path.unknown'],
    [
      'no such method',
      { method: 'DELETE' as const, url: '/api/calc', headers: { host: headers.host } },
      404,
      'path.unknown',
    ],
    ['half a JSON', { method: 'POST' as const, url: '/api/calc/sag', payload: '{"load":' }, 400, 'body.not-json'],
    ['no body', { method: 'POST' as const, url: '/api/calc/sag', payload: '' }, 400, 'body.not-json'],
    [
      'a body of another type',
      {
        method: 'POST' as const,
        url: '/api/workshops',
        payload: '<a/>',
        headers: { ...headers, 'content-type': 'text/xml' },
      },
      415,
      'body.media-type',
    ],
    [
      'nine megabytes',
      { method: 'POST' as const, url: '/api/calc/sag', payload: `"${'x'.repeat(9_000_000)}"` },
      413,
      'body.too-large',
    ],
    [
      'a number for a name',
      { method: 'POST' as const, url: '/api/workshops', payload: { name: 5 } },
      422,
      'schema.invalid-type',
    ],
    [
      'another calculation',
      { method: 'POST' as const, url: '/api/calc/nothing', payload: {} },
      404,
      'unknown-calculation',
    ],
    [
      'another workshop',
      { method: 'POST' as const, url: '/api/stations', payload: { id: unknown, workshop: unknown, name: 'Bench' } },
      404,
      'workshop.unknown',
    ],
  ])('%s', async (_what, request, status, code) => {
    const answer = await app.inject({ headers, ...request })
    expect(answer.statusCode).toBe(status)
    expect(answer.headers['content-type']).toContain('application/problem+json')
    const { errors, type } = answer.json()
    expect(type).toBe(`urn:legwork:error:${code}`)
    expect(errors[0]).toMatchObject({
      code,
      came: expect.any(String),
      allowed: expect.any(String),
      next: expect.any(String),
    })
    for (const error of errors) expect(known).toContain(error.code)
  })

  it('names every field of a body, and what came there', async () => {
    const payload = { name: 5, colour: 'red', home: true, person: {} }
    const { errors } = (await app.inject({ method: 'POST', url: '/api/workshops', headers, payload })).json()
    expect(errors).toContainEqual(expect.objectContaining({ field: 'name', came: '5', code: 'schema.invalid-type' }))
    expect(errors).toContainEqual(expect.objectContaining({ field: 'colour', code: 'schema.unrecognized-keys' }))
    expect(errors).toContainEqual(expect.objectContaining({ field: 'person.name', came: 'nothing' }))
  })
})
