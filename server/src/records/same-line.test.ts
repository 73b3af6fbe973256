/** Lines that come once more, lines whose number was used for something else, and gaps. */
import type { Registers } from '@legwork/trade'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Shop } from '../shop-for-tests.ts'
import { everyDatabase } from '../store/every-database.ts'

const used = { status: 409, errors: [{ code: 'delivery.number-used' }] }

describe.each(everyDatabase)('lines that come once more, on $kind', (database) => {
  let shop: Shop
  beforeAll(async () => {
    shop = await Shop.open(database)
  })
  afterAll(() => shop.close())

  const opening = (stationNo: number) =>
    shop.entry(stationNo, `job:${shop.freshId()}`, 'job-opened', {
      unit: shop.freshId(),
      rider: null,
      bike: null,
      visit: shop.freshId(),
      asked: null,
      spendAllowed: 80,
    })
  const pump = (name: string): Registers['instruments'] => ({
    id: shop.freshId(),
    name,
    note: null,
    kind: 'pump',
    hoseVolume: 5e-6,
    offset: 0,
    resolution: 6894,
  })

  it('an entry again changes nothing, whatever the order of its keys', async () => {
    const station = await shop.station()
    const item = opening(1)
    await shop.deliver(station, [item])
    const turned = { ...item, body: Object.fromEntries(Object.entries(Object(item.body)).reverse()) }
    expect((await shop.deliver(station, [turned])).results[0]).toMatchObject({ status: 'already', seq: 1 })
  })

  it.each([
    ['another person', () => ({ person: shop.freshId() })],
    ['another time', () => ({ madeAt: '2026-06-03T09:59:59.999Z' })],
    ['another standing', () => ({ standing: { mode: 'late', doneAt: '2026-06-03T09:00:00.000Z' } as const })],
    ['another place in the book', () => ({ seen: 3 })],
    ['another stream', () => ({ stream: `job:${shop.freshId()}` })],
    ['another id', () => ({ id: shop.freshId() })],
    ['another body', () => ({ body: { ...Object(opening(1).body), spendAllowed: 81 } })],
  ])('an entry under the same number with %s is an error, and nothing is written', async (_what, other) => {
    const station = await shop.station()
    const item = opening(1)
    await shop.deliver(station, [item])
    const answer = await shop.post(station, [{ ...item, ...other() }, opening(2)])
    expect(answer.json()).toMatchObject(used)
    expect((await shop.deliver(station, [opening(2)])).deliveredNo).toBe(2)
  })

  it('a register line again changes nothing, another body or person under its number is an error', async () => {
    const station = await shop.station()
    const item = shop.register(1, 'instruments', pump('P1'))
    expect((await shop.deliver(station, [item])).results[0]?.status).toBe('written')
    expect((await shop.deliver(station, [item])).results[0]?.status).toBe('already')
    expect((await shop.post(station, [{ ...item, body: { ...Object(item.body), name: 'P2' } }])).json()).toMatchObject(
      used,
    )
    expect((await shop.post(station, [{ ...item, person: shop.freshId() }])).json()).toMatchObject(used)
    expect((await shop.post(station, [{ ...item, register: 'riders' }])).json()).toMatchObject(used)
  })

  it('a register line that is stale online is refused, and nothing changes; from offline it is written over', async () => {
    const station = await shop.station()
    const body = pump('P1')
    await shop.deliver(station, [
      shop.register(1, 'instruments', body),
      shop.register(2, 'instruments', { ...body, name: 'P1, new hose' }, { seenVersion: 1 }),
    ])
    const stale = shop.register(3, 'instruments', { ...body, name: 'P1, old hose' }, { seenVersion: 1 })
    const refused = (await shop.deliver(station, [stale])).results[0]
    expect(refused).toMatchObject({
      status: 'refused',
      errors: [{ field: 'instruments.version', code: 'register.stale', came: '1', allowed: '2' }],
    })
    // Its number is used up, and the refusal remembered.
    expect((await shop.deliver(station, [stale])).results[0]).toEqual(refused)
    const nameNow = async () => {
      const row = shop.store.read.selectFrom('instruments').select('body').where('id', '=', body.id)
      return JSON.parse((await row.executeTakeFirstOrThrow()).body).name
    }
    expect(await nameNow()).toBe('P1, new hose')
    const over = shop.register(4, 'instruments', { ...body, name: 'P1, by hand' }, { seenVersion: 1, made: 'offline' })
    expect((await shop.deliver(station, [over])).results[0]).toMatchObject({ status: 'written', overtook: 2 })
    expect(await nameNow()).toBe('P1, by hand')
  })

  it('a gap in the middle of a delivery waits like one at its head: nothing of it is written', async () => {
    const station = await shop.station()
    const answer = await shop.post(station, [opening(1), opening(2), opening(4)])
    expect(answer.statusCode).toBe(409)
    expect(answer.json().errors[0]).toMatchObject({
      field: 'items.2.stationNo',
      code: 'delivery.gap',
      came: '4',
      allowed: '3',
    })
    expect((await shop.deliver(station, [opening(1)])).deliveredNo).toBe(1)
  })
})
