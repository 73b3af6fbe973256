import { type Found, refuse } from '../refusal/found.ts'

const instant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}([.,]\d{1,9})?)?(Z|[+-]\d{2}:?\d{2})$/
const day = /^\d{4}-\d{2}-\d{2}$/

/** Milliseconds since 1970, or null where the calendar has no such day or nobody rode in that year. */
function millisecondsOf(text: string): number | null {
  const written = text.slice(0, 10)
  const year = Number(text.slice(0, 4))
  if (year < 1900 || year > 2200) return null
  const start = Date.parse(`${written}T00:00:00Z`)
  // Date.parse takes 30 February for 2 March.
  if (Number.isNaN(start) || new Date(start).toISOString().slice(0, 10) !== written) return null
  const time = Date.parse(text.replace(',', '.').replace(/([+-]\d{2})(\d{2})$/, '$1:$2'))
  return Number.isNaN(time) ? null : time
}

function shown(text: unknown): string {
  return typeof text === 'string' ? JSON.stringify(text.slice(0, 60)) : String(text)
}

/**
 * An instant as ISO 8601 writes it, with its offset from UTC.
 *
 * @returns milliseconds since 1970; not a number where refused, so that it is compared with nothing
 */
export function instantWithin(found: Found, field: string, text: unknown): { found: Found; time: number } {
  const time = typeof text === 'string' && instant.test(text) ? millisecondsOf(text) : null
  if (time !== null) return { found, time }
  const next = 'Write date, time and offset, like 2026-05-02T10:00:00Z.'
  return {
    found: refuse(
      found,
      field,
      'not-a-date',
      shown(text),
      'a date and time from 1900 to 2200 as ISO 8601 writes it',
      next,
    ),
    time: Number.NaN,
  }
}

/** A day as ISO 8601 writes it, or the UTC day of an instant. */
export function dayWithin(found: Found, field: string, text: unknown): { found: Found; time: number } {
  const sound = typeof text === 'string' && (day.test(text) || instant.test(text))
  const time = sound ? millisecondsOf(text) : null
  if (time !== null) return { found, time: Math.floor(time / 86_400_000) * 86_400_000 }
  const next = 'Write the day like 2026-05-02.'
  return {
    found: refuse(found, field, 'not-a-date', shown(text), 'a day from 1900 to 2200 as ISO 8601 writes it', next),
    time: Number.NaN,
  }
}
