import { execFileSync } from 'node:child_process'
import { createHash, randomBytes } from 'node:crypto'
import { newId } from '@legwork/trade'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../app.ts'
import { everyDatabase, type TestDatabase } from '../store/every-database.ts'
import type { Store } from '../store/store.ts'

const now = new Date('2026-06-03T10:00:00Z')
const headers = { host: '127.0.0.1:4720' }
const fresh = (): string => newId(now.getTime(), randomBytes(10))
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex')

/** A JPEG after ITU-T T.81, annex B: start, frame of 64 × 48, one scan with `mark` in it, end. */
const jpeg = (mark: number, telling: readonly number[] = []) =>
  Buffer.from([
    ...[0xff, 0xd8, ...telling, 0xff, 0xc0, 0, 11, 8, 0, 48, 0, 64, 1, 1, 0x11, 0],
    ...[0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, mark, 0xff, 0xd9],
  ])

describe.each(everyDatabase)('photos on $kind', ({ create }) => {
  let database: TestDatabase
  let store: Store
  let app: FastifyInstance
  let workshop: string
  let person: string
  const [station, rider, unit] = [fresh(), fresh(), fresh()]
  const stream = `job:${fresh()}`
  let stationNo = 0

  const ask = (method: 'POST' | 'GET', url: string, payload?: object) =>
    app.inject({ method, url, headers, ...(payload ? { payload } : {}) })
  const deliver = (...items: object[]) =>
    ask('POST', `/api/workshops/${workshop}/deliveries`, { station, items, texts: [] })
  const at = (digest: string) => `/api/workshops/${workshop}/photos/${digest}`
  const put = (digest: string, bytes: Buffer, type = 'image/jpeg') =>
    app.inject({
      method: 'PUT',
      url: `${at(digest)}?person=${person}&station=${station}`,
      headers: { ...headers, 'content-type': type },
      payload: bytes,
    })
  const item = () => ({ made: 'offline', id: fresh(), stationNo: ++stationNo, person, madeAt: now.toISOString() })
  const entry = (kind: string, body: object) => {
    const standing = { mode: 'now' }
    return { is: 'entry', ...item(), stream, kind, version: 1, seen: 0, standing, body }
  }
  const named = (...photos: string[]) =>
    entry('snapshot-kept', {
      item: 'photos',
      reading: { value: photos.length, measure: 'count', instrument: null, how: null },
      photos,
      notKnownBecause: null,
    })

  beforeAll(async () => {
    database = await create()
    store = await database.open()
    app = await buildApp({ store, clock: () => now, pages: null })
    const measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }
    const who = { name: 'Odalys', initials: 'O.', role: 'owner', measures }
    const made = await ask('POST', '/api/workshops', { name: 'Shop', home: false, person: who })
    workshop = made.json().workshop.id
    person = made.json().person.id
    await ask('POST', '/api/stations', { id: station, workshop, name: 'Tablet' })
    const body = {
      id: rider,
      name: 'Ada Quell',
      mass: 80,
      posture: null,
      frontShare: null,
      hoursPerWeek: null,
      contact: null,
    }
    await deliver(
      { is: 'register', ...item(), register: 'riders', seenVersion: 0, body },
      entry('job-opened', { unit, rider, bike: null, visit: fresh(), asked: null, spendAllowed: null }),
    )
  })
  afterAll(async () => {
    await app.close()
    await store.close()
    await database.drop()
  })

  it('keeps a photo that an entry names, once, and gives back its very bytes', async () => {
    const bytes = jpeg(1)
    const digest = sha256(bytes)
    expect((await put(digest, bytes)).json().errors[0]).toMatchObject({ code: 'photo.unnamed', came: digest })
    await deliver(named(digest))
    expect((await ask('GET', at(digest))).json().errors[0]).toMatchObject({ code: 'photo.unknown' })
    expect([(await put(digest, bytes)).statusCode, (await put(digest, bytes)).statusCode]).toEqual([201, 200])
    const back = await ask('GET', at(digest))
    expect(back.headers['content-type']).toBe('image/jpeg')
    expect(back.rawPayload.equals(bytes)).toBe(true)
  })

  it.each([
    ['other bytes than its digest says', jpeg(3), 422, 'photo.digest'],
    ['a picture that tells a place', jpeg(2, [0xff, 0xe1, 0, 8, 69, 120, 105, 102, 0, 0]), 422, 'photo.tells-more'],
    ['another kind that calls itself JPEG', Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'), 422, 'photo.not-jpeg'],
    ['more than 4 MB', Buffer.alloc(4 * 1024 * 1024 + 1), 413, 'photo.too-large'],
  ])('refuses %s', async (_what, bytes, status, code) => {
    const answer = await put(sha256(jpeg(2)), bytes)
    expect(answer.statusCode).toBe(status)
    expect(answer.headers['content-type']).toContain('application/problem+json')
    expect(answer.json().errors[0]).toMatchObject({ code, allowed: expect.any(String), next: expect.any(String) })
  })

  it('names who put it there, and refuses a stranger', async () => {
    const bytes = jpeg(5)
    await deliver(named(sha256(bytes)))
    const url = `${at(sha256(bytes))}?person=${fresh()}&station=${station}`
    const type = { ...headers, 'content-type': 'image/jpeg' }
    const answer = await app.inject({ method: 'PUT', url, headers: type, payload: bytes })
    expect(answer.json().errors[0]).toMatchObject({ field: 'person', code: 'person.unknown' })
  })

  it('keeps those of a condemned part and of a note, and prints the part’s on the notice', async () => {
    const [crown, note] = [jpeg(8), jpeg(9)]
    await deliver(
      entry('chassis-checked', { part: 'crown', verdict: 'condemned', found: null, photos: [sha256(crown)] }),
      entry('noted', { text: 'c'.repeat(64), photos: [sha256(note)] }),
    )
    expect([(await put(sha256(crown), crown)).statusCode, (await put(sha256(note), note)).statusCode]).toEqual([
      201, 201,
    ])
    const notice = await ask('GET', `/api/workshops/${workshop}/jobs/${stream}/notice.pdf`)
    // Read by poppler, a program outside the project: 64 × 48 px as the frame above says.
    const images = execFileSync('pdfimages', ['-list', '-'], { input: notice.rawPayload }).toString().trim().split('\n')
    expect(images.slice(2)).toEqual([expect.stringMatching(/image\s+64\s+48 /)])
  })

  it('the database itself refuses a photo that is neither there nor removed', async () => {
    const row = { workshop, person, station, digest: 'a'.repeat(64), kept_at: now.toISOString() }
    await expect(
      store.write((write) =>
        write
          .insertInto('photo')
          .values({ ...row, content: null, removed_at: null })
          .execute(),
      ),
    ).rejects.toThrow()
  })

  it('erasing the rider removes the photo, also one that comes later, and leaves the digest and the day', async () => {
    const [there, late] = [jpeg(6), jpeg(7)]
    const digests = [sha256(there), sha256(late)]
    await deliver(named(...digests))
    await put(sha256(there), there)
    const erased = await ask('POST', `/api/workshops/${workshop}/riders/${rider}/erase`, { person, station })
    // jpeg(1), (6), (8) and (9); jpeg(7) had not come.
    expect(erased.json()).toMatchObject({ photos: 4 })
    expect((await put(sha256(late), late)).statusCode).toBe(410)
    for (const digest of digests) {
      const gone = await ask('GET', at(digest))
      expect([gone.statusCode, gone.json().title]).toEqual([410, 'The photo was removed on 2026-06-03'])
    }
    const { entries, texts } = (await ask('GET', `/api/workshops/${workshop}/streams/${stream}/entries?after=0`)).json()
    expect(JSON.stringify(entries)).toContain(digests[0])
    expect(texts).toContainEqual({ digest: digests[0], text: null, removedOn: now.toISOString() })
  })
})
