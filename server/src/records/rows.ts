/** Entries between rows and the book's own form. */

import { liftBody, newestVersion, type PlacedEntry } from '@legwork/contract'
import type { AnyBookEntry, Standing, StationClock } from '@legwork/trade'
import type { Tables } from '../store/tables.ts'

function standingOf(row: Pick<Tables['entry'], 'mode' | 'done_at'>): Standing {
  if (row.mode === 'now' || row.done_at === null) return { mode: 'now' }
  return { mode: row.mode, doneAt: row.done_at }
}

function clockOf(row: Tables['entry']): StationClock | null {
  if (row.clock_boot === null || row.clock_reading === null) return null
  return { boot: row.clock_boot, reading: row.clock_reading }
}

/** A row as the book's entry; what is in the table was checked by the schema of its kind before it was written. */
export function entryOf(row: Tables['entry']): PlacedEntry {
  return {
    id: row.id,
    workshop: row.workshop,
    stream: row.stream as AnyBookEntry['stream'], // checked when it was written
    station: row.station,
    stationNo: row.station_no,
    person: row.person,
    madeAt: row.made_at,
    receivedAt: row.received_at,
    seq: row.seq,
    position: row.position,
    clock: clockOf(row),
    kind: row.kind as AnyBookEntry['kind'], // checked when it was written
    version: newestVersion(row.kind as AnyBookEntry['kind']), // as its body is lifted to
    seen: row.seen,
    standing: standingOf(row),
    body: liftBody(row.kind as AnyBookEntry['kind'], row.version, JSON.parse(row.body)), // as above
  } as PlacedEntry // kind and body belong together: the schema of the kind has seen the body
}

export function rowOf(entry: PlacedEntry): Tables['entry'] {
  return {
    id: entry.id,
    workshop: entry.workshop,
    person: entry.person,
    station: entry.station,
    position: entry.position,
    stream: entry.stream,
    seq: entry.seq,
    station_no: entry.stationNo,
    made_at: entry.madeAt,
    received_at: entry.receivedAt,
    kind: entry.kind,
    version: entry.version,
    seen: entry.seen,
    mode: entry.standing.mode,
    done_at: entry.standing.mode === 'now' ? null : entry.standing.doneAt,
    body: JSON.stringify(entry.body),
    clock_boot: entry.clock?.boot ?? null,
    clock_reading: entry.clock?.reading ?? null,
  }
}
