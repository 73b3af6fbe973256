/**
 * Entries: what a hand wrote into a book. A book is append-only; the server's `seq` is its one order.
 * Free text about a person is never in an entry: the entry carries the text's digest, the text is kept beside it and can
 * be erased without touching the entry.
 */

import type { RestKind } from '../rests/rest-kinds.ts'

/** UUIDv7 in its usual text form. */
export type Id = string
/** Date and time, ISO 8601 with zone `Z`. */
export type Instant = string
/** SHA-256 of a text's UTF-8 bytes, 64 hexadecimal digits. */
export type Digest = string
/** A job's book is `job:<id>`, a unit's own readings are `unit:<id>`. */
export type Stream = `job:${Id}` | `unit:${Id}`

export type Leg = 'left' | 'right'
export const legs: readonly Leg[] = ['left', 'right']

/** A value read off an instrument: SI, gauge pressures in Pa, temperatures in K; '1' is a ratio. */
export interface Reading {
  value: number
  measure: 'm' | 'Pa' | 'm³' | 'N' | 's' | 'N·m' | 'K' | 'clicks' | 'count' | 'm²/s' | '1'
  instrument: Id | null
  /** For a pump: filled through the hose, or put on afterwards (the hose then took some air). */
  how: 'pumped' | 'attached' | null
}

export type SnapshotItem = 'length' | 'ring' | 'photos' | 'pressure' | 'rebound' | 'compression'
export type ChassisPart = 'crown' | 'steerer' | 'stanchions' | 'lower-legs' | 'dropouts'
export const chassisParts: readonly ChassisPart[] = ['crown', 'steerer', 'stanchions', 'lower-legs', 'dropouts']
export type PutBackItem = 'wheel' | 'axle' | 'caliper' | 'cables' | 'brake-holds' | 'wheel-free'
export type GateId = `R${number}`
export type WaitsFor = 'answer' | 'part' | 'specialist' | 'rest' | 'rider'

/** One step of a plan as agreed: the plan is frozen, later revisions of sheet or procedure do not reach it. */
export interface PlannedStep {
  step: string
  procedure: string
  revision: number
  /** The legs it is done on, or null where it is done once. */
  legs: readonly Leg[] | null
  minutes: number
}

/** Hours ridden since somebody serviced it. */
export interface HoursSaid {
  what: 'hours-since'
  /** [h] */
  value: number | null
}

/** Where a force was read in the press. */
export interface PressedAt {
  /** The entry of the filling that it was pressed at. */
  of: Id
  /** [m] from full length. */
  stroke: number
  way: 'pressing' | 'releasing'
  /** How long it was held before it was read [s]; null where no clock ran. */
  held: number | null
}

/** What a return was timed over: let go at one mark, timed to the other. */
export interface ReleasedFrom {
  /** [m] from full length. */
  from: number
  to: number
  /** Of the rebound adjuster, from closed; null where it has none. */
  clicks: number | null
  /** Counted in pictures of a film; null where a clock was pressed. */
  film: { pictures: number; perSecond: number } | null
}

/** What each kind of entry says, in its newest version. */
export interface EntryBodies {
  'job-opened': {
    unit: Id
    rider: Id | null
    bike: Id | null
    visit: Id
    asked: Digest | null
    spendAllowed: number | null
  }
  'snapshot-kept': {
    item: SnapshotItem
    reading: Reading | null
    photos: readonly Digest[]
    notKnownBecause: Digest | null
  }
  'chassis-checked': {
    part: ChassisPart
    verdict: 'sound' | 'condemned'
    found: Digest | null
    /** Not with entries older than this field. */
    photos?: readonly Digest[] | undefined
  }
  'sign-noted': { sign: string; state: 'present' | 'absent' | 'unknown'; by: 'said' | 'seen' }
  /** What happened to it before it came; null where nobody can tell. Hours in h. */
  'history-said': { what: 'crashed' | 'second-hand' | 'serviced-lately'; value: boolean | null } | HoursSaid
  measured: {
    what: string
    leg: Leg | null
    phase: 'received' | 'during' | 'done'
    reading: Reading
    press?: PressedAt
    release?: ReleasedFrom
  }
  'plan-agreed': {
    services: string[]
    sheet: { id: Id; revision: string }
    steps: PlannedStep[]
    answer: 'yes' | 'no' | 'partly'
    declined: string[]
    answeredBy: 'rider' | 'workshop'
    /** In the shop's money, as it was told; not with entries older than this field. */
    price?: number | undefined
  }
  'set-up-worked-out': {
    /** Gauge in the chamber at full length [Pa]. */
    pressure: number
    /** 90 % band [Pa]. */
    band: [number, number]
    temperature: number
    ambient: number
    riderMass: number
    frontShare: number
    sag: number
    load: number
    spacers: number
  }
  'step-done': {
    step: string
    leg: Leg | null
    reading: Reading | null
    wrenchSet: number | null
    saidSo: GateId[]
    /** Which oil, seals or spacers, by name and batch, in the words of who ticks. */
    used?: Digest | null
  }
  'sag-measured': { fromAbove: number; fromBelow: number; instrument: Id | null }
  /** Where the rider says it will be ridden: altitude off a map [m], temperature [K]. */
  'trail-said': { altitude: number; temperature: number }
  'setting-written': {
    pressure: number
    temperature: number
    pump: Id | null
    spacers: number
    clicks: { rebound: number | null; compression: number | null }
  }
  'put-back': { item: PutBackItem; reading: Reading | null }
  'gate-waived': { gate: GateId; reason: Digest }
  'taken-over': { from: Id | null }
  /** Version 2: `rest` says which one is waited for. */
  waiting: { for: WaitsFor | null; rest: RestKind | null; until: Instant | null; why: Digest | null }
  stopped: { gate: GateId | null; why: Digest }
  'stop-lifted': { why: Digest }
  ready: { minutes: number | null }
  'handed-over': { receivedBy: Digest; initials: Digest | null }
  'called-off': { why: Digest }
  noted: {
    text: Digest
    /** Not with entries older than this field. */
    photos?: readonly Digest[] | undefined
  }
  struck: { entry: Id; reason: Digest }
  /** A person's decision on a contested entry. */
  ruled: { entry: Id; ruling: 'stands' | 'struck'; reason: Digest }
}

export type EntryKind = keyof EntryBodies

/** How an entry relates to the moment it was written. */
export type Standing =
  | { mode: 'now' }
  /** Done earlier, entered now: both times are kept. */
  | { mode: 'late'; doneAt: Instant }
  /** From the paper book: not gated, marked so on screen and paper. */
  | { mode: 'carried-over'; doneAt: Instant }

/**
 * What a station's monotonic clock showed [ms]. It goes on whatever is done to the time of day, and begins anew with every
 * boot: readings of two boots are not compared.
 */
export interface StationClock {
  boot: Id
  reading: number
}

/** An entry as its station made it. */
export interface EntryDraft<K extends EntryKind = EntryKind> {
  id: Id
  workshop: Id
  stream: Stream
  station: Id
  /** 1, 2, 3 … for each station over everything it delivers; a gap waits. */
  stationNo: number
  person: Id
  madeAt: Instant
  /** Not with entries of stations older than this field, nor of stations without such a clock. */
  clock?: StationClock | null
  kind: K
  version: number
  /** The last `seq` of this stream the station had seen. */
  seen: number
  standing: Standing
  body: EntryBodies[K]
}

/** An entry as the book has it. */
export interface BookEntry<K extends EntryKind = EntryKind> extends EntryDraft<K> {
  receivedAt: Instant
  seq: number
}

/** Every kind with its own body, so that `kind` narrows `body`. */
export type AnyEntryDraft = { [K in EntryKind]: EntryDraft<K> }[EntryKind]
export type AnyBookEntry = { [K in EntryKind]: BookEntry<K> }[EntryKind]
/** An entry of a station that is not in the shop's book yet has neither `seq` nor `receivedAt`. */
export type AnyEntry = AnyBookEntry | (AnyEntryDraft & { seq: null; receivedAt: null })
