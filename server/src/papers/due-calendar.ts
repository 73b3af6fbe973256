import { say } from '@legwork/trade'
import ical from 'ical-generator'
import './words.ts'

export interface DueService {
  unitId: string
  unit: string
  serviceId: string
  service: string
  hours: string
  date: string
  address: string
}

/**
 * Services to come as all-day events (iCalendar, RFC 5545). The UID stays the same for a unit and service, so that a later
 * file moves the event; no rider's name is in it. `date` is ISO 8601, YYYY-MM-DD.
 */
export function dueCalendar(dues: readonly DueService[]): string {
  const calendar = ical({ prodId: { company: 'legwork', product: 'legwork', language: 'EN' } })
  for (const { unitId, unit, serviceId, service, hours, date, address } of dues)
    calendar.createEvent({
      id: `${unitId}.${serviceId}@legwork`,
      start: new Date(`${date}T00:00:00Z`),
      timezone: 'UTC',
      allDay: true,
      summary: say('paper.calendar.summary', { unit, service }),
      description: say('paper.calendar.description', { hours }),
      url: address,
    })
  // The library leaves the end of the last line to whoever sends it; a content line ends in CRLF (3.1).
  return `${calendar.toString().trimEnd()}\r\n`
}
