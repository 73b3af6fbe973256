import { demoSheet, demoUnits, type JobState } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { lastVisitOf, standingThen } from './last-visit.ts'

const psi = 6894.757293168
const setting = (pressure: number, temperature = 293.15): NonNullable<JobState['setting']> => ({
  entry: 'e',
  person: 'p',
  at: '2026-05-02T10:00:00.000Z',
  carriedOver: false,
  late: false,
  pressure,
  temperature,
  pump: null,
  spacers: 1,
  clicks: { rebound: 8, compression: null },
})
const job = (stream: `job:${string}`, at: string | null, left: number | null) => ({
  stream,
  state: {
    // Only when it was handed over is looked at.
    handedOver: at === null ? null : ({ at } as NonNullable<JobState['handedOver']>),
    setting: left === null ? null : setting(left),
    measured: [],
  },
})

describe('the last visit', () => {
  const jobs = [
    job('job:a', '2026-05-02T12:00:00.000Z', 88 * psi),
    job('job:b', '2026-05-20T12:00:00.000Z', 84 * psi),
    job('job:c', '2026-05-28T12:00:00.000Z', null),
    job('job:d', null, 90 * psi),
    job('job:now', '2026-06-03T12:00:00.000Z', 99 * psi),
  ]

  it('is the newest other job that left with a setting', () => {
    expect(lastVisitOf(jobs, 'job:now')?.setting.pressure).toBe(84 * psi)
    expect(lastVisitOf([], 'job:now')).toBeNull()
    expect(lastVisitOf([job('job:c', '2026-05-28T12:00:00.000Z', null)], 'job:now')).toBeNull()
  })

  // Hand calculation: (80 psi + 1 atm) is absolute; a bench 20 K cooler then: × 293.15/273.15, less 1 atm again: 86.9 psi.
  it('stands at the bench’s temperature of today', () => {
    const unit = demoUnits.find((one) => one.key === 'U01')
    if (!unit) throw new Error('no demo unit U01')
    const sheet = demoSheet(unit, 'sheet')
    const then = standingThen(sheet, { at: '', setting: setting(80 * psi, 273.15), measured: [] })
    expect(then.pressure / psi).toBeCloseTo(86.93, 2)
    expect(then.spring.spacers).toBe(1)
  })
})
