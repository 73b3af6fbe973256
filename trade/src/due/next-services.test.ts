import { expect, it } from 'vitest'
import type { PlannedStep } from '../journal/entry.ts'
import type { JobState } from '../journal/job-state.ts'
import { nextServices } from './next-services.ts'

const made = { entry: 'e', person: 'p', at: '2026-05-02T10:00:00.000Z', carriedOver: false, late: false }
const planned = (step: string): PlannedStep => ({ step, procedure: 'p', revision: 1, legs: null, minutes: 1 })

function job(services: string[], steps: string[], answer: 'yes' | 'no' = 'yes'): Pick<JobState, 'plan' | 'steps'> {
  const none = { once: null, left: null, right: null }
  return {
    plan: {
      ...made,
      services,
      sheet: { id: 's', revision: 'A' },
      steps: steps.map(planned),
      answer,
      declined: [],
      answeredBy: 'rider',
    },
    steps: steps.map((step) => ({ ...planned(step), done: none, complete: true, carriedOver: false })),
  }
}
const rider = { hoursPerWeek: 5, mass: 82 }

// Hours: common practice, no source. By hand: middle of 30 and 60 is 45 h; 45 ÷ 5 = 9 weeks = 63 days after 2 May: 4 July.
it('the lower legs come round at 30 to 60 hours, and on a day by the rider’s hours a week', () => {
  const [next, ...others] = nextServices(job(['lower-legs'], ['oil-in']), rider, '2026-05-02')
  expect(next).toMatchObject({ service: 'lower-legs', hours: { low: 30, high: 60 }, due: { date: '2026-07-04' } })
  expect(others).toEqual([])
})

it('an air spring that was resealed comes round too, after the oil that went in with it', () => {
  const next = nextServices(job(['air-spring'], ['oil-in']), { hoursPerWeek: null, mass: null }, '2026-05-02')
  expect(next.map(({ service, hours, due }) => [service, hours.low, due])).toEqual([
    ['lower-legs', 30, null],
    ['air-spring', 80, null],
  ])
})

// By hand: 30 · 0.8 = 24, 60 · 0.8 = 48; 36 h ÷ 5 = 7.2 weeks = 50.4 days, so 51 days after 2 May: 22 June.
it('it is sooner for a rider over 95 kg with kit', () => {
  const [next] = nextServices(job(['lower-legs'], ['oil-in']), { hoursPerWeek: 5, mass: 96 }, '2026-05-02')
  expect(next).toMatchObject({ hours: { low: 24, high: 48 }, due: { date: '2026-06-22' }, conditions: ['over-95-kg'] })
})

it('nothing comes round of a plan that was declined, or of none', () => {
  expect(nextServices(job(['lower-legs'], ['oil-in'], 'no'), rider, '2026-05-02')).toEqual([])
  expect(nextServices({ plan: null, steps: [] }, rider, '2026-05-02')).toEqual([])
})
