import { expect, it } from 'vitest'
import { sheetOfDemo, WrittenJob } from '../journal/written-job.ts'
import { dueOfUnit } from './due-of-unit.ts'

/** A job worked and handed over, its hand-over on this day. */
function done(services: readonly string[], day: string) {
  const job = new WrittenJob(sheetOfDemo('U01')).ready(services).workUntil().leakDown()
  const value = job.sheet.freeLength?.value ?? 0
  job.put('measured', {
    what: 'free-length',
    leg: null,
    phase: 'done',
    reading: { value, measure: 'm', instrument: null, how: null },
  })
  job.write()
  job.putBack()
  if (!job.handOver().ok) throw new Error('not handed over')
  const { state } = job
  return { state: { ...state, handedOver: state.handedOver && { ...state.handedOver, at: `${day}T16:00:00.000Z` } } }
}
const rider = { hoursPerWeek: 5, mass: 82 }

// Hours: common practice, no source. By hand, at 5 h a week: 45 h are 63 days, 115 h are 161 days.
it('each service counts from the last job that had it, the soonest first', () => {
  const jobs = [
    done(['lower-legs'], '2026-05-02'),
    done(['lower-legs', 'air-spring'], '2026-03-01'),
    done(['lower-legs'], '2026-02-01'),
  ]
  expect(dueOfUnit(jobs, 'u', rider).map(({ service, since, due }) => [service, since, due?.date])).toEqual([
    ['lower-legs', '2026-05-02', '2026-07-04'],
    ['air-spring', '2026-03-01', '2026-08-09'],
  ])
})

it('an air spring took fresh oil with it: the lower legs count from there', () => {
  const jobs = [done(['lower-legs'], '2026-03-01'), done(['air-spring'], '2026-05-02')]
  expect(dueOfUnit(jobs, 'u', rider)[0]).toMatchObject({ service: 'lower-legs', since: '2026-05-02' })
})

it('a heavy rider is sooner there, a rider of whom no hours are known has hours and no day', () => {
  const jobs = [done(['lower-legs'], '2026-05-02')]
  // 45 h · 0.8 are 36 h: 50.4 days, the 51st.
  expect(dueOfUnit(jobs, 'u', { hoursPerWeek: 5, mass: 101 })[0]?.due?.date).toBe('2026-06-22')
  expect(dueOfUnit(jobs, 'u', { hoursPerWeek: null, mass: null })[0]).toMatchObject({
    hours: { low: 30, high: 60 },
    due: null,
  })
  expect(dueOfUnit(jobs, 'another', rider)).toEqual([])
})
