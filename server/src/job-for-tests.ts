/** A job written through the API for tests: one delivery a line, read back and added up as a station does. */
import { createHash } from 'node:crypto'
import { type DeliveryResult, type EntriesAnswer, newestVersion } from '@legwork/contract'
import {
  chassisParts,
  demoSheet,
  demoUnits,
  type EntryBodies,
  type EntryKind,
  type Id,
  type JobContext,
  type JobState,
  type Leg,
  planSteps,
  type Reading,
  reduceJob,
  type Sheet,
  type Stream,
  traitsOf,
} from '@legwork/trade'
import { WrittenJob, waitFor } from '@legwork/trade/journal/written-job.ts'
import { type EntryLine, headers, type Shop } from './shop-for-tests.ts'

/** The digest of a text; the entry is taken without the text. */
export const digestOf = (text: string): string => createHash('sha256').update(text).digest('hex')

export type How = Partial<Pick<EntryLine, 'made' | 'clock' | 'madeAt' | 'standing' | 'person' | 'seen' | 'version'>> & {
  station?: Id
  /** Minutes after the last line, by the server's clock. */
  after?: number
}

export class ApiJob {
  readonly shop: Shop
  readonly sheet: Sheet
  readonly unit: Id
  readonly stream: Stream
  readonly station: Id
  /** How many lines each station has delivered. */
  readonly #numbers = new Map<Id, number>()
  /** For ticks that say everything they should. */
  readonly #ticks: WrittenJob

  private constructor(shop: Shop, sheet: Sheet, station: Id) {
    this.shop = shop
    this.sheet = sheet
    this.station = station
    this.unit = shop.freshId()
    this.stream = `job:${shop.freshId()}`
    this.#ticks = new WrittenJob(sheet)
  }

  /** The demo unit's sheet and the unit in the registers, and a job opened on it. */
  static async open(
    shop: Shop,
    key: string,
    change: (sheet: Sheet) => Sheet = (sheet) => sheet,
    of: { rider: Id; asked: string } | null = null,
  ): Promise<ApiJob> {
    const demo = demoUnits.find((one) => one.key === key)
    if (!demo) throw new Error(`no demo unit ${key}`)
    const job = new ApiJob(shop, change(demoSheet(demo, shop.freshId())), await shop.station())
    const { unit, sheet, station } = job
    const { kind, description } = demo
    await shop.deliver(station, [
      shop.register(1, 'sheets', sheet),
      shop.register(2, 'units', {
        id: unit,
        label: key,
        kind,
        description,
        serial: null,
        rider: null,
        bike: null,
        sheet: sheet.id,
      }),
    ])
    job.#numbers.set(station, 2)
    const visit = shop.freshId()
    const asked = of ? digestOf(of.asked) : null
    await job.put('job-opened', { unit, rider: of?.rider ?? null, bike: null, visit, asked, spendAllowed: null })
    return job
  }

  #next(station: Id): number {
    const no = (this.#numbers.get(station) ?? 0) + 1
    this.#numbers.set(station, no)
    return no
  }

  async try<K extends EntryKind>(kind: K, body: EntryBodies[K], how: How = {}): Promise<DeliveryResult> {
    const { shop } = this
    const { station = this.station, after = 1, ...own } = how
    shop.now = new Date(shop.now.getTime() + after * 60_000)
    const line = shop.entry(this.#next(station), this.stream, kind, body, { version: newestVersion(kind), ...own })
    const [result] = (await shop.deliver(station, [line])).results
    if (!result) throw new Error('no result')
    return result
  }

  /** @throws where it is refused */
  async put<K extends EntryKind>(kind: K, body: EntryBodies[K], how: How = {}): Promise<DeliveryResult> {
    const result = await this.try(kind, body, how)
    if (result.status !== 'written') throw new Error(`${kind}: ${JSON.stringify(result.errors)}`)
    return result
  }

  tick(
    step: string,
    leg: Leg | null = null,
    how: How & Partial<EntryBodies['step-done']> = {},
  ): Promise<DeliveryResult> {
    const { reading, wrenchSet, saidSo, ...line } = how
    const said = {
      ...(reading === undefined ? {} : { reading }),
      ...(wrenchSet === undefined ? {} : { wrenchSet }),
      ...(saidSo === undefined ? {} : { saidSo }),
    }
    return this.try('step-done', this.#ticks.tickBody(step, leg, said), line)
  }

  measure(what: string, reading: Reading, how: How & { leg?: Leg; phase?: 'received' | 'during' | 'done' } = {}) {
    const { leg = null, phase = 'done', ...line } = how
    return this.try('measured', { what, leg, phase, reading }, line)
  }

  async planned(services: readonly string[] = ['lower-legs'], declined: readonly string[] = []): Promise<this> {
    const { sheet } = this
    const kept = { value: 0.1, measure: 'm', instrument: this.shop.freshId(), how: null } as const
    for (const item of traitsOf(sheet.kind, sheet).snapshot)
      await this.put('snapshot-kept', { item, reading: kept, photos: [], notKnownBecause: null })
    for (const part of chassisParts) await this.put('chassis-checked', { part, verdict: 'sound', found: null })
    const steps = [...planSteps(services, sheet)]
    const agreed: Pick<EntryBodies['plan-agreed'], 'answer' | 'declined' | 'answeredBy'> = {
      answer: declined.length > 0 ? 'partly' : 'yes',
      declined: [...declined],
      answeredBy: 'rider',
    }
    await this.put('plan-agreed', {
      services: [...services],
      sheet: { id: sheet.id, revision: sheet.revision },
      steps,
      ...agreed,
    })
    return this
  }

  setUp(pressure: number): Promise<DeliveryResult> {
    const [riderMass, frontShare, sag, load] = [82, 0.42, 0.03, 351]
    const air = { temperature: 293.15, ambient: 101_325 }
    return this.put('set-up-worked-out', {
      pressure,
      band: [pressure, pressure],
      ...air,
      riderMass,
      frontShare,
      sag,
      load,
      spacers: 1,
    })
  }

  write(pressure: number, how: How = {}): Promise<DeliveryResult> {
    const clicks = { rebound: 8, compression: null }
    return this.try('setting-written', { pressure, temperature: 293.15, pump: null, spacers: 1, clicks }, how)
  }

  /** Works through the plan in its order up to a step that is left out; air by the worked-out pressure. */
  async workUntil(last: string | null, pressure: number): Promise<void> {
    const share: Record<string, number> = { 'fill-quarter': 0.25, 'fill-half': 0.5, 'fill-target': 1 }
    for (const planned of (await this.state()).steps) {
      if (planned.step === last) return
      const part = share[planned.step]
      if (planned.step === 'fill-quarter' && !(await this.state()).setUp) await this.setUp(pressure)
      for (const leg of planned.legs ?? [null]) {
        if (planned.done[leg ?? 'once']) continue
        const filled = { value: pressure * (part ?? 0), measure: 'Pa', instrument: null, how: 'pumped' } as const
        const after = waitFor(planned.step)
        const result = await this.tick(planned.step, leg, part ? { reading: filled, after } : { after })
        if (result.status !== 'written') throw new Error(`${planned.step}: ${JSON.stringify(result.errors)}`)
      }
    }
  }

  async putBack(): Promise<void> {
    for (const item of traitsOf(this.sheet.kind, this.sheet).putBack)
      await this.put('put-back', { item, reading: null })
  }

  handOver(how: How = {}): Promise<DeliveryResult> {
    return this.try('handed-over', { receivedBy: digestOf('Mateus'), initials: null }, how)
  }

  /** As a station sees it: entries and registers as the API gives them, added up. */
  async state(): Promise<JobState> {
    const { shop, stream } = this
    const get = async (path: string) =>
      (await shop.app.inject({ url: `/api/workshops/${shop.workshop}${path}`, headers })).json()
    const { entries } = (await get(`/streams/${stream}/entries?after=0`)) as EntriesAnswer // by the route's contract
    const { sheets, units, people } = await get('/registers')
    const sheetAt: JobContext['sheetAt'] = (id, revision) =>
      sheets.map((line: { body: Sheet }) => line.body).find((one: Sheet) => one.id === id && one.revision === revision)
    return reduceJob(entries, {
      unit: units.find((line: { body: { id: Id } }) => line.body.id === this.unit)?.body ?? null,
      sheetAt,
      currentSheet: sheets.findLast((line: { body: Sheet }) => line.body.id === this.sheet.id)?.body ?? null,
      roleOf: (person) => people.find((line: { body: { id: Id } }) => line.body.id === person)?.body.role ?? null,
      now: shop.now.toISOString(),
    })
  }
}
