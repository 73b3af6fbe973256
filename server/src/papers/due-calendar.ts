import ical from 'ical-generator'

export type DueService = { unitId: string; unit: string; service: string; hours: string; date: string; address: string }

/**
 * The next service as an all-day event (iCalendar, RFC 5545). The UID stays the same for a unit and service, so that a
 * later file moves the event; no rider's name is in it. `date` is ISO 8601, YYYY-MM-DD.
 */
export function dueCalendar(due: DueService): string {
  const calendar = ical({ prodId: { company: 'legwork', product: 'legwork', language: 'EN' } })
  calendar.createEvent({
    id: `${due.unitId}.${due.service.replace(/[^A-Za-z0-9]+/g, '-')}@legwork`,
    start: new Date(`${due.date}T00:00:00Z`),
    timezone: 'UTC',
    allDay: true,
    summary: `${due.unit}: ${due.service}`,
    description: `Due at ${due.hours} or about this date, whichever comes first.`,
    url: due.address,
  })
  return calendar.toString()
}
