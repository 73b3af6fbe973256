import type { JobState } from '@legwork/trade'
import { expect, test } from 'vitest'
import { lastService } from './last-service.ts'

/** Only what is looked at. */
const job = (unit: string, at: string | null, services: string[]) =>
  ({
    state: { opened: { unit }, handedOver: at === null ? null : { at }, plan: { services } } as unknown as JobState,
  }) as const

const jobs = [
  job('u', '2026-03-01T12:00:00.000Z', ['lower-legs']),
  job('u', '2026-05-02T12:00:00.000Z', ['lower-legs', 'air-spring']),
  job('u', '2026-05-20T12:00:00.000Z', ['air-spring']),
  job('u', null, ['lower-legs']),
  job('other', '2026-05-30T12:00:00.000Z', ['lower-legs']),
]

// By hand: 2 May to 30 May are 4 weeks, at 5 h a week 20 h.
test('the last one of this unit that did the lower legs and left', () => {
  expect(lastService(jobs, 'u', 5, '2026-05-30T12:00:00.000Z')).toEqual({
    day: '2026-05-02',
    hours: 20,
  })
})

test('without hours there is a day, and no number is made up', () => {
  expect(lastService(jobs, 'u', null, '2026-05-30T12:00:00.000Z')).toEqual({
    day: '2026-05-02',
    hours: null,
  })
  expect(lastService(jobs, 'v', 5, '2026-05-30T12:00:00.000Z')).toBeNull()
})
