/**
 * What a job's entries add up to. One pure function, `reduceJob` (journal/reduce-job.ts), makes it on the server and in the
 * browser; `checkEntry` (journal/check-entry.ts) says whether a draft may be added to it.
 */
import type { Facts } from '../gates/facts.ts'
import type { NewerRevisions } from '../planning/newer-revisions.ts'
import type { Role, Unit } from '../registers.ts'
import type { Rest } from '../rests/rest.ts'
import type { RestKind } from '../rests/rest-kinds.ts'
import type { RestClock } from '../rests/rested.ts'
import type { Sheet } from '../sheets/sheet.ts'
import type { Message } from '../words/words.ts'
import type {
  ChassisPart,
  Digest,
  EntryBodies,
  EntryKind,
  GateId,
  Id,
  Instant,
  Leg,
  PlannedStep,
  PressedAt,
  PutBackItem,
  Reading,
  ReleasedFrom,
  SnapshotItem,
} from './entry.ts'
import type { EntryRefusalCode } from './refusal-codes.ts'

/** What the entries do not say themselves. */
export interface JobContext {
  unit: Unit | null
  /** That very revision, or undefined where it is not here. */
  sheetAt(id: Id, revision: string): Sheet | undefined
  /** The unit's sheet as it is now, for what is asked before a plan is agreed. */
  currentSheet: Sheet | null
  roleOf(person: Id): Role | null
  /** When it is looked at; without it, the time of the last entry. */
  now?: Instant
  /** Who looks at it: a pressure is vouched for only by the hands that released it. */
  by?: Id
  /** Whether a draft is checked on a station without its line to the server: nothing there tells the server's time. */
  offline?: boolean
}

export type Chapter = 'take-in' | 'look-over' | 'plan' | 'work' | 'prove' | 'set-up' | 'hand-over'
export const chapterOrder: readonly Chapter[] = ['take-in', 'look-over', 'plan', 'work', 'prove', 'set-up', 'hand-over']
export type ChapterStanding = 'not-yet' | 'open' | 'done' | 'shut' | 'not-needed'
export interface ChapterState {
  state: ChapterStanding
  /** The gate that shuts it. */
  by: GateId | null
  because: Message | null
  /** When it was done. */
  at: Instant | null
}

export type JobStanding = 'booked' | 'in' | 'under-way' | 'waiting' | 'stopped' | 'ready' | 'handed-over' | 'called-off'

/** Who entered what, when. `at` is when it was done, not when it was written. */
export interface Made {
  entry: Id
  person: Id
  at: Instant
  carriedOver: boolean
  late: boolean
}

export interface StepDone extends Made {
  reading: Reading | null
  wrenchSet: number | null
  saidSo: readonly GateId[]
  used: Digest | null
}

export interface StepState extends PlannedStep {
  /** Ticks by leg; a step done once has `once`. */
  done: { once: StepDone | null; left: StepDone | null; right: StepDone | null }
  complete: boolean
  carriedOver: boolean
}

/** Something stands in the way: the gate (null where it is the plain order of things), why, and the act that opens it. */
export interface Blocked {
  gate: GateId | null
  because: Message
  act: Message
}

export type NextKind =
  | 'open'
  | 'snapshot'
  | 'chassis'
  | 'plan'
  | 'set-up'
  | 'step'
  | 'measure'
  | 'setting'
  | 'put-back'
  | 'hand-over'
  | 'rule'
  | 'nothing'

/** The one thing to do next, and what stands in its way. */
export interface NextAct {
  kind: NextKind
  chapter: Chapter
  step: string | null
  leg: Leg | null
  /** Snapshot item, chassis part, what to measure, item to put back, or the contested entry. */
  item: string | null
  says: Message
  blocked: Blocked | null
}

export interface SnapshotKept extends Made {
  reading: Reading | null
  photos: readonly Digest[]
  notKnownBecause: Digest | null
}
export interface ChassisFound extends Made {
  verdict: 'sound' | 'condemned'
  found: Digest | null
  photos: readonly Digest[]
}
export interface MeasuredEntry extends Made {
  what: string
  leg: Leg | null
  phase: 'received' | 'during' | 'done'
  reading: Reading
  press?: PressedAt
  release?: ReleasedFrom
}
export type Contested = Made & { kind: EntryKind; gate: GateId | null; because: Message; ruling: 'stands' | null }

/** What the gates go by beside what is shown: as the last entry left it. */
export interface Basis {
  facts: Facts
  /** When the air was last let out [ms]. */
  releasedAt: number | null
  /** Rests that began, by what rests. */
  rests: Partial<Record<RestKind, RestClock>>
  /** What air last went in to [Pa gauge]. */
  filledTo: number | null
  /** Printed on the unit [Pa gauge]. */
  maximumOnUnit: number | null
  /** How far measured travel and free length are from the sheet's [m]. */
  off: { travel: number | null; length: number | null }
  /** A person's stop, and what was entered later and should have been otherwise. */
  stop: JobState['stopped']
  lateStop: JobState['stopped']
}

export interface JobState {
  basis: Basis
  opened: (Made & EntryBodies['job-opened']) | null
  /** As they stand now and for who looks. */
  facts: Facts
  chapters: Record<Chapter, ChapterState>
  state: JobStanding
  plan: (Made & EntryBodies['plan-agreed']) | null
  /** Later revisions than the plan's, to be offered; null where there are none. */
  newer: NewerRevisions | null
  /** The frozen sheet of the plan; before a plan the unit's current one; null where it is not here. */
  sheet: Sheet | null
  steps: readonly StepState[]
  /** Index into `steps` of the first step not complete; null when none is left. */
  currentStep: number | null
  next: NextAct
  /** What shuts the way past the current step while it is incomplete, e.g. R16 while a foot is not torqued. */
  ahead: Blocked | null
  /** What rests or has rested: rings, warm air, the leak-down. */
  rests: readonly Rest[]
  snapshot: Partial<Record<SnapshotItem, SnapshotKept>>
  chassis: Partial<Record<ChassisPart, ChassisFound>>
  signs: readonly (Made & EntryBodies['sign-noted'])[]
  /** What happened to it before it came, as it was said; the last word on each counts. */
  history: readonly (Made & EntryBodies['history-said'])[]
  measured: readonly MeasuredEntry[]
  setUp: (Made & EntryBodies['set-up-worked-out']) | null
  sag: (Made & EntryBodies['sag-measured']) | null
  /** Where it will be ridden; null where nobody said. */
  trail: (Made & EntryBodies['trail-said']) | null
  setting: (Made & EntryBodies['setting-written']) | null
  putBack: Partial<Record<PutBackItem, Made & { reading: Reading | null }>>
  ready: (Made & EntryBodies['ready']) | null
  handedOver: (Made & EntryBodies['handed-over']) | null
  calledOff: Made | null
  waiting: (Made & EntryBodies['waiting']) | null
  waivers: readonly (Made & EntryBodies['gate-waived'])[]
  /** `why`: a person's own reason, where a person stopped it. */
  stopped: { entry: Id; gate: GateId | null; because: Message; why?: Digest } | null
  /** Entries whose gate did not hold on what was so far known; without a ruling the job is stopped. */
  contested: readonly Contested[]
  struck: ReadonlySet<Id>
  /** Every entry of the book by its id; strikes also as `struck:<id>`. */
  entryNames: ReadonlySet<string>
  notes: readonly (Made & { text: Digest; photos: readonly Digest[] })[]
  /** Digests of every text that the book names. */
  texts: ReadonlySet<Digest>
  /** Who has the unit in hands. */
  hands: Id | null
  lastSeq: number
  lastAt: Instant | null
  /** Whether the whole job came from the paper book. */
  carriedOver: boolean
  minutesPlanned: number
  minutesDone: number
  minutesLeft: number
}

/** May a draft be added? A refusal names the gate, the field, what came, what is allowed and the next step. */
export type EntryCheck =
  | { ok: true }
  | {
      ok: false
      gate: GateId | null
      code: EntryRefusalCode
      field: string
      came: string
      allowed: string
      next: string
      blocked: Blocked
    }
