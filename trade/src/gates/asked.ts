/** What a gate is asked: an act or an entry, on the facts so far and on what the sheet says. */
import type { ChassisPart, EntryKind, GateId, Leg, PutBackItem, Reading, SnapshotItem } from '../journal/entry.ts'
import type { Blocked } from '../journal/job-state.ts'
import type { Act } from '../procedures/procedure.ts'
import type { Rested } from '../rests/rested.ts'
import type { Message } from '../words/words.ts'
import type { Facts } from './facts.ts'

/** What of the unit's kind the gates ask about. */
export interface Traits {
  spring: 'air' | 'coil'
  parts: readonly ChassisPart[]
  snapshot: readonly SnapshotItem[]
  putBack: readonly PutBackItem[]
  /** A compression adjuster or lever. */
  compression: boolean
}

export interface Asked {
  entry: EntryKind
  acts: readonly Act[]
  facts: Facts
  traits: Traits
  leg: Leg | null
  /** What the entry itself says. */
  saidSo: readonly GateId[]
  wrenchSet: number | null
  reading: Reading | null
  snapshotItem: SnapshotItem | null
  fills: 'quarter' | 'half' | 'target' | null
  /** A pressure that is to be filled, worked out or written [Pa gauge]. */
  pressure: number | null
  /** What the set-up worked out [Pa gauge]. */
  target: number | null
  /** The largest that may be filled [Pa gauge]; null where nobody has said. */
  maximum: number | null
  /** Values that the plan needs and the sheet does not give from its maker or a measurement here. */
  missing: readonly Message[]
  /** How long the foam rings have lain in oil; null where none were put in. */
  soaked: Rested | null
  /** Whether a leak-down begins or ends with this entry, and what had to rest until then; null where nothing rests. */
  leakDown: { act: 'begins' | 'ends' | null; rested: Rested | null }
  /** Of the snapshot: whether the pressure was read already. */
  readBefore: boolean
  /** How far the measured travel and free length are from the sheet's [m]. */
  off: { travel: number | null; length: number | null; lengthAllowed: number }
}

export interface Rule {
  id: GateId
  /** Nobody can waive it. */
  noWayRound: boolean
  /** Software can't know it: who ticks says so. */
  saidSo: boolean
  guards: { acts?: readonly Act[]; entries?: readonly EntryKind[] }
  /** Null where it stands open. */
  shut(asked: Asked): Blocked | null
}
