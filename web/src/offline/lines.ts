/** What a station keeps of its own: lines in its outbox, lines refused, and where it stands. */
import type { DeliveryItem, FieldError, KeptText } from '@legwork/contract'
import type {
  AnyBookEntry,
  AnyEntryDraft,
  Digest,
  Id,
  Instant,
  PhotoKind,
  RegisterName,
  Registers,
  Stream,
} from '@legwork/trade'

interface Line {
  /** 1, 2, 3 … over everything this station delivers. */
  stationNo: number
  made: DeliveryItem['made']
  /** Texts that its body names by digest. */
  texts: readonly { digest: string; text: string }[]
}
export interface EntryLine extends Line {
  is: 'entry'
  draft: AnyEntryDraft
}
export interface RegisterChangeLine extends Line {
  is: 'register'
  /** Of this change. */
  id: Id
  person: Id
  madeAt: Instant
  register: RegisterName
  /** The version the station had; 0 for a new line. */
  seenVersion: number
  body: Registers[RegisterName]
}
export type OutboxLine = EntryLine | RegisterChangeLine

/** A line that the server refused: nothing was written in the shop's book; it stays here until it was read. */
export interface RefusedLine {
  stationNo: number
  line: OutboxLine
  errors: readonly FieldError[]
  at: Instant
}

/** A line of a register as the server has it; a sheet has one for each revision. */
export interface KeptRegister {
  key: string
  register: RegisterName
  version: number
  body: Registers[RegisterName]
}

/** A photo taken on this station; its bytes lie beside it on the disk. */
export interface OwnPhoto {
  digest: Digest
  /** The job it was taken for. */
  stream: Stream
  /** The kind of line it was taken for; without it, what came in. */
  of?: PhotoKind
  person: Id
  takenAt: Instant
  /** [px] */
  width: number
  height: number
  /** `refused`: the server does not take it; it stays here. */
  state: 'kept' | 'sent' | 'refused'
  /** Why it was refused. */
  says: string | null
}

export interface BenchHands {
  /** `17:00` */
  closes: string
  people: number
}

export interface Meta {
  workshop: { id: Id; name: string; demo: boolean; home: boolean } | null
  station: { id: Id; name: string } | null
  /** Whose hands are on. */
  hands: Id | null
  /** The last `stationNo` given away. */
  lastNo: number
  /** Until when the bench is manned, by the station's own time of day, and by how many; null: the usual. */
  bench: BenchHands | null
  /** How far this station has followed the server's changes; null before the first fill. */
  position: number | null
  /** Server's clock less this station's [ms]. */
  clockOffset: number
}
export const emptyMeta: Meta = {
  workshop: null,
  station: null,
  hands: null,
  bench: null,
  lastNo: 0,
  position: null,
  clockOffset: 0,
}

/** What changes together: on disk in one transaction, then in every page of this station. */
export interface Change {
  entries?: readonly AnyBookEntry[]
  texts?: readonly KeptText[]
  registers?: readonly KeptRegister[]
  /** Lines put into the outbox. */
  kept?: readonly OutboxLine[]
  /** Numbers that left it. */
  left?: readonly number[]
  refused?: readonly RefusedLine[]
  /** Refused lines that were read and put away. */
  readAway?: readonly number[]
  photos?: readonly OwnPhoto[]
  /** Photos whose bytes were taken off this station. */
  photosGone?: readonly Digest[]
  meta?: Partial<Meta>
}

/** Where a register's line is kept: by its id, a sheet by id and revision. */
export function keyOf(register: RegisterName, body: Registers[RegisterName]): string {
  return register === 'sheets' && 'revision' in body
    ? `${register}/${body.id}/${body.revision}`
    : `${register}/${body.id}`
}
