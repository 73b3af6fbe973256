import type { AnyBookEntry, AnyEntryDraft, Registers } from '@legwork/trade'
import { expect, it } from 'vitest'
import { emptyMeta } from './lines.ts'
import { Memory } from './memory.ts'

const stream = 'job:01900000-0000-7000-8000-000000000004'
// As version 1 wrote it: which rest is waited for was not known then.
const old = {
  id: '01900000-0000-7000-8000-00000000000a',
  workshop: '01900000-0000-7000-8000-000000000001',
  stream,
  station: '01900000-0000-7000-8000-000000000003',
  stationNo: 1,
  person: '01900000-0000-7000-8000-000000000002',
  madeAt: '2026-05-02T09:00:00.000Z',
  kind: 'waiting',
  version: 1,
  seen: 0,
  standing: { mode: 'now' },
  body: { for: 'rest', until: null, why: null },
} as unknown as AnyEntryDraft

it('reads what lies on the disk since an older version as today’s, and sends it as it was written', () => {
  const kept = { ...old, id: '01900000-0000-7000-8000-00000000000b', stationNo: 2 }
  const memory = new Memory({
    meta: emptyMeta,
    outbox: [{ is: 'entry', stationNo: 2, made: 'offline', texts: [], draft: kept }],
    refused: [],
    book: [{ ...old, seq: 1, receivedAt: old.madeAt } as AnyBookEntry],
    registers: [],
    texts: [],
    photos: [],
  })
  const bodies = memory.entriesOf(stream).map(({ version, body }) => ({ version, body }))
  const lifted = { version: 2, body: { for: 'rest', rest: null, until: null, why: null } }
  expect(bodies).toEqual([lifted, lifted])
  expect(memory.unsent).toMatchObject([{ draft: { version: 1, body: old.body } }])
})

it('knows the version that the server will have, over all revisions of a sheet and what is kept here', () => {
  const id = '01900000-0000-7000-8000-0000000000aa'
  const sheet = (revision: string) => ({ id, revision }) as Registers['sheets'] // what a version hangs on
  const other = { ...sheet('A'), id: '01900000-0000-7000-8000-0000000000ab' }
  const memory = new Memory({
    meta: emptyMeta,
    outbox: [],
    refused: [],
    book: [],
    registers: [
      { key: `sheets/${id}/C`, register: 'sheets', version: 1, body: sheet('C') },
      { key: `sheets/${id}/C.1`, register: 'sheets', version: 2, body: sheet('C.1') },
    ],
    texts: [],
    photos: [],
  })
  expect([sheet('D'), sheet('C'), other].map((body) => memory.versionOf('sheets', body))).toEqual([2, 2, 0])
  const line = { is: 'register', made: 'online', id: 'change', person: 'p', madeAt: old.madeAt, texts: [] } as const
  memory.apply({ kept: [{ ...line, stationNo: 5, register: 'sheets', seenVersion: 2, body: sheet('D') }] })
  expect(memory.versionOf('sheets', sheet('E'))).toBe(3)
})

it('numbers jobs by the order in which they reached the shop’s book, once they have', () => {
  const opened = (id: string, job: string, position?: number) =>
    ({
      ...old,
      id,
      stream: `job:${job}`,
      kind: 'job-opened',
      version: 1,
      body: {},
      seq: 1,
      receivedAt: old.madeAt,
      position,
    }) as unknown as AnyBookEntry
  const memory = new Memory({
    meta: emptyMeta,
    outbox: [],
    refused: [],
    registers: [],
    texts: [],
    photos: [],
    book: [opened('b', 'second', 9), opened('a', 'first', 4)],
  })
  expect(['job:first', 'job:second', 'job:third'].map((one) => memory.jobNumber(one as typeof stream))).toEqual([
    'J01',
    'J02',
    null,
  ])
  // Taken by the server, its place not heard of yet; then heard; a later answer without it takes nothing away.
  memory.apply({ entries: [opened('c', 'third')] })
  expect(memory.jobNumber('job:third')).toBeNull()
  memory.apply({ entries: [opened('c', 'third', 12)] })
  memory.apply({ entries: [opened('c', 'third')] })
  expect(memory.jobNumber('job:third')).toBe('J03')
})
