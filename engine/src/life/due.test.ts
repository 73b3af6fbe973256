import { describe, expect, it } from 'vitest'
import { due, dueDates } from './due.ts'
import { wearHours } from './wear-hours.ts'

const from = '2026-05-02'
const daysTo = (date: string | null) => (Date.parse(date ?? '') - Date.parse(from)) / 86_400_000

describe('due through the rider’s own weeks', () => {
  it('is one date where every week is alike', () => {
    // By hand: 45 h at 5 h a week are 9 weeks, 63 days after 2 May: 4 July.
    expect(due({ hoursLeft: 45, weeks: [5, 5, 5], from }).dates).toEqual({
      p10: '2026-07-04',
      p50: '2026-07-04',
      p90: '2026-07-04',
    })
    // By hand: 6 h at 5 h a week are 8.4 days.
    expect(daysTo(due({ hoursLeft: 6, weeks: [5], from: `${from}T22:00:00Z` }).dates.p50)).toBe(9)
  })

  it('has the quantiles of a binomial where weeks are ridden or not', () => {
    // 10 h, weeks of 10 h or none, each half the time: due in week k by 1 − 2⁻ᵏ, at its end. 10 % and 50 % in week 1,
    // 90 % in week 4 (87.5 % < 0.9 ≤ 93.75 %); 2,000 draws put 87.5 % within ±2.2 % at three sigma.
    const { dates } = due({ hoursLeft: 10, weeks: [10, 0], from, seed: 4 })
    expect([daysTo(dates.p10), daysTo(dates.p50), daysTo(dates.p90)]).toEqual([7, 7, 28])
  })

  it('has the spread of a sum of weeks', () => {
    // 120 h, weeks of 2 or 6 h: mean 4, sd 2, so 30 weeks ± 2·√30/4 = 2.74; 10 and 90 % 1.2816·2.74 = 3.5 weeks off.
    // The central limit is not exact and 2,000 draws wander: ±4 days.
    const { dates } = due({ hoursLeft: 120, weeks: [2, 6], from, seed: 9 })
    expect(Math.abs(daysTo(dates.p50) - 210)).toBeLessThanOrEqual(4)
    expect(Math.abs(daysTo(dates.p10) - (210 - 24.6))).toBeLessThanOrEqual(4)
    expect(Math.abs(daysTo(dates.p90) - (210 + 24.6))).toBeLessThanOrEqual(4)
  })

  it('is the same for the same seed and another for another', () => {
    const ask = { hoursLeft: 80, weeks: [0, 3, 9, 1, 4], from }
    expect(due({ ...ask, seed: 3 })).toEqual(due({ ...ask, seed: 3 }))
    expect(due({ ...ask, seed: 3 })).not.toEqual(due({ ...ask, seed: 5 }))
  })

  it('is today where nothing is left, and nothing beyond five years', () => {
    expect(due({ hoursLeft: -12, weeks: [4], from }).dates).toEqual({ p10: from, p50: from, p90: from })
    expect(due({ hoursLeft: 5, weeks: [0], from }).dates).toEqual({ p10: null, p50: null, p90: null })
    // By hand: 5·365.25 = 1826.25 days are 260.89 weeks.
    expect(due({ hoursLeft: 260.8, weeks: [1], from }).dates.p50).not.toBeNull()
    expect(due({ hoursLeft: 261, weeks: [1], from }).dates.p50).toBeNull()
  })

  it('takes the smallest day that so many draws reach', () => {
    expect(dueDates([9, 1, 8, 2, 7, 3, 6, 4, 5, 10], Date.parse(from))).toEqual({
      p10: '2026-05-03',
      p50: '2026-05-07',
      p90: '2026-05-11',
    })
  })

  it.each([
    [{ weeks: [] }, 'weeks'],
    [{ weeks: [4, -1] }, 'weeks[1]'],
    [{ weeks: [169] }, 'weeks[0]'],
    [{ hoursLeft: Number.NaN }, 'hoursLeft'],
    [{ from: '2026-13-02' }, 'from'],
    [{ seed: 1.5 }, 'seed'],
  ])('refuses %o', (wrong, field) => {
    expect(() => due({ hoursLeft: 10, weeks: [4], from, ...wrong })).toThrow(field)
  })
})

describe('hours as they wear', () => {
  // Common practice, no source: wet and mud 0.6, e-bike 0.7.
  const factors = { 'wet-mud': 0.6, 'e-bike': 0.7 }

  it('divides by the product of the factors', () => {
    // By hand: 2 h/(0.6·0.7) + 1 h = 5.7619 h.
    const rides = [
      { movingTime: 7200, conditions: ['wet-mud', 'e-bike', 'wet-mud'] },
      { movingTime: 3600, conditions: [] },
    ]
    expect(wearHours(rides, factors).hours).toBeCloseTo(5.7619, 4)
    expect(wearHours([], factors).hours).toBe(0)
  })

  it('refuses a condition without a factor by its place', () => {
    const rides = [{ movingTime: 60, conditions: ['wet-mud', 'toString'] }]
    expect(() => wearHours(rides, factors)).toThrow('rides[0].conditions[1] is "toString"; it must be one of wet-mud')
    expect(() => wearHours([{ movingTime: -1, conditions: [] }], factors)).toThrow('rides[0].movingTime')
  })
})
