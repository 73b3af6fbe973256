import type { AnyBookEntry, AnyEntryDraft } from '@legwork/trade'
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
