import fc from 'fast-check'
import { expect, it } from 'vitest'
import { storyTime } from './calendar.ts'

it('ends 1 to 7 days before today and keeps the weekday, whatever today is', () => {
  fc.assert(
    fc.property(fc.date({ min: new Date('2023-06-10'), max: new Date('2060-01-01'), noInvalidDate: true }), (today) => {
      const last = storyTime(29, 0, today)
      const days = Math.floor(today.getTime() / 86_400_000) - last.getTime() / 86_400_000
      expect(days).toBeGreaterThanOrEqual(1)
      expect(days).toBeLessThanOrEqual(7)
      // 29 May 2023 was a Monday
      expect(last.getUTCDay()).toBe(1)
    }),
  )
})

it('puts the example of the docblock where it says', () => {
  expect(storyTime(29, 0, new Date('2026-06-03T10:00:00Z')).toISOString()).toBe('2026-06-01T00:00:00.000Z')
})
