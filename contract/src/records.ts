/** What the routes of the records answer with. */
import type {
  AnyBookEntry,
  Chapter,
  ChapterStanding,
  Digest,
  Id,
  Instant,
  JobStanding,
  RegisterName,
  Registers,
  Stream,
} from '@legwork/trade'

export interface WorkshopLine {
  id: Id
  name: string
  /** At the head of its papers; null until somebody said it. */
  address: string | null
  phone: string | null
  /** What it stands in for, in its own words. */
  terms: string | null
  demo: boolean
  home: boolean
  createdAt: Instant
}

/** A job as the Bench shows it. */
export interface JobCard {
  stream: Stream
  /** J01, J02 … by the order in which jobs reached the book. */
  number: number
  unit: Id
  rider: Id | null
  visit: Id
  state: JobStanding
  chapter: Chapter
  chapters: { [C in Chapter]: ChapterStanding }
  stepIndex: number | null
  stepCount: number
  minutesPlanned: number
  minutesLeft: number
  /** The gate that shuts the next act. */
  blockedBy: string | null
  asked: Digest | null
  promised: string | null
  stopped: boolean
  contested: number
  carriedOver: boolean
  openedAt: Instant
  lastAt: Instant
}

export interface RegisterLine<R extends RegisterName> {
  version: number
  body: Registers[R]
}
export type RegistersAnswer = { workshop: WorkshopLine; position: number } & {
  [R in RegisterName]: RegisterLine<R>[]
}

export interface KeptText {
  digest: Digest
  text: string | null
  removedOn: Instant | null
}

export type PlacedEntry = AnyBookEntry & { position: number }
export interface EntriesAnswer {
  entries: PlacedEntry[]
  texts: KeptText[]
  position: number
}

export interface EntryChange {
  position: number
  entry: PlacedEntry
  texts: KeptText[]
}
export interface RegisterChange<R extends RegisterName = RegisterName> {
  position: number
  register: R
  version: number
  body: Registers[R]
}
