import { Refusal } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import { dueFrom } from './due-from.ts'

describe('the next due date', () => {
  it('is the hours left over the hours a week', () => {
    // By hand: 30–60 h, middle 45 h (common practice, no source); 45 ÷ 5 = 9 weeks = 63 days after 2 May is 4 July.
    const due = dueFrom({ service: 'lower-legs', hoursPerWeek: 5, from: '2026-05-02' })
    expect(due).toMatchObject({ interval: 45, hoursLeft: 45, date: '2026-07-04', source: 'common-practice' })
    expect(due.early < due.date && due.date < due.late).toBe(true)
  })

  it('goes by the sheet’s own interval, and by what shortens it', () => {
    // By hand: 50 h · 0.6 = 30 h, 10 ridden, 20 left; 20 ÷ 4 = 5 weeks = 35 days after 2 May is 6 June.
    const due = dueFrom({
      service: 'lower-legs',
      hoursPerWeek: 4,
      from: '2026-05-02T10:00:00.000Z',
      since: 10,
      conditions: ['wet-mud'],
      sheetInterval: 50,
    })
    expect(due).toMatchObject({ interval: 30, hoursLeft: 20, source: 'makers-sheet' })
    // From ten o'clock on the second, 35 days later is the sixth.
    expect(due.date).toBe('2026-06-06')
  })

  it('is today where the hours are used up', () => {
    expect(dueFrom({ service: 'lower-legs', hoursPerWeek: 4, from: '2026-05-02', since: 310 })).toMatchObject({
      hoursLeft: 0,
      date: '2026-05-02',
      early: '2026-05-02',
    })
  })

  it.each([
    [{ hoursPerWeek: 0 }, 'hoursPerWeek'],
    [{ hoursPerWeek: Number.NaN }, 'hoursPerWeek'],
    [{ since: -1 }, 'since'],
    [{ sheetInterval: 0 }, 'sheetInterval'],
    [{ from: 'soon' }, 'from'],
  ])('refuses %o', (wrong, field) => {
    const ask = () => dueFrom({ service: 'coil', hoursPerWeek: 4, from: '2026-05-02', ...wrong })
    expect(ask).toThrow(Refusal)
    expect(ask).toThrow(field)
  })
})
