import { once } from 'node:events'
import { mkdtempSync, statSync, writeFileSync } from 'node:fs'
import { get } from 'node:http'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, expect, it } from 'vitest'
import { StartRefused } from './start-refused.ts'
import { type Started, startServer } from './start-server.ts'
import { openSqliteFile } from './store/sqlite/sqlite-file.ts'

const folder = (): string => mkdtempSync(join(tmpdir(), 'legwork-start-'))
const open: Started[] = []
afterEach(async () => {
  for (const server of open.splice(0)) await server.close()
})

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1')
  await once(probe, 'listening')
  const place = probe.address()
  probe.close()
  await once(probe, 'close')
  if (typeof place !== 'object' || place === null) throw new Error('no port')
  return place.port
}

async function refusal(options: Partial<Parameters<typeof startServer>[0]>): Promise<string> {
  const started = startServer({ data: folder(), host: '127.0.0.1', port: await freePort(), pages: null, ...options })
  const trouble = await started.then(
    (server) => {
      open.push(server)
      return null
    },
    (reason: unknown) => reason,
  )
  expect(trouble).toBeInstanceOf(StartRefused)
  const { message } = trouble as StartRefused // as was just expected
  // One sentence: no line breaks, one full stop at the end.
  expect(message).toMatch(/^[^\n]+\.$/)
  return message
}

it('answers healthz with its clock, which starts where it is told to', async () => {
  const server = await startServer({
    data: folder(),
    host: '127.0.0.1',
    port: await freePort(),
    pages: null,
    now: '2026-06-03T10:00:00Z',
  })
  open.push(server)
  expect(await server.request('GET', '/healthz')).toMatchObject({
    ok: true,
    now: expect.stringMatching(/^2026-06-03T10:00/),
  })
})

it('refuses a busy port in one sentence', async () => {
  const other = createServer().listen(0, '127.0.0.1')
  await once(other, 'listening')
  const place = other.address()
  const port = typeof place === 'object' && place ? place.port : 0
  expect(await refusal({ port })).toContain(`Port ${port} is in use`)
  other.close()
})

it('refuses a folder it cannot write to', async () => {
  const file = join(folder(), 'a-file')
  writeFileSync(file, '')
  expect(await refusal({ data: join(file, 'book') })).toContain('cannot be written to')
})

it('refuses a folder in a place where none can be made, at once', async () => {
  expect(await refusal({ data: '/proc/x/book' })).toContain('/proc/x/book cannot be written to (ENOENT)')
})

it('makes a folder level by level', async () => {
  const data = join(folder(), 'a', 'b', 'c')
  open.push(await startServer({ data, host: '127.0.0.1', port: await freePort(), pages: null }))
  expect(statSync(data).mode & 0o777).toBe(0o700)
})

it('answers under its own name and port only', async () => {
  const port = await freePort()
  open.push(await startServer({ data: folder(), host: '127.0.0.1', port, pages: null }))
  const statusFor = async (host: string): Promise<number | undefined> => {
    const asked = get({ host: '127.0.0.1', port, path: '/healthz', headers: { host } })
    const [answer] = await once(asked, 'response')
    answer.resume()
    return answer.statusCode
  }
  expect(await statusFor(`127.0.0.1:${port}`)).toBe(200)
  expect(await statusFor(`localhost:${port}`)).toBe(200)
  expect(await statusFor(`127.0.0.1:${port === 4000 ? 4001 : 4000}`)).toBe(421)
  expect(await statusFor('127.0.0.1')).toBe(421) // HTTP's own port, 80
  expect(await statusFor(`legwork.example:${port}`)).toBe(421)
})

it('refuses a second server on the same folder', async () => {
  const data = folder()
  open.push(await startServer({ data, host: '127.0.0.1', port: await freePort(), pages: null }))
  expect(await refusal({ data })).toContain('Another Legwork server')
})

it('refuses a database of a newer version', async () => {
  const data = folder()
  const first = await startServer({ data, host: '127.0.0.1', port: await freePort(), pages: null })
  await first.close()
  const file = openSqliteFile(join(data, 'book.sqlite'))
  file.exec("INSERT INTO migration (name) VALUES ('9999-of-the-future')")
  file.close()
  expect(await refusal({ data })).toContain('newer version')
})

it('refuses to listen beyond this machine while there are no accounts', async () => {
  expect(await refusal({ host: '0.0.0.0' })).toContain('LEGWORK_HOST is 0.0.0.0')
})
