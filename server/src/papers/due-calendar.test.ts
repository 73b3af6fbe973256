import { expect, test } from 'vitest'
import { dueCalendar } from './due-calendar.ts'

const due = {
  unitId: 'u1',
  unit: 'U01',
  serviceId: 'lower-legs',
  service: 'Bath service',
  hours: '50 h',
  date: '2026-07-05',
  address: 'http://localhost/u1',
}

// RFC 5545, 3.6.1: an all-day event has a DTSTART of value type DATE; 3.8.4.7: the UID is persistent.
test('an all-day event on the date, with a UID that does not move with the date', () => {
  const text = dueCalendar([due])
  expect(text).toMatch(/DTSTART;VALUE=DATE:20260705\r\n/)
  expect(text).toContain('UID:u1.lower-legs@legwork')
  expect(dueCalendar([{ ...due, date: '2026-08-01' }])).toContain('UID:u1.lower-legs@legwork')
})
