/** A whole job worked through the API, and what its papers say of it. */
import { execFileSync } from 'node:child_process'
import { pumpReading } from '@legwork/engine'
import type { Reading, Rider } from '@legwork/trade'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ApiJob, digestOf } from '../job-for-tests.ts'
import { headers, Shop } from '../shop-for-tests.ts'
import { everyDatabase } from '../store/every-database.ts'

const psi = 6894.757293168
const asked = 'dives under the brake, and the 50 h are up'
const reason = 'the ring was gone when it came in'
const read = (value: number, measure: Reading['measure'], instrument: string | null = null): Reading => ({
  value,
  measure,
  instrument,
  how: measure === 'Pa' ? 'attached' : null,
})

const [sqlite] = everyDatabase
if (!sqlite) throw new Error('no database')

describe('a whole job on paper', { timeout: 60_000 }, () => {
  let shop: Shop
  let job: ApiJob
  let rider: Rider

  const paper = async (name: string) => {
    const { workshop, app } = shop
    return app.inject({ url: `/api/workshops/${workshop}/jobs/${job.stream}/${name}`, headers })
  }
  // Read by poppler, a program outside the project.
  const textOf = async (name: string, ...rest: string[]) => {
    const { rawPayload } = await paper(name)
    return execFileSync('pdftotext', [...rest, '-', '-'], { input: rawPayload })
      .toString()
      .replace(/\s+/g, ' ')
  }

  beforeAll(async () => {
    shop = await Shop.open(sqlite, new Date('2026-05-02T08:00:00Z'))
    const id = shop.freshId()
    rider = {
      id,
      name: 'Mateus Corvalho-Wynd',
      mass: 82,
      posture: 'standing',
      frontShare: 0.42,
      hoursPerWeek: 5,
      contact: null,
      pump: { offset: 0.04, hoseVolume: 5e-6 },
    }
    const pump = shop.freshId()
    const gauge = { hoseVolume: 5e-6, offset: 0, resolution: psi }
    const texts = [asked, reason, 'Mateus'].map((text) => ({ digest: digestOf(text), text }))
    const desk = await shop.station()
    await shop.post(
      desk,
      [
        shop.register(1, 'riders', rider),
        shop.register(2, 'instruments', { id: pump, name: 'P1', note: null, kind: 'pump', ...gauge }),
      ],
      texts,
    )
    job = await ApiJob.open(shop, 'U01', (sheet) => sheet, { rider: id, asked })
    await job.planned(['lower-legs'], ['air-spring'])
    await job.workUntil('foot-off', 88 * psi)
    await job.tick('foot-off', 'left', { reading: read(8e-6, 'm³') })
    await job.tick('foot-off', 'right', { reading: read(7e-6, 'm³') })
    await job.measure('friction', read(21, 'N'), { phase: 'received' })
    await job.workUntil(null, 88 * psi)
    await job.put('gate-waived', { gate: 'R10', reason: digestOf(reason) })
    const [made, standing] = [
      { made: 'offline' as const },
      { mode: 'late' as const, doneAt: '2026-05-01T09:00:00.000Z' },
    ]
    await job.measure('friction', read(14, 'N'), { ...made, standing })
    await job.measure('free-length', read(0.165, 'm'))
    await job.measure('leak-down-start', read(88 * psi, 'Pa', pump), { after: 20 })
    await job.measure('leak-down-end', read(86 * psi, 'Pa', pump), { after: 24 * 60 })
    await job.put('sag-measured', { fromAbove: 0.028, fromBelow: 0.032, instrument: null })
    await job.put('trail-said', { altitude: 1800, temperature: 281.15 })
    const clicks = { rebound: 8, compression: 12 }
    await job.put('setting-written', { pressure: 88 * psi, temperature: 293.15, pump, spacers: 1, clicks })
    await job.putBack()
    await job.handOver()
    await shop.app.inject({
      method: 'PUT',
      url: `/api/workshops/${shop.workshop}/letterhead`,
      headers,
      payload: {
        name: 'Quernfold Suspension Bench',
        address: 'Ardenmoss End, Quernfold Valley',
        phone: '0100 2000',
        terms: 'Come back free of charge within 60 days for oil at a wiper or foot, a knock, or pressure that goes.',
      },
    })
  })
  afterAll(() => shop.close())

  it('the hand-over page has all that a good sheet has', async () => {
    const said = await textOf('hand-over.pdf')
    for (const part of [
      ...['Quernfold Suspension Bench', 'Ardenmoss End, Quernfold Valley', '0100 2000', 'Handed over by Odalys'],
      ...['Mateus Corvalho-Wynd', '82 kg with kit, standing', asked, '88 psi', '20 % of the stroke'],
      ...['8 ml of 10 ml', '7 ml of 10 ml', 'wipers and foam rings', '5.5 N·m', '21 N → 14 N'],
      ...['30 to 60 riding hours', 'You said no to it on 2 May 2026: Air spring', 'Rights that the law gives you'],
      ...[
        'Axle tight',
        'Front brake bites',
        'After the first ride, check 88 psi again',
        'collected by: Mateus, 3 May 2026',
      ],
    ])
      expect(said).toContain(part)
    expect(execFileSync('pdfinfo', ['-'], { input: (await paper('hand-over.pdf')).rawPayload }).toString()).toMatch(
      /Pages:\s+1\n/,
    )
  })

  it('a gate passed over is named with who passed it and why; a late line with when it was done', async () => {
    const said = await textOf('hand-over.pdf')
    expect(said).toContain(`“Drain per leg, read it” was passed over by Odalys on 2 May 2026, because: ${reason}`)
    expect(said).toMatch(/Done 1 May 2026, entered later: Friction/)
  })

  it('says what the setting becomes on the trail, and what the rider’s own pump shows of it', async () => {
    const said = await textOf('hand-over.pdf', '-layout')
    // ICAO standard atmosphere, Doc 7488: 1,800 m is 81,494 Pa. By hand: (606,739 + 101,325)·281.15/293.15 − 81,494 =
    // 597,585 Pa, 87 psi.
    expect(said).toMatch(/at 1,?800 m and 8 °C your gauge shows\s+87 psi/)
    // By hand, U01's chamber less its spacer 187 ml, hose 5 ml, at constant temperature on absolute pressure, the hose
    // full of outside air: (606,739·187 + 0·5)/192 = 590,939 Pa; 4 % too high is 614,577 Pa, 89 psi.
    expect(
      Math.round((pumpReading({ volume: 187e-6, hoseVolume: 5e-6, pressure: 88 * psi }).reading * 1.04) / psi),
    ).toBe(89)
    expect(said).toMatch(/your own pump, put on here, shows\s+89 psi/)
  })

  it('a line that came in against a gate is named, with what was decided about it', async () => {
    const first = job
    job = await (await ApiJob.open(shop, 'U01')).planned()
    const { id } = await job.try('handed-over', { receivedBy: digestOf('Mateus'), initials: null }, { made: 'offline' })
    expect(await textOf('hand-over.pdf')).toMatch(
      /Entered without the network, against “[^”]+”: .+ Nobody has decided yet\./,
    )
    await job.put('ruled', { entry: id, ruling: 'stands', reason: digestOf(reason) })
    expect(await textOf('hand-over.pdf')).toContain('It was decided that it stands.')
    job = first
  })

  it('the label carries no name of the rider, in no place of it', async () => {
    const said = await textOf('label.pdf')
    for (const part of ['88 psi', 'at 20 °C', 'rebound 8', 'J01', 'next at 30 to 60 riding hours'])
      expect(said).toContain(part)
    const all = `${said}${execFileSync('pdfinfo', ['-'], { input: (await paper('label.pdf')).rawPayload })}`
    for (const name of rider.name.split(/[\s-]/)) expect(all).not.toContain(name)
  })

  it('the start card gives each mass its pressure, for the bike that is named', async () => {
    const said = await textOf('start-card.pdf', '-layout')
    const pressures = [...said.matchAll(/(\d+) kg (\d+) psi/g)].map(([, mass, psis]) => [Number(mass), Number(psis)])
    expect(pressures.length).toBeGreaterThan(10)
    expect(said).toContain('a head angle of 65°')
    // A flatter fork leans further from the load: less goes along the leg, by sin 60° ÷ sin 65°, so it takes less air.
    const flatter = await textOf('start-card.pdf?headAngle=60', '-layout')
    const at = (text: string, mass: number) => Number(new RegExp(`${mass} kg (\\d+) psi`).exec(text)?.[1])
    expect(at(flatter, 75)).toBeLessThan(at(said, 75))
    expect((await paper('start-card.pdf?headAngle=20')).statusCode).toBe(422)
    expect(said).not.toContain('Corvalho')
  })

  it('the notice of a job that a person stopped says why in their words', async () => {
    const stopped = await ApiJob.open(shop, 'U02')
    await stopped.put('stopped', { gate: null, why: digestOf(reason) })
    const { workshop, app } = shop
    const url = `/api/workshops/${workshop}/jobs/${stopped.stream}/notice.pdf`
    const { rawPayload } = await app.inject({ url, headers })
    expect(execFileSync('pdftotext', ['-', '-'], { input: rawPayload }).toString()).toContain(reason)
  })

  it('every font of every paper is in it', async () => {
    for (const name of ['hand-over.pdf', 'label.pdf', 'start-card.pdf']) {
      const fonts = execFileSync('pdffonts', ['-'], { input: (await paper(name)).rawPayload })
        .toString()
        .trim()
      const lines = fonts.split('\n').slice(2)
      expect(lines.length).toBeGreaterThan(0)
      for (const font of lines) expect(font).toMatch(/\byes\s+yes\s+yes\b/)
    }
  })
})
