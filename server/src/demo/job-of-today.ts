/** A job of today in the demo: opened at a desk, written line by line, two minutes apart. */
import {
  type AnyEntry,
  demoRiders,
  demoSheet,
  demoUnits,
  type EntryBodies,
  type EntryKind,
  type Id,
  type JobContext,
  type JobState,
  reduceJob,
  type Sheet,
  type Stream,
} from '@legwork/trade'
import type { DemoPlaces } from './carry-over.ts'
import { type DemoStation, freshId } from './demo-station.ts'

/** What today's readings are taken with. */
export interface DemoInstruments {
  pump: Id
  wrench: Id
  cylinder: Id
  tape: Id
  scale: Id
  thermometer: Id
}

export interface DemoShop {
  people: ReadonlyMap<string, Id>
  places: ReadonlyMap<string, DemoPlaces>
  instruments: DemoInstruments
}

export interface Begun {
  stream: Stream
  /** @returns the entry's id */
  write: <K extends EntryKind>(kind: K, body: EntryBodies[K]) => Id
  /** Nothing is written for so many minutes. */
  wait: (minutes: number) => void
  state: () => JobState
  sheet: Sheet
  text: (text: string) => string
  riderMass: number
  frontShare: number
}

export function begin(hand: DemoStation, shop: DemoShop, key: string, asked: string, opened: Date): Begun {
  const place = shop.places.get(key)
  const unit = demoUnits.find((one) => one.key === key)
  if (!place || !unit) throw new Error(`the demo has no unit ${key}`)
  const { key: label, kind, description } = unit
  const sheet = demoSheet(unit, place.sheet)
  const context: JobContext = {
    unit: {
      id: place.unit,
      label,
      kind,
      description,
      serial: null,
      rider: place.rider,
      bike: place.bike,
      sheet: place.sheet,
    },
    sheetAt: () => sheet,
    currentSheet: sheet,
    roleOf: () => 'technician',
  }
  const stream: Stream = `job:${freshId(opened)}`
  const written: AnyEntry[] = []
  let at = opened.getTime()
  const visit = freshId(opened)
  hand.register('visits', { id: visit, rider: place.rider, promised: null, leftWith: null }, opened)
  const write: Begun['write'] = (kind, body) => {
    const entry = hand.entry(stream, kind, body, new Date(at), { mode: 'now' })
    written.push(entry)
    at += 120_000
    return entry.id
  }
  const { unit: unitId, rider: riderId, bike } = place
  write('job-opened', { unit: unitId, rider: riderId, bike, visit, asked: hand.text(asked), spendAllowed: null })
  const rider = demoRiders.find((one) => one.key === unit.rider)
  const { mass: riderMass = 80, frontShare } = rider ?? {}
  return {
    stream,
    write,
    wait: (minutes) => {
      at += minutes * 60_000
    },
    state: () => reduceJob(written, context),
    sheet,
    text: hand.text,
    riderMass,
    frontShare: frontShare ?? 0.42,
  }
}
