import { Refusal } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import { dueRange } from './due-range.ts'

const days = (from: string, to: string | null): number => (Date.parse(to ?? '') - Date.parse(from)) / 86_400_000
const from = '2026-05-02'

describe('due dates from ranges', () => {
  it('are those of the reciprocal of a rectangular range where only the hours a week are open', () => {
    // By hand: 50 h over 4 … 6 h a week; days = 350/h, so the 10, 50, 90 % dates are at h = 5.8, 5 and 4.2.
    const due = dueRange({
      service: 'lower-legs',
      hoursPerWeek: { low: 4, high: 6 },
      interval: { low: 50, high: 50 },
      from,
      seed: 7,
    })
    expect(Math.abs(days(from, due.p10) - 350 / 5.8)).toBeLessThan(2)
    expect(Math.abs(days(from, due.p50) - 350 / 5)).toBeLessThan(2)
    expect(Math.abs(days(from, due.p90) - 350 / 4.2)).toBeLessThan(2)
  })

  it('are one date where nothing is open, and today where the hours are used up', () => {
    const known = { service: 'lower-legs', hoursPerWeek: { low: 5, high: 5 }, from, seed: 1 } as const
    // By hand: 45 ÷ 5 = 9 weeks = 63 days after 2 May.
    expect(dueRange({ ...known, interval: { low: 45, high: 45 } })).toEqual({
      p10: '2026-07-04',
      p50: '2026-07-04',
      p90: '2026-07-04',
    })
    expect(dueRange({ ...known, since: { low: 250, high: 400 } })).toEqual({ p10: from, p50: from, p90: from })
  })

  it('are the same for the same seed', () => {
    const ask = { service: 'air-spring', hoursPerWeek: { low: 2, high: 8 }, from, seed: 3 } as const
    expect(dueRange(ask)).toEqual(dueRange(ask))
  })

  it.each([
    [{ hoursPerWeek: { low: 6, high: 4 } }, 'hoursPerWeek'],
    [{ hoursPerWeek: { low: 0, high: 4 } }, 'hoursPerWeek'],
    [{ since: { low: -1, high: 4 } }, 'since'],
    [{ interval: { low: Number.NaN, high: 4 } }, 'interval'],
    [{ from: 'May' }, 'from'],
  ])('refuse %o', (wrong, field) => {
    const ask = () => dueRange({ service: 'coil', hoursPerWeek: { low: 2, high: 4 }, from, seed: 1, ...wrong })
    expect(ask).toThrow(Refusal)
    expect(ask).toThrow(field)
  })
})
