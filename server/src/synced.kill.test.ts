/** SQLite: the log is on disk before an answer leaves, seen in the system calls. */
import { spawn } from 'node:child_process'
import { randomBytes } from 'node:crypto'
import { once } from 'node:events'
import { mkdtempSync, readFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { newId } from '@legwork/trade'
import { expect, it } from 'vitest'

const root = resolve(import.meta.dirname, '../..')
const fresh = (): string => newId(Date.now(), randomBytes(10))

it('the log is synced to disk before the answer to a delivery leaves', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'legwork-synced-'))
  const trace = join(folder, 'trace.txt')
  const probe = createServer().listen(0, '127.0.0.1')
  await once(probe, 'listening')
  const place = probe.address()
  if (typeof place !== 'object' || place === null) throw new Error('no port')
  probe.close()
  const at = `http://127.0.0.1:${place.port}`
  const calls = 'trace=openat,fsync,fdatasync,write,writev,pwrite64,sendto,sendmsg'
  const traced = [process.execPath, join(root, 'cli/dist/legwork.js'), 'start']
  const server = spawn('strace', ['-f', '-y', '-s', '400', '-o', trace, '-e', calls, ...traced], {
    env: { ...process.env, LEGWORK_DATA: join(folder, 'data'), LEGWORK_PORT: String(place.port), LEGWORK_DATABASE: '' },
    stdio: 'ignore',
    detached: true,
  })
  try {
    for (let attempt = 0; attempt < 400; attempt++) {
      if ((await fetch(`${at}/healthz`).catch(() => null))?.ok) break
      await new Promise((go) => setTimeout(go, 50))
    }
    const post = async (path: string, body: unknown): Promise<Response> =>
      fetch(at + path, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })
    const measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }
    const who = { name: 'Odalys', initials: 'O.', role: 'owner', measures }
    const { workshop, person } = await (await post('/api/workshops', { name: 'Shop', home: false, person: who })).json()
    const station = fresh()
    await post('/api/stations', { id: station, workshop: workshop.id, name: 'Tablet' })
    const reading = { value: 0.1, measure: 'm', instrument: null, how: null }
    const id = fresh()
    const line = { id, stream: `unit:${fresh()}`, stationNo: 1, person: person.id, madeAt: new Date().toISOString() }
    const body = { what: 'free-length', leg: null, phase: 'received', reading }
    const entry = {
      is: 'entry',
      made: 'online',
      ...line,
      kind: 'measured',
      version: 1,
      seen: 0,
      standing: { mode: 'now' },
      body,
    }
    const answer = await post(`/api/workshops/${workshop.id}/deliveries`, { station, items: [entry], texts: [] })
    expect(await answer.json()).toMatchObject({ results: [{ id, status: 'written' }], deliveredNo: 1 })
  } finally {
    if (server.pid !== undefined) process.kill(-server.pid, 'SIGKILL')
    await once(server, 'exit')
  }
  const lines = readFileSync(trace, 'utf8').split('\n')
  // The last answer of the run is the delivery's.
  const sent = lines.findLastIndex((call) => /(write|writev|sendto|sendmsg)\(.*HTTP\/1\.1 200/.test(call))
  const written = lines.findLastIndex((call, index) => index < sent && /pwrite64\(.*book\.sqlite-wal/.test(call))
  const synced = lines.findLastIndex(
    (call, index) => index < sent && /f(data)?sync\(.*book\.sqlite-wal.*= 0/.test(call),
  )
  expect(sent).toBeGreaterThan(0)
  expect(written).toBeGreaterThan(0)
  expect(synced).toBeGreaterThan(written)
}, 120_000)
