/** Chance sequences of two stations, one of them offline: what a careful reader of the book would demand of every one. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { happened, type World, worldAtTakeIn } from '../gates/forbidden-world.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import { checkEntry } from './check-entry.ts'
import type { AnyEntry, AnyEntryDraft, Leg } from './entry.ts'
import { reduceJob } from './reduce-job.ts'
import { odalys, WrittenJob } from './written-job.ts'

const ticks = new WrittenJob()
  .ready()
  .state.steps.flatMap(({ step, legs }) => (legs ?? [null]).map((leg) => ({ step, leg })))

/** The next thing of the plan, anything of the plan, a strike, a ruling, another pair of hands, or a long wait. */
type Action =
  | { is: 'next' }
  | { is: 'tick'; which: number; careless: boolean }
  | { is: 'strike'; which: number }
  | { is: 'rule'; ruling: 'stands' | 'struck' }
  | { is: 'take-over'; by: 'bram' | 'odalys' }
  | { is: 'wait' }
const action: fc.Arbitrary<Action> = fc.oneof(
  { weight: 8, arbitrary: fc.constant<Action>({ is: 'next' }) },
  {
    weight: 4,
    arbitrary: fc.record({
      is: fc.constant('tick' as const),
      which: fc.nat({ max: ticks.length - 1 }),
      careless: fc.boolean(),
    }),
  },
  { weight: 1, arbitrary: fc.record({ is: fc.constant('strike' as const), which: fc.nat({ max: 60 }) }) },
  {
    weight: 1,
    arbitrary: fc.record({ is: fc.constant('rule' as const), ruling: fc.constantFrom('stands', 'struck') }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ is: fc.constant('take-over' as const), by: fc.constantFrom('bram', 'odalys') }),
  },
  { weight: 1, arbitrary: fc.constant<Action>({ is: 'wait' }) },
)

class TwoStations {
  readonly job: WrittenJob
  /** Written without the network, delivered at the end of the offline stretch. */
  readonly kept: AnyEntryDraft[] = []

  constructor(until: string | undefined) {
    this.job = new WrittenJob().ready()
    if (until) this.job.workUntil(until)
  }

  private draftOf(act: Action, entries: readonly AnyEntry[]): AnyEntryDraft | null {
    const { job } = this
    const state = reduceJob(entries, job.context)
    const tick = (step: string, leg: Leg | null, careless: boolean): AnyEntryDraft =>
      job.draft('step-done', job.tickBody(step, leg, careless ? { saidSo: [], reading: null } : {}), { by: job.by })
    switch (act.is) {
      case 'next':
        if (state.next.kind === 'set-up') {
          job.setUp()
          return null
        }
        return state.next.step ? tick(state.next.step, state.next.leg, false) : null
      case 'tick': {
        const one = ticks[act.which]
        return one ? tick(one.step, one.leg, act.careless) : null
      }
      case 'strike': {
        const target = entries[act.which]
        return target ? job.draft('struck', { entry: target.id, reason: 'r' }) : null
      }
      case 'rule': {
        const target = state.contested.find((one) => one.ruling === null)
        return target
          ? job.draft('ruled', { entry: target.entry, ruling: act.ruling, reason: 'r' }, { by: odalys })
          : null
      }
      case 'take-over':
        job.by = act.by
        return job.draft('taken-over', { from: null }, { by: act.by })
      case 'wait':
        job.minute += 13 * 60
        return null
    }
  }

  online(act: Action): void {
    const draft = this.draftOf(act, this.job.entries)
    if (draft && checkEntry(this.job.state, draft, this.job.context).ok) this.job.add(draft)
  }

  /** By what the other station knows: the book as it was when the network went, and its own lines. */
  offline(act: Action, known: readonly AnyEntry[]): void {
    const mine = this.kept.map((draft) => ({ ...draft, seq: null, receivedAt: null }) as AnyEntry) // as a station holds it
    const seen = [...known, ...mine]
    const draft = this.draftOf(act, seen)
    const id = `kept-${this.kept.length + 1}`
    if (draft && checkEntry(reduceJob(seen, this.job.context), draft, this.job.context).ok)
      this.kept.push({ ...draft, id, station: 'other' })
  }

  deliver(): void {
    for (const draft of this.kept.splice(0)) this.job.add({ ...draft, id: `${draft.id}-of-${this.job.entries.length}` })
  }
}

/** Ticks that made facts, in order, told to the yardstick: which feet are really torqued, whether air is in. */
function reallyHappened(job: WrittenJob): World {
  const { state } = job
  const out = new Set(state.contested.filter((one) => one.ruling === null).map((one) => one.entry))
  let world: World = worldAtTakeIn
  for (const entry of job.entries) {
    if (entry.kind !== 'step-done' || out.has(entry.id) || state.struck.has(entry.id) || !isStepId(entry.body.step))
      continue
    const { step: id, leg, reading } = entry.body
    const said = { said: true, reading: reading ? 'good' : 'none', wrench: true, soaked: 7 } as const
    world = happened(world, { is: 'step', id, step: procedureSteps[id], leg, ...said })
  }
  return world
}

const seed = 20_260_502
const story = fc.record({
  /** How far the work has come before the story begins. */
  until: fc.constantFrom(undefined, 'foot-off', 'oil-in', 'foot-torque', 'fill-quarter', 'fill-target'),
  before: fc.array(action, { maxLength: 12 }),
  online: fc.array(action, { maxLength: 8 }),
  offline: fc.array(action, { maxLength: 8 }),
  after: fc.array(action, { maxLength: 8 }),
})

type Told = { until: string | undefined } & { [part in 'before' | 'online' | 'offline' | 'after']: Action[] }
function played({ until, before, online, offline, after }: Told): TwoStations {
  const stations = new TwoStations(until)
  for (const act of before) stations.online(act)
  const known = [...stations.job.entries]
  for (const act of offline) stations.offline(act, known)
  for (const act of online) stations.online(act)
  stations.deliver()
  for (const act of after) stations.online(act)
  return stations
}

describe('two stations, one offline', () => {
  it('never leave air in a fork whose feet are not torqued, and contest nothing, without the job stopped', () => {
    const told = { filled: 0, contested: 0, danger: 0 }
    fc.assert(
      fc.property(story, (one) => {
        const { job } = played(one)
        const { state } = job
        const open = state.contested.filter((entry) => entry.ruling === null)
        const ruled = state.contested.length > open.length
        const world = reallyHappened(job)
        const danger = world.stage > 0 && world.fast.length < 2
        told.filled += Number(world.stage > 0)
        told.contested += Number(open.length > 0)
        told.danger += Number(danger)
        expect(!danger || ruled || state.stopped !== null).toBe(true)
        expect(open.length === 0 || state.stopped !== null).toBe(true)
        expect(state.stopped !== null).toBe(state.state === 'stopped')
      }),
      { numRuns: 120, seed },
    )
    // The stories go far enough for the demands above to mean something.
    expect(told.filled).toBeGreaterThan(15)
    expect(told.contested).toBeGreaterThan(5)
  }, 120_000)

  it('give the same state replayed again, from text, and whatever was asked in between', () => {
    fc.assert(
      fc.property(story, (told) => {
        const { job } = played(told)
        const again: AnyEntry[] = JSON.parse(JSON.stringify(job.entries))
        const first = reduceJob(job.entries, job.context)
        expect(reduceJob(again, job.context)).toEqual(first)
        for (const count of [1, Math.floor(again.length / 2)]) reduceJob(again.slice(0, count), job.context)
        expect(reduceJob(again, job.context)).toEqual(first)
      }),
      { numRuns: 60, seed },
    )
  }, 60_000)

  it('an entry the server took while it was online is never contested until something before it is struck or comes late', () => {
    fc.assert(
      fc.property(story, fc.array(action, { maxLength: 25 }), ({ until }, acts) => {
        const stations = new TwoStations(until)
        for (const act of acts) if (act.is !== 'strike' && act.is !== 'rule') stations.online(act)
        expect(stations.job.state.contested).toEqual([])
      }),
      { numRuns: 120, seed },
    )
  }, 60_000)
})
