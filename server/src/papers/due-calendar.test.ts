import { expect, test } from 'vitest'
import { dueCalendar } from './due-calendar.ts'

const due = {
  unitId: 'u1',
  unit: 'U01, 35 mm air fork; “the long one”',
  serviceId: 'lower-legs',
  service: 'Lower legs: bath oil and wipers, Özgür’s way with a name that is longer than any line may be',
  hours: '30 to 60 riding hours',
  date: '2026-07-05',
  address: 'http://localhost/u1',
}
const two = [due, { ...due, serviceId: 'air-spring', service: 'Air spring: new seals', date: '2026-11-02' }]

interface ContentLine {
  name: string
  parameters: string
  value: string
}

/** Reads a calendar by the grammar of RFC 5545, 3.1, and by nothing of the library that wrote it. */
function contentLines(text: string): ContentLine[] {
  // contentline = … CRLF: the last one too.
  expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
  const physical = text.replace(/\r\n$/, '').split('\r\n')
  for (const line of physical) {
    // "Lines of text SHOULD NOT be longer than 75 octets, excluding the line break."
    expect(Buffer.byteLength(line), line).toBeLessThanOrEqual(75)
    expect(line.replaceAll('\t', ''), line).not.toMatch(/\p{Cc}/u)
  }
  // A line that begins with a space goes on from the line before.
  const logical = physical
    .join('\r\n')
    .replace(/\r\n[ \t]/g, '')
    .split('\r\n')
  return logical.map((line) => {
    // contentline = name *(";" param) ":" value
    const parts = /^([A-Za-z0-9-]+)((?:;[A-Za-z0-9-]+=(?:"[^"]*"|[^";:,]*)(?:,(?:"[^"]*"|[^";:,]*))*)*):(.*)$/.exec(
      line,
    )
    if (!parts) throw new Error(`no content line: ${line}`)
    const [, name = '', parameters = '', value = ''] = parts
    return { name, parameters, value }
  })
}

/** TEXT of RFC 5545, 3.3.11: a backslash stands before backslash, semicolon, comma and n, and nothing else. */
function textOf({ value }: ContentLine): string {
  expect(value).toMatch(/^(?:[^\\;,]|\\[\\;,nN])*$/)
  return value.replace(/\\([\\;,nN])/g, (_, escaped: string) => (escaped.toLowerCase() === 'n' ? '\n' : escaped))
}

test('reads by the grammar of RFC 5545: one calendar, an event a service, each with what it must have once', () => {
  const lines = contentLines(dueCalendar(two))
  const named = (name: string) => lines.filter((line) => line.name === name)
  expect(lines[0]).toMatchObject({ name: 'BEGIN', value: 'VCALENDAR' })
  expect(lines.at(-1)).toMatchObject({ name: 'END', value: 'VCALENDAR' })
  // 3.6: PRODID and VERSION are required and stand once; 3.7.4: the version is 2.0.
  expect(named('VERSION').map(({ value }) => value)).toEqual(['2.0'])
  expect(named('PRODID')).toHaveLength(1)
  expect(named('BEGIN').filter(({ value }) => value === 'VEVENT')).toHaveLength(2)
  // 3.6.1: UID and DTSTAMP are required in an event and stand once; DTSTAMP is in UTC (3.8.7.2).
  expect(new Set(named('UID').map(({ value }) => value)).size).toBe(2)
  expect(named('DTSTAMP').every(({ value }) => /^\d{8}T\d{6}Z$/.test(value))).toBe(true)
  expect(named('DTSTAMP')).toHaveLength(2)
  expect(named('DTSTART')).toMatchObject([
    { parameters: ';VALUE=DATE', value: '20260705' },
    { parameters: ';VALUE=DATE', value: '20261102' },
  ])
  expect(named('SUMMARY').map(textOf)[0]).toBe(`${due.unit}: ${due.service}`)
  expect(named('DESCRIPTION').map(textOf)[0]).toBe(
    'Due at 30 to 60 riding hours or about this date, whichever comes first.',
  )
})

// RFC 5545, 3.8.4.7: the UID is persistent.
test('the UID does not move with the date', () => {
  const uids = (text: string) => contentLines(text).filter(({ name }) => name === 'UID')
  expect(uids(dueCalendar([due]))).toMatchObject([{ value: 'u1.lower-legs@legwork' }])
  expect(uids(dueCalendar([{ ...due, date: '2026-08-01' }]))).toEqual(uids(dueCalendar([due])))
})
