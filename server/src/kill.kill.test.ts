/** The server killed with SIGKILL again and again while four stations write: what was acknowledged is there, once. */
import { type ChildProcess, spawn } from 'node:child_process'
import { randomBytes } from 'node:crypto'
import { once } from 'node:events'
import { mkdtempSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import type { DeliveryAnswer, EntriesAnswer } from '@legwork/contract'
import { newId } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { everyDatabase } from './store/every-database.ts'

const kills = Number(process.env.LEGWORK_KILLS ?? 10)
const writers = 4
const root = resolve(import.meta.dirname, '../..')
const fresh = (): string => newId(Date.now(), randomBytes(10))

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1')
  await once(probe, 'listening')
  const address = probe.address()
  probe.close()
  await once(probe, 'close')
  if (typeof address !== 'object' || address === null) throw new Error('no port')
  return address.port
}

async function start(data: string, port: number, url: string | null): Promise<ChildProcess> {
  const child = spawn(process.execPath, [join(root, 'cli/dist/legwork.js'), 'start'], {
    env: {
      ...process.env,
      LEGWORK_DATA: data,
      LEGWORK_PORT: String(port),
      ...(url === null ? {} : { LEGWORK_DATABASE: url }),
    },
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  let said = ''
  child.stderr?.on('data', (part) => {
    said += part
  })
  for (let attempt = 0; attempt < 400; attempt++) {
    if (child.exitCode !== null) throw new Error(`the server ended: ${said}`)
    const answer = await fetch(`http://127.0.0.1:${port}/healthz`).catch(() => null)
    if (answer?.ok) return child
    await new Promise((go) => setTimeout(go, 25))
  }
  throw new Error(`the server did not come up: ${said}`)
}

describe.each(everyDatabase)('kill -9 on $kind', ({ create }) => {
  it(`${kills} times with ${writers} writers: every acknowledged entry is there, in order, none twice`, async () => {
    const database = await create()
    const data = mkdtempSync(join(tmpdir(), 'legwork-kill-'))
    const port = await freePort()
    const at = `http://127.0.0.1:${port}`
    const post = async (path: string, body: unknown): Promise<Response> =>
      fetch(at + path, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })
    let server = await start(data, port, database.url)
    const measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }
    const opened = await post('/api/workshops', {
      name: 'Shop',
      home: false,
      person: { name: 'Odalys', initials: 'O.', role: 'owner', measures },
    })
    const { workshop, person } = await opened.json()
    const acknowledged = new Map<string, string[]>()
    let ended = false
    const stations = Array.from({ length: writers }, fresh)
    for (const id of stations) await post('/api/stations', { id, workshop: workshop.id, name: 'Tablet' })
    const write = async (station: string): Promise<void> => {
      const mine: string[] = []
      acknowledged.set(station, mine)
      const stream = `unit:${fresh()}`
      for (let stationNo = 1; !ended; stationNo++) {
        const madeAt = new Date().toISOString()
        const line = {
          id: fresh(),
          stream,
          stationNo,
          person: person.id,
          madeAt,
          kind: 'measured',
          version: 1,
          seen: 0,
        }
        const reading = { value: stationNo / 1000, measure: 'm', instrument: null, how: null }
        const body = { what: 'free-length', leg: null, phase: 'received', reading }
        const items = [{ is: 'entry', made: 'offline', ...line, standing: { mode: 'now' }, body }]
        // The same line again until it is answered: an answer may be lost with the server.
        for (;;) {
          const answer = await post(`/api/workshops/${workshop.id}/deliveries`, { station, items, texts: [] }).catch(
            () => null,
          )
          if (answer && answer.status >= 400 && answer.status < 500) throw new Error(await answer.text())
          const read: DeliveryAnswer | null = answer?.ok ? await answer.json().catch(() => null) : null
          if (read) {
            expect(['written', 'already']).toContain(read.results[0]?.status)
            mine.push(line.id)
            break
          }
          await new Promise((go) => setTimeout(go, 20))
        }
      }
    }
    const hands = stations.map(write)
    for (let kill = 0; kill < kills; kill++) {
      await new Promise((go) => setTimeout(go, 40 + ((kill * 37) % 120)))
      const gone = once(server, 'exit')
      server.kill('SIGKILL')
      await gone
      server = await start(data, port, database.url)
    }
    ended = true
    await Promise.all(hands)
    const found: EntriesAnswer['entries'] = []
    for (let after = 0; ; ) {
      const answer: EntriesAnswer = await (
        await fetch(`${at}/api/workshops/${workshop.id}/entries?after=${after}&limit=2000`)
      ).json()
      found.push(...answer.entries)
      if (answer.entries.length < 2000) break
      after = answer.position
    }
    const gone = once(server, 'exit')
    server.kill('SIGKILL')
    await gone
    for (const [station, ids] of acknowledged) {
      expect(ids.length).toBeGreaterThan(0)
      expect(found.filter((entry) => entry.station === station).map((entry) => entry.id)).toEqual(ids)
    }
    expect(new Set(found.map((entry) => entry.id)).size).toBe(found.length)
    await database.drop()
  }, 600_000)
})
