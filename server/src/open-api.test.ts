import { randomBytes } from 'node:crypto'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import * as contract from '@legwork/contract'
import { newId } from '@legwork/trade'
import { Validator } from '@seriousme/openapi-schema-validator'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { z } from 'zod'
import { buildApp } from './app.ts'
import { openSqlite } from './store/sqlite/open-sqlite.ts'
import type { Store } from './store/store.ts'

const now = new Date('2026-06-03T10:00:00Z')
const headers = { host: '127.0.0.1' }

type Part = Record<string, unknown>
const isPart = (value: unknown): value is Part => typeof value === 'object' && value !== null && !Array.isArray(value)
/** A part of the document that must be there. */
function at(part: unknown, ...path: readonly string[]): Part {
  const found = path.reduce<unknown>((here, name) => (isPart(here) ? here[name] : undefined), part)
  if (!isPart(found)) throw new Error(`the document has no ${path.join(' › ')}`)
  return found
}

let app: FastifyInstance
let store: Store
let told: Part
beforeAll(async () => {
  store = await openSqlite(join(mkdtempSync(join(tmpdir(), 'legwork-open-api-')), 'book.sqlite'))
  app = await buildApp({ store, clock: () => now, pages: null })
  told = (await app.inject({ url: '/api/openapi.json', headers })).json()
})
afterAll(async () => {
  await app.close()
  await store.close()
})

interface Operation {
  name: string
  operation: Part
}
const operations = (): Operation[] =>
  Object.entries(at(told, 'paths')).flatMap(([path, methods]) =>
    Object.entries(isPart(methods) ? methods : {}).flatMap(([method, operation]) =>
      isPart(operation) ? [{ name: `${method.toUpperCase()} ${path}`, operation }] : [],
    ),
  )

/** Places in a schema that let anything through: objects with fields that take others too, and schemas that say nothing. */
function openPlaces(schema: unknown, place: string, seen = new Set<string>()): string[] {
  if (!isPart(schema)) return []
  const { $ref: ref } = schema
  if (typeof ref === 'string') {
    if (seen.has(ref)) return []
    seen.add(ref)
    return openPlaces(at(told, ...ref.slice(2).split('/')), ref, seen)
  }
  // Names that a question chooses are taken by a schema of their own.
  const { additionalProperties: others } = schema
  const takes = others === undefined || others === true || (isPart(others) && Object.keys(others).length === 0)
  const open = schema.properties !== undefined && takes ? [place] : []
  const under = ['properties', 'patternProperties'].flatMap((key) =>
    Object.entries(isPart(schema[key]) ? schema[key] : {}).flatMap(([name, one]) =>
      openPlaces(one, `${place}.${name}`, seen),
    ),
  )
  const beside = ['items', 'additionalProperties'].flatMap((key) => openPlaces(schema[key], `${place}[]`, seen))
  const ways = ['anyOf', 'oneOf', 'allOf', 'prefixItems'].flatMap((key) =>
    (Array.isArray(schema[key]) ? schema[key] : []).flatMap((one) => openPlaces(one, place, seen)),
  )
  return [...open, ...under, ...beside, ...ways]
}

describe('the document', () => {
  it('is OpenAPI 3.1 by the schema of the OpenAPI Initiative', async () => {
    // The schema of 2022-10-07 (spec.openapis.org/oas/3.1/schema), as the validator brings it.
    const validator = new Validator()
    const found = await validator.validate(structuredClone(told))
    expect(found.errors ?? []).toEqual([])
    expect(found.valid).toBe(true)
    expect(validator.version).toBe('3.1')
  })

  it('is refused by the same schema when an answer has no description', async () => {
    const broken = structuredClone(told)
    const [path = ''] = Object.keys(at(broken, 'paths'))
    const [method = ''] = Object.keys(at(broken, 'paths', path))
    delete at(broken, 'paths', path, method, 'responses', '200').description
    expect((await new Validator().validate(broken)).valid).toBe(false)
  })

  it('has a summary, an answer and a way to refuse for every route', () => {
    const lacking = operations().flatMap(({ name, operation }) => {
      const answers = Object.entries(at(operation, 'responses'))
      const said = answers.filter(([status]) => /^2\d\d$/.test(status))
      const content = said.every(([, answer]) => Object.keys(at(answer, 'content')).length > 0)
      const refuses = ['4XX', '5XX'].every((status) => answers.some(([one]) => one === status))
      return operation.summary && said.length > 0 && content && refuses ? [] : [name]
    })
    expect(lacking).toEqual([])
    expect(operations().length).toBeGreaterThan(60)
  })

  it('lets no field through that is not told', () => {
    const open = operations().flatMap(({ name, operation }) =>
      Object.entries(at(operation, 'responses')).flatMap(([status, answer]) =>
        Object.values(isPart(answer) && isPart(answer.content) ? answer.content : {}).flatMap((media) =>
          openPlaces(at(media, 'schema'), `${name} ${status}`),
        ),
      ),
    )
    expect(open).toEqual([])
  })

  it('a route that does not say what it answers with fails the build', async () => {
    const other = await buildApp({ store, clock: () => now, pages: null })
    expect(() => other.get('/odd', { config: { permission: 'open' } }, () => 'odd')).toThrow(
      'does not say what it answers with',
    )
    await other.close()
  })
})

describe('what is really answered fits what is told', () => {
  let workshop = ''
  beforeAll(async () => {
    const made = await app.inject({ method: 'POST', url: '/api/demo', headers })
    workshop = contract.workshopAnswer.parse(made.json()).workshop.id
  }, 60_000)

  /** An answer read by its schema is the answer itself: nothing is missing, nothing left over. */
  async function fits(schema: z.ZodType, url: string, asked: { method?: 'POST'; payload?: object } = {}) {
    const answer = await app.inject({ method: asked.method ?? 'GET', url, headers, ...(asked.payload && asked) })
    expect(answer.statusCode, answer.body.slice(0, 300)).toBeLessThan(300)
    expect(schema.parse(answer.json())).toEqual(answer.json())
  }
  const of = (path: string): string => `/api/workshops/${workshop}/${path}`
  const fresh = (): string => newId(now.getTime(), randomBytes(10))

  it('of the records', { timeout: 60_000 }, async () => {
    await fits(contract.ready, '/healthz')
    await fits(contract.workshopsAnswer, '/api/workshops')
    await fits(contract.registersAnswer, of('registers'))
    await fits(contract.entriesAnswer, of('entries?limit=2000'))
    await fits(contract.jobsAnswer, of('jobs'))
    await fits(contract.searchAnswer, of('search?q=fork'))
    const { jobs } = contract.jobsAnswer.parse((await app.inject({ url: of('jobs'), headers })).json())
    await fits(contract.entriesAnswer, of(`streams/${jobs[0]?.stream}/entries`))
  })

  it('of what is opened, and of what is refused', async () => {
    const { hits } = contract.searchAnswer.parse((await app.inject({ url: of('search?q=U01'), headers })).json())
    expect(hits.length).toBeGreaterThan(0)
    await fits(contract.stationOpened, '/api/stations', {
      method: 'POST',
      payload: { id: fresh(), workshop, name: 'Second tablet' },
    })
    const refused = await app.inject({ method: 'POST', url: '/api/stations', headers, payload: { name: 3 } })
    expect(refused.statusCode).toBe(422)
    expect(contract.problem.parse(refused.json())).toEqual(refused.json())
  })
})
