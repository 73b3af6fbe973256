/** Rests in the book: whose clock tells, what a clock that is wrong does, and entries of stations older than the clock. */
import type { Reading, StationClock } from '@legwork/trade'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ApiJob, digestOf } from '../job-for-tests.ts'
import { Shop } from '../shop-for-tests.ts'
import { everyDatabase } from '../store/every-database.ts'

const psi = 6894.757293168
const air: Reading = { value: 88 * psi, measure: 'Pa', instrument: null, how: 'pumped' }
const minute = 60_000

describe.each(everyDatabase)('rests on $kind', { timeout: 60_000 }, (database) => {
  let shop: Shop
  let boot: string
  beforeAll(async () => {
    shop = await Shop.open(database)
    boot = shop.freshId()
  })
  afterAll(() => shop.close())

  const reads = (minutes: number, of = boot): { clock: StationClock } => ({
    clock: { boot: of, reading: minutes * minute },
  })
  const start = 'leak-down-start'
  /** A job filled by a station whose clock reads 100 min. */
  async function filled(clock: { clock?: StationClock } = reads(100)): Promise<ApiJob> {
    const job = await (await ApiJob.open(shop, 'U01')).planned()
    await job.workUntil('fill-target', 88 * psi)
    await job.tick('fill-target', null, clock)
    return job
  }

  it('a clock comes back as it was written, and an entry of an older station has none', async () => {
    const job = await filled()
    const url = `/api/workshops/${shop.workshop}/streams/${job.stream}/entries?after=0`
    const { entries } = (await shop.app.inject({ url, headers: { host: '127.0.0.1' } })).json()
    expect(entries.at(-1).clock).toEqual({ boot, reading: 100 * minute })
    expect(entries.at(-2).clock).toBeNull()
  })

  it('one station’s monotonic time counts, whatever its time of day is set to', async () => {
    const job = await filled()
    // Two hours forward by the time of day, four minutes by the clock that goes on.
    const forward = new Date(shop.now.getTime() + 124 * minute).toISOString()
    const early = await job.measure(start, air, { after: 4, madeAt: forward, ...reads(104) })
    expect(early.errors[0]).toMatchObject({ code: 'gate.R22', allowed: expect.stringContaining('11 min to wait.') })
    expect((await job.measure(start, air, { after: 11, madeAt: forward, ...reads(115) })).status).toBe('written')
  })

  it('after a reload the server’s receipts count', async () => {
    const job = await filled()
    const again = shop.freshId()
    expect((await job.measure(start, air, { after: 14, ...reads(0.1, again) })).errors[0]?.code).toBe('gate.R22')
    expect((await job.measure(start, air, { after: 1, ...reads(1.1, again) })).status).toBe('written')
  })

  it('two clocks more than a minute apart tell nothing: it says so and is waited for again, by one clock alone', async () => {
    const job = await filled()
    const other = await shop.station()
    const clock = shop.freshId()
    const wrong = { station: other, madeAt: new Date(shop.now.getTime() + 110 * minute).toISOString() }
    const refused = await job.measure(start, air, { ...wrong, after: 20, ...reads(7, clock) })
    expect(refused.errors[0]).toMatchObject({
      code: 'gate.R22',
      allowed: expect.stringContaining('are 90 min apart, or it came late: nobody can say how long it has rested.'),
      next: 'Wait again: 15 min from now, by this tablet alone',
    })
    const { lastSeq } = await job.state()
    const body = { for: 'rest', rest: 'settle', until: null, why: null } as const
    await job.put('waiting', body, { ...wrong, seen: lastSeq, ...reads(8, clock) })
    expect((await job.state()).waiting).toMatchObject({ rest: 'settle' })
    expect((await job.measure(start, air, { ...wrong, after: 14, ...reads(22, clock) })).status).toBe('refused')
    expect((await job.measure(start, air, { ...wrong, after: 1, ...reads(23, clock) })).status).toBe('written')
    expect(await job.state()).toMatchObject({ waiting: null, facts: { leakDown: 'running' } })
  })

  it('foam rings soak by their station’s clock, by receipts after a reload, and by nothing on a clock that is wrong', async () => {
    const soaking = async (): Promise<ApiJob> => {
      const job = await (await ApiJob.open(shop, 'U01')).planned()
      await job.workUntil('seals-out', 88 * psi)
      await job.tick('seals-out', null, reads(100))
      await job.tick('clean', null, reads(101))
      return job
    }
    const own = await soaking()
    const early = await own.tick('seals-in', null, reads(103))
    expect(early.errors[0]).toMatchObject({ code: 'gate.R13', allowed: expect.stringContaining('2 min to wait.') })
    expect((await own.tick('seals-in', null, { after: 2, ...reads(105) })).status).toBe('written')
    const again = await soaking()
    const fresh = shop.freshId()
    expect((await again.tick('seals-in', null, reads(0, fresh))).status).toBe('refused')
    expect((await again.tick('seals-in', null, { after: 3, ...reads(3, fresh) })).status).toBe('written')
    const wrong = await soaking()
    const madeAt = new Date(shop.now.getTime() - 3 * 60 * minute).toISOString()
    const refused = await wrong.tick('seals-in', null, { after: 30, madeAt, station: await shop.station() })
    expect(refused.errors[0]).toMatchObject({ code: 'gate.R13', allowed: expect.stringContaining('nobody can say') })
    // From offline it is kept as it is, contested, and the job stops until a person decides.
    const kept = await wrong.tick('seals-in', null, { made: 'offline', madeAt, station: await shop.station() })
    expect(kept).toMatchObject({ status: 'written', contested: 'R13' })
    expect((await wrong.state()).state).toBe('stopped')
  })

  it('a line that comes late from offline is kept and contested; by its station’s own clock it stands', async () => {
    const late = await filled()
    const madeAt = new Date(shop.now.getTime() + 2 * minute).toISOString()
    const kept = await late.measure(start, air, { made: 'offline', madeAt, after: 90, ...reads(5, shop.freshId()) })
    expect(kept).toMatchObject({ status: 'written', contested: 'R22' })
    expect((await late.state()).state).toBe('stopped')
    const own = await filled()
    const then = new Date(shop.now.getTime() + 16 * minute).toISOString()
    const fine = await own.measure(start, air, { made: 'offline', madeAt: then, after: 90, ...reads(116) })
    expect(fine).toMatchObject({ status: 'written', contested: null })
  })

  it('a body of version 1 is lifted when it comes, and the same again is the same', async () => {
    const job = await ApiJob.open(shop, 'U01')
    const station = await shop.station()
    const why = digestOf('the rings soak')
    const old = { for: 'rest', until: null, why } as never // as a station of version 1 wrote it
    const line = shop.entry(1, job.stream, 'waiting', old, { version: 1 })
    expect((await shop.deliver(station, [line])).results[0]?.status).toBe('written')
    expect((await shop.deliver(station, [line])).results[0]?.status).toBe('already')
    expect((await job.state()).waiting).toMatchObject({ for: 'rest', rest: null, why })
    const newer = await shop.post(station, [{ ...line, stationNo: 2, id: shop.freshId(), version: 3 }])
    expect(newer.json().results[0].errors[0]).toMatchObject({ code: 'entry.version-unknown', allowed: '1 to 2' })
  })
})
