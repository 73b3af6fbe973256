import { randomBytes } from 'node:crypto'
import { get } from 'node:http'
import { newestVersion, type RegisterChange } from '@legwork/contract'
import { newId } from '@legwork/trade'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ApiJob, digestOf } from '../job-for-tests.ts'
import { headers, Shop } from '../shop-for-tests.ts'
import { everyDatabase } from '../store/every-database.ts'

const [asked, note, late] = ['the fork knocks when Mateus brakes', 'Mateus calls on Monday', 'Mateus has called']
const shared = 'the 50 h are up'
const textsOf = (...texts: string[]) => texts.map((text) => ({ digest: digestOf(text), text }))

describe.each(everyDatabase)('a rider who was removed, on $kind', (database) => {
  let shop: Shop
  let job: ApiJob
  let other: ApiJob
  let rider: {
    id: string
    name: string
    mass: null
    posture: null
    frontShare: null
    hoursPerWeek: null
    contact: null
  }
  let position = 0

  beforeAll(async () => {
    shop = await Shop.open(database, new Date('2026-05-02T08:00:00Z'))
    const none = { mass: null, posture: null, frontShare: null, hoursPerWeek: null, contact: null }
    rider = { id: newId(shop.now.getTime(), randomBytes(10)), name: 'Mateus Corvalho-Wynd', ...none }
    const desk = await shop.station()
    await shop.post(desk, [shop.register(1, 'riders', rider)], textsOf(asked, note, shared))
    job = await ApiJob.open(shop, 'U01', (sheet) => sheet, { rider: rider.id, asked })
    await job.put('noted', { text: digestOf(note), photos: [] })
    // The same words in the job of somebody else.
    await job.put('noted', { text: digestOf(shared), photos: [] })
    other = await ApiJob.open(shop, 'U02', (sheet) => sheet, { rider: shop.freshId(), asked: shared })
    const read = await shop.app.inject({ url: `/api/workshops/${shop.workshop}/entries?after=0`, headers })
    position = read.json().position
    const url = `/api/workshops/${shop.workshop}/riders/${rider.id}/erase`
    const payload = { person: shop.owner, station: desk }
    expect((await shop.app.inject({ method: 'POST', url, headers, payload })).json()).toMatchObject({ texts: 2 })
  })
  afterAll(() => shop.close())

  it('a station that was away hears which texts went along, with the removal itself', async () => {
    const address = await shop.app.listen({ port: 0, host: '127.0.0.1' })
    const heard = await new Promise<RegisterChange>((resolve, reject) => {
      const asking = get(`${address}/api/workshops/${shop.workshop}/changes?after=${position}`, (answer) => {
        let said = ''
        answer.on('data', (part: Buffer) => {
          said += part.toString()
          const line = /^event: register\ndata: (.+)$/m.exec(said)?.[1]
          if (!line) return
          asking.destroy()
          resolve(JSON.parse(line))
        })
      })
      asking.on('error', reject)
    })
    expect(heard.body).toMatchObject({ id: rider.id, name: 'removed on 2026-05-02', removedOn: shop.now.toISOString() })
    const removedOn = shop.now.toISOString()
    const gone = [asked, note].map((text) => ({ digest: digestOf(text), text: null, removedOn }))
    expect(heard.gone).toHaveLength(2)
    expect(heard.gone).toEqual(expect.arrayContaining(gone))
  })

  it('takes no words along that another rider’s job says too', async () => {
    const url = `/api/workshops/${shop.workshop}/streams/${other.stream}/entries?after=0`
    const { texts } = (await shop.app.inject({ url, headers })).json()
    expect(texts).toMatchObject([{ digest: digestOf(shared), text: shared }])
  })

  it('is not written anew by a station that had not heard of it', async () => {
    const station = await shop.station()
    const change = { ...rider, contact: '0100 2000' }
    const { results } = await shop.deliver(station, [
      shop.register(1, 'riders', change, { made: 'offline', seenVersion: 1 }),
    ])
    expect(results[0]).toMatchObject({ status: 'refused', errors: [{ code: 'rider.removed' }] })
    const { riders } = (await shop.app.inject({ url: `/api/workshops/${shop.workshop}/registers`, headers })).json()
    expect(JSON.stringify(riders)).not.toContain('Corvalho')
  })

  it('a line that comes late is kept, and its words are not', async () => {
    const station = await shop.station()
    const line = shop.entry(
      1,
      job.stream,
      'noted',
      { text: digestOf(late), photos: [digestOf('a photo')] },
      { made: 'offline', version: newestVersion('noted') },
    )
    const answer = await shop.post(station, [line], textsOf(late))
    expect(answer.json().results[0]).toMatchObject({ status: 'written' })
    const url = `/api/workshops/${shop.workshop}/streams/${job.stream}/entries?after=0`
    const { entries, texts } = (await shop.app.inject({ url, headers })).json()
    expect(JSON.stringify(entries)).toContain(digestOf(late))
    const there = texts.filter(({ text }: { text: string | null }) => text !== null)
    expect(there.map(({ text }: { text: string }) => text)).toEqual([shared])
    const photo = `/api/workshops/${shop.workshop}/photos/${digestOf('a photo')}`
    expect((await shop.app.inject({ url: photo, headers })).statusCode).toBe(410)
  })
})
