/** The line that other screens listen on: what is new comes as it is written, and a broken line resumes where it was. */
import type { Id } from '@legwork/trade'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Shop } from '../shop-for-tests.ts'
import { everyDatabase } from '../store/every-database.ts'

interface Heard {
  id: number
  event: string
  data: { position: number; entry?: { id: Id }; register?: string }
}

function heardIn(block: string): Heard | null {
  const field = (name: string): string | undefined => new RegExp(`^${name}: (.*)$`, 'm').exec(block)?.[1]
  const [id, event, data] = [field('id'), field('event'), field('data')]
  return id && event && data ? { id: Number(id), event, data: JSON.parse(data) } : null
}

/** Listens until so many events have come, then breaks the line. */
async function listen(url: string, count: number, lastEventId?: number): Promise<Heard[]> {
  const stop = new AbortController()
  const headers: Record<string, string> = lastEventId === undefined ? {} : { 'last-event-id': String(lastEventId) }
  const answer = await fetch(url, { headers, signal: stop.signal })
  expect(answer.headers.get('content-type')).toBe('text/event-stream')
  const heard: Heard[] = []
  let text = ''
  const reader = answer.body?.pipeThrough(new TextDecoderStream()).getReader()
  while (reader && heard.length < count) {
    const { value, done } = await reader.read()
    if (done) break
    const blocks = (text + value).split('\n\n')
    text = blocks.pop() ?? ''
    for (const block of blocks) {
      const one = heardIn(block)
      if (one) heard.push(one)
    }
  }
  stop.abort()
  return heard
}

describe.each(everyDatabase)('changes on $kind', (database) => {
  let shop: Shop
  let url: string
  beforeAll(async () => {
    shop = await Shop.open(database)
    const address = await shop.app.listen({ host: '127.0.0.1', port: 0 })
    url = `${address}/api/workshops/${shop.workshop}/changes`
  })
  afterAll(() => shop.close())

  const opening = (stationNo: number) =>
    shop.entry(stationNo, `job:${shop.freshId()}`, 'job-opened', {
      unit: shop.freshId(),
      rider: null,
      bike: null,
      visit: shop.freshId(),
      asked: null,
      spendAllowed: null,
    })

  it('come while the line is open, and after a break from the position that was heard last: none twice, none missing', async () => {
    const station = await shop.station()
    const lines = [1, 2, 3, 4, 5, 6].map(opening)
    const written = (from: number, to: number) => shop.deliver(station, lines.slice(from, to))
    await written(0, 1)
    // The owner's own register line stands before these.
    const open = listen(`${url}?after=1`, 3)
    await written(1, 3)
    const before = await open
    expect(before.map((one) => one.data.entry?.id)).toEqual(lines.slice(0, 3).map((line) => line.id))
    await written(3, 5) // while nobody listens
    const resumed = listen(`${url}?after=1`, 3, before[1]?.id)
    const after = await resumed
    // The header goes before the address: the browser sends it when it takes the line up again.
    expect(after.map((one) => one.data.entry?.id)).toEqual(lines.slice(2, 5).map((line) => line.id))
    expect(after.map((one) => one.id)).toEqual(after.map((one) => one.data.position))
    const last = listen(url, 1, after[2]?.id)
    await new Promise((done) => setTimeout(done, 50))
    await written(5, 6)
    expect((await last).map((one) => one.data.entry?.id)).toEqual([lines[5]?.id])
  })

  it('tell of register lines in the same order', async () => {
    const station = await shop.station()
    const at = (
      await shop.app.inject({ url: `/api/workshops/${shop.workshop}/jobs`, headers: { host: '127.0.0.1' } })
    ).json().position
    const body = { id: shop.freshId(), name: 'T1', note: null, kind: 'tape', resolution: 0.001 } as const
    await shop.deliver(station, [opening(1), shop.register(2, 'instruments', body), opening(3)])
    const heard = await listen(`${url}?after=${at}`, 3)
    expect(heard.map((one) => one.event)).toEqual(['entry', 'register', 'entry'])
    expect(heard.map((one) => one.id)).toEqual([at + 1, at + 2, at + 3])
  })

  it('tell what the workshop is called when the line opens, and again when that changes', async () => {
    const stop = new AbortController()
    const answer = await fetch(url, { signal: stop.signal })
    const reader = answer.body?.pipeThrough(new TextDecoderStream()).getReader()
    let text = ''
    const told = async (name: string) => {
      while (reader && !text.includes(name)) text += (await reader.read()).value ?? ''
      return [...text.matchAll(/^event: workshop\ndata: (.+)$/gm)].map(([, data = '']) => JSON.parse(data).name)
    }
    expect(await told('"Shop"')).toEqual(['Shop'])
    const payload = { name: 'Bench at the ford', address: null, phone: null, terms: null }
    const changed = await shop.app.inject({
      method: 'PUT',
      url: `/api/workshops/${shop.workshop}/letterhead`,
      headers: { host: '127.0.0.1' },
      payload,
    })
    expect(changed.json().workshop).toMatchObject(payload)
    expect(await told('Bench at the ford')).toEqual(['Shop', 'Bench at the ford'])
    stop.abort()
  })
})
