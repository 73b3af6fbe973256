/**
 * API, reduction and two stations against a model that knows what really happened: thousands of chance stories, none of
 * which ends with a rule broken and the job going on. A seed tells its story again: LEGWORK_MODEL_SEED.
 */
import { type AnyBookEntry, replayOrder, ruleOf } from '@legwork/trade'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { headers } from '../shop-for-tests.ts'
import { type ModelShop, openModelShop } from './job-shop.ts'
import { loadedStation, type Station } from './station.ts'
import { type Story, shorterThan, storyOf } from './story.ts'
import { ToldJob } from './told-job.ts'
import { breachesIn } from './what-happened.ts'

const runs = Number(process.env.LEGWORK_MODEL_RUNS ?? 100)
const firstSeed = Number(process.env.LEGWORK_MODEL_SEED ?? 1)

let model: ModelShop
let stations: { first: Station; second: Station }
/** A shop answers more slowly with every job it has; a new one is quickly had. */
const storiesOfOneShop = 250
async function openShop(): Promise<void> {
  await model?.shop.close()
  model = await openModelShop()
  const station = async () => loadedStation(model, await model.shop.station())
  stations = { first: await station(), second: await station() }
}
beforeAll(openShop)
afterAll(() => model.shop.close())

/** Every rule broken so far was either decided by a person or has stopped the job. */
function judge(job: ToldJob): void {
  const state = job.state()
  const found = breachesIn(replayOrder(job.book), state, job.sheet, (id) => job.trueMinutes.get(id) ?? 0)
  const standing = found.filter((breach) => !breach.late)
  if (standing.length > 0 && !state.stopped) throw new Error(`stands and was not allowed: ${JSON.stringify(standing)}`)
  // Late truth is taken as it is; where nobody could have passed the gate, it stops the job until a person lifts that.
  const hard = found.filter((breach) => breach.rules.some((id) => ruleOf(id)?.noWayRound))
  const lifted = job.book.some((entry) => entry.kind === 'stop-lifted')
  if (hard.length > 0 && !lifted && !state.stopped) throw new Error(`late, and goes on: ${JSON.stringify(hard)}`)
  const closed = state.handedOver !== null || state.calledOff !== null
  if (!closed) expect(state.state === 'stopped').toBe(state.stopped !== null)
  if (state.contested.some((one) => one.ruling === null)) expect(state.stopped).not.toBeNull()
}

async function tell(story: Story): Promise<ToldJob> {
  const { first, second } = stations
  Object.assign(first, loadedStation(model, first.id, first.no))
  Object.assign(second, loadedStation(model, second.id, second.no))
  const job = await ToldJob.tell(model, story, [first, second], judge)
  // The station's own rules and the server's are the same, and from offline nothing is refused.
  expect(job.disagreements).toEqual([])
  const url = `/api/workshops/${model.shop.workshop}/streams/${job.stream}/entries?after=0`
  const answer = await model.shop.app.inject({ url, headers })
  const { entries } = answer.json<{ entries: (AnyBookEntry & { position: number })[] }>()
  expect(entries.map(({ position: _, ...entry }) => entry)).toEqual(job.book)
  return job
}

const wrong = (story: Story): Promise<unknown> =>
  tell(story).then(
    () => null,
    (trouble: unknown) => trouble,
  )

/** The shortest story that still goes wrong, found by leaving out one act after another. */
async function shortest(story: Story): Promise<Story> {
  for (const shorter of shorterThan(story)) if (await wrong(shorter)) return shortest(shorter)
  return story
}

it(`never a forbidden state without the job stopped, in ${runs} stories`, async () => {
  const told = {
    lines: 0,
    contested: 0,
    stopped: 0,
    filled: 0,
    leakDowns: 0,
    handedOver: 0,
    struck: 0,
    late: 0,
    soaked: 0,
    waived: 0,
    photos: 0,
    takenOver: 0,
  }
  for (let seed = firstSeed; seed < firstSeed + runs; seed++) {
    if ((seed - firstSeed) % storiesOfOneShop === storiesOfOneShop - 1) await openShop()
    const job = await tell(storyOf(seed)).catch(async (trouble: unknown) => {
      throw new Error(`seed ${seed}: ${JSON.stringify(await shortest(storyOf(seed)))}`, { cause: trouble })
    })
    const state = job.state()
    told.lines += job.book.length
    told.contested += Number(state.contested.length > 0)
    told.stopped += Number(state.stopped !== null)
    told.filled += Number(state.facts.fill === 'target')
    told.leakDowns += Number(state.facts.leakDown === 'finished')
    told.handedOver += Number(state.handedOver !== null)
    told.struck += Number(state.struck.size > 0)
    told.soaked += Number(state.rests.some(({ kind, over }) => kind === 'soak' && over !== null))
    told.waived += Number(state.waivers.length > 0)
    told.photos += Number((state.snapshot.photos?.photos.length ?? 0) > 0)
    told.takenOver += Number(job.book.some(({ kind }) => kind === 'taken-over'))
    told.late += Number(job.book.some((entry) => entry.standing.mode === 'late'))
  }
  process.stdout.write(`${runs} stories of two stations: ${JSON.stringify(told)}\n`)
  // They go far enough for the demands above to mean something.
  for (const [what, count] of Object.entries(told))
    expect(count, what).toBeGreaterThanOrEqual(what === 'lines' ? runs * 10 : Math.floor(runs / 300))
}, 3_600_000)
