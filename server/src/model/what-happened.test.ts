/** The model's yardstick can fail: books with a rule broken in them, as no server would have taken them. */
import { type AnyEntry, type Leg, legs, reduceJob, replayOrder } from '@legwork/trade'
import { WrittenJob } from '@legwork/trade/journal/written-job.ts'
import { describe, expect, it } from 'vitest'
import { type Breach, breachesIn } from './what-happened.ts'

/** Breaches of a book if nobody had asked the gates: nothing contested. */
function brokenIn({ entries, context, sheet }: WrittenJob): readonly (readonly string[])[] {
  const state = { ...reduceJob(entries, context), contested: [] }
  const minutes = new Map(entries.map((entry: AnyEntry) => [entry.id, Date.parse(entry.madeAt) / 60_000]))
  const found = breachesIn(replayOrder(entries), state, sheet, (id) => minutes.get(id) ?? 0)
  return found.map((breach: Breach) => breach.rules)
}
const tick = (job: WrittenJob, step: string, leg: Leg | null = null) => job.put('step-done', job.tickBody(step, leg))

describe('the yardstick', () => {
  it('finds nothing in a job that was worked as it should be', () => {
    expect(brokenIn(new WrittenJob().ready().workUntil().leakDown())).toEqual([])
  })

  it('finds air in before a foot is torqued, and travel not measured', () => {
    const job = new WrittenJob().ready().workUntil('foot-torque')
    job.setUp()
    tick(job, 'fill-quarter')
    expect(brokenIn(job)).toEqual([['R16', 'R26']])
  })

  it('finds a foot loosened while air is in, by other hands, or after a night', () => {
    const job = new WrittenJob().ready()
    tick(job, 'outside-off')
    tick(job, 'foot-off', 'left')
    expect(brokenIn(job)).toEqual([['R3', 'R4']])
    const others = new WrittenJob().ready().workUntil('foot-off')
    others.put('step-done', others.tickBody('foot-off', 'left'), { by: 'bram' })
    expect(brokenIn(others)).toEqual([['R3']])
    const night = new WrittenJob().ready().workUntil('foot-off')
    night.minute += 13 * 60
    for (const leg of legs) tick(night, 'foot-off', leg)
    expect(brokenIn(night)).toEqual([['R3'], ['R3']])
  })

  it('finds a leak-down begun too soon, and a unit that leaves without one', () => {
    const job = new WrittenJob().ready().workUntil()
    const reading = { value: 6e5, measure: 'Pa', instrument: null, how: null } as const
    job.put('measured', { what: 'leak-down-start', leg: null, phase: 'done', reading }, { after: 5 })
    job.put('handed-over', { receivedBy: 'a', initials: null })
    expect(brokenIn(job)).toEqual([['R22'], ['R22', 'R23', 'R25', 'R26']])
  })

  it('finds a pressure read twice or without its pump, and none where it was said not to be known before', () => {
    const job = new WrittenJob().open()
    const keep = (value: number | null, instrument: string | null) => {
      const reading = value === null ? null : ({ value, measure: 'Pa', instrument, how: 'attached' } as const)
      job.put('snapshot-kept', { item: 'pressure', reading, photos: [], notKnownBecause: value === null ? 'a' : null })
    }
    job.put('snapshot-kept', {
      item: 'length',
      reading: { value: 0.164, measure: 'm', instrument: null, how: null },
      photos: [],
      notKnownBecause: null,
    })
    keep(null, null)
    keep(6e5, 'P1')
    expect(brokenIn(job)).toEqual([])
    keep(5.6e5, 'P1')
    expect(brokenIn(job)).toEqual([['R2']])
  })
})
