/** One story told: every act asked of the station's own rules, then of the API, and the two compared. */
import { type DeliveryResult, newestVersion } from '@legwork/contract'
import {
  type AnyBookEntry,
  type AnyEntry,
  type AnyEntryDraft,
  checkEntry,
  type Id,
  type JobContext,
  type JobState,
  reduceJob,
  type Sheet,
  type Stream,
} from '@legwork/trade'
import { WrittenJob, waitFor } from '@legwork/trade/journal/written-job.ts'
import type { EntryLine } from '../shop-for-tests.ts'
import { beginningOf, type ModelShop, type Written } from './job-shop.ts'
import type { Station, Subject } from './station.ts'
import type { Act, Story } from './story.ts'
import { writtenBy } from './written-by.ts'

const minute = 60_000

/** Where the station's own rules and the server's differed. */
export interface Disagreement {
  line: EntryLine
  station: string
  server: string
}

/** Minutes that careful hands wait before the next act. */
function careful({ blocked, step, item }: JobState['next']): number {
  if (blocked?.gate === 'R22') return 16
  if (item === 'leak-down-end') return 11
  return step ? waitFor(step) - 1 : 0
}

export class ToldJob implements Subject {
  readonly model: ModelShop
  readonly sheet: Sheet
  readonly stream: Stream
  readonly ticks: WrittenJob
  readonly book: AnyBookEntry[] = []
  readonly trueMinutes = new Map<Id, number>()
  readonly disagreements: Disagreement[] = []
  /** After every line that was written. */
  readonly onWritten: (job: ToldJob) => void
  readonly #context: Omit<JobContext, 'now'>
  readonly service: string

  private constructor(model: ModelShop, story: Story, onWritten: (job: ToldJob) => void) {
    const { sheet, context } = model.of(story.unit)
    this.model = model
    this.sheet = sheet
    this.#context = context
    this.service = story.unit === 'U08' ? 'lower-legs' : story.service
    this.stream = `job:${model.shop.freshId()}`
    this.ticks = new WrittenJob(sheet)
    this.onWritten = onWritten
  }

  static async tell(
    model: ModelShop,
    story: Story,
    stations: [Station, Station],
    onWritten: (job: ToldJob) => void,
  ): Promise<ToldJob> {
    const job = new ToldJob(model, story, onWritten)
    const [first, second] = stations
    await job.#begin(first, story)
    for (const act of story.before) await job.act(first, act, true)
    second.known = [...job.book]
    for (const { off, act } of story.apart) await job.act(off ? second : first, act, !off)
    await job.deliverKept(second)
    for (const act of story.after) await job.act(act.second ? second : first, act.act, true)
    return job
  }

  get now(): number {
    return this.model.shop.now.getTime()
  }

  /** The job as a station has it; without one, as the book has it. */
  state(of?: Station): JobState {
    const entries = of ? this.#entriesAt(of) : this.book
    return reduceJob(entries, {
      ...this.#context,
      now: new Date(this.now).toISOString(),
      ...(of ? { by: of.hands } : {}),
    })
  }

  #entriesAt(station: Station): readonly AnyEntry[] {
    // As a station holds what it has not sent: no place in the book yet.
    const own = station.kept.map(
      (line) => ({ ...line, workshop: '', station: station.id, seq: null, receivedAt: null }) as unknown as AnyEntry,
    )
    return [...station.known, ...own]
  }

  #wait(minutes: number): void {
    this.model.shop.now = new Date(this.now + minutes * minute)
  }

  async #begin(station: Station, story: Story): Promise<void> {
    const { unit } = this.model.of(story.unit)
    const opening: Written = {
      kind: 'job-opened',
      body: { unit, rider: null, bike: null, visit: this.model.shop.freshId(), asked: null, spendAllowed: null },
    }
    const lines = [opening, ...beginningOf(this.sheet, this.service, story.beginning)]
    // Told as from offline: these lines are in order, and need not be asked one by one.
    await this.#send(
      station,
      lines.map((line) => {
        if (line.kind === 'step-done') this.#wait(waitFor(line.body.step) - 1)
        return this.#line(station, line, 'offline')
      }),
    )
    for (const entry of this.book) if (entry.kind === 'step-done') station.hands = entry.person
  }

  #line(
    station: Station,
    { kind, body }: Written,
    made: 'online' | 'offline',
    standing: EntryLine['standing'] = { mode: 'now' },
  ): EntryLine {
    const { shop } = this.model
    shop.now = new Date(this.now + minute)
    station.no += 1
    const line = shop.entry(station.no, this.stream, kind, body, {
      made,
      standing,
      version: newestVersion(kind),
      person: station.hands,
      madeAt: new Date(this.now + station.off).toISOString(),
      clock: { boot: station.boot, reading: this.now - station.loadedAt },
      seen: station.known.at(-1)?.seq ?? 0,
    })
    this.trueMinutes.set(line.id, standing.mode === 'now' ? this.now / minute : Date.parse(standing.doneAt) / minute)
    return line
  }

  async #send(station: Station, lines: readonly EntryLine[]): Promise<readonly DeliveryResult[]> {
    const { results } = await this.model.shop.deliver(station.id, lines)
    for (const [index, result] of results.entries()) {
      const line = lines[index]
      if (!line || result.status !== 'written' || result.seq === null || result.receivedAt === null) continue
      const { is: _is, made: _made, ...draft } = line
      const place = {
        workshop: this.model.shop.workshop,
        station: station.id,
        seq: result.seq,
        receivedAt: result.receivedAt,
      }
      this.book.push({ ...draft, ...place } as unknown as AnyBookEntry) // the line's own kind and body
    }
    station.known = [...this.book]
    if (results.some(({ status }) => status === 'written')) this.onWritten(this)
    return results
  }

  async act(station: Station, act: Act, online: boolean): Promise<void> {
    const { shop } = this.model
    if (online) station.known = [...this.book]
    if (act.is === 'wait') this.#wait(act.minutes)
    if (act.is === 'set-clock') station.off = act.off * minute
    if (act.is === 'reload') Object.assign(station, { boot: shop.freshId(), loadedAt: this.now })
    const state = this.state(station)
    // Careful hands wait while the air settles, the rings soak, a leak-down runs.
    if (act.is === 'next') this.#wait(careful(state.next))
    const written = writtenBy(act, this, station, state)
    if (!written) return
    const before = this.now
    const standing =
      (act.is === 'tick' || act.is === 'keep') && act.late !== null
        ? ({ mode: 'late', doneAt: new Date(before - act.late * minute).toISOString() } as const)
        : undefined
    const line = this.#line(station, written, online ? 'online' : 'offline', standing)
    const check = this.#check(station, line, online, state)
    if (!online) {
      if (check.ok) station.kept.push(line)
      else station.no -= 1
      return
    }
    const [result] = await this.#send(station, [line])
    const asked = check.ok ? 'written' : check.code
    const answered =
      result?.status === 'refused' ? (result.errors[0]?.code ?? 'refused') : (result?.status ?? 'nothing')
    // A station whose time of day is wrong does not know what the server will make of its receipt.
    if (asked !== answered && Math.abs(station.off) <= minute)
      this.disagreements.push({ line, station: asked, server: answered })
  }

  #check(station: Station, line: EntryLine, online: boolean, state: JobState) {
    const now = new Date(this.now).toISOString()
    const context: JobContext = { ...this.#context, now, by: station.hands, offline: !online }
    const draft = { ...line, workshop: this.model.shop.workshop, station: station.id } as unknown as AnyEntryDraft // as above
    return checkEntry(state, draft, context)
  }

  /** The network is back: everything in its order; from offline nothing is refused. */
  async deliverKept(station: Station): Promise<void> {
    const lines = station.kept
    station.kept = []
    if (lines.length === 0) return
    const results = await this.#send(station, lines)
    for (const [index, { status }] of results.entries()) {
      const line = lines[index]
      if (line && status !== 'written') this.disagreements.push({ line, station: 'kept', server: status })
    }
  }
}
