/** What the entries of a job have added up to so far, while they are replayed one after the other. */
import type { Traits } from '../gates/asked.ts'
import { type Facts, factsAtTakeIn } from '../gates/facts.ts'
import { traitsOf } from '../gates/traits.ts'
import type { Sheet } from '../sheets/sheet.ts'
import type { AnyEntry, Id } from './entry.ts'
import type { Basis, Contested, JobContext, JobState, Made, StepState } from './job-state.ts'

/** After so long nobody vouches for the pressure any more (common practice, no source). */
const pressureKnownFor = 12 * 3600 * 1000
/** Free length may be off by this much where the sheet says nothing else (common practice, no source). */
const lengthAllowed = 0.002

type Kept = Pick<
  JobState,
  | 'opened'
  | 'plan'
  | 'snapshot'
  | 'chassis'
  | 'setUp'
  | 'sag'
  | 'trail'
  | 'setting'
  | 'putBack'
  | 'ready'
  | 'handedOver'
  | 'calledOff'
  | 'waiting'
  | 'hands'
>

export interface Progress extends Kept, Basis {
  context: JobContext
  steps: StepState[]
  signs: JobState['signs'][number][]
  history: JobState['history'][number][]
  measured: JobState['measured'][number][]
  waivers: JobState['waivers'][number][]
  notes: JobState['notes'][number][]
  contested: Contested[]
}

/** Before the first entry. */
export function progressAtStart(context: JobContext): Progress {
  return {
    context,
    facts: factsAtTakeIn(),
    opened: null,
    plan: null,
    steps: [],
    snapshot: {},
    chassis: {},
    signs: [],
    history: [],
    measured: [],
    setUp: null,
    sag: null,
    trail: null,
    setting: null,
    putBack: {},
    ready: null,
    handedOver: null,
    calledOff: null,
    waiting: null,
    waivers: [],
    notes: [],
    contested: [],
    hands: null,
    releasedAt: null,
    rests: {},
    filledTo: null,
    maximumOnUnit: null,
    off: { travel: null, length: null },
    stop: null,
    lateStop: null,
  }
}

/** When it was done [ms]: said, or by the earlier of the station's clock and its receipt. */
export function doneAt(entry: AnyEntry): number {
  if (entry.standing.mode !== 'now') return Date.parse(entry.standing.doneAt)
  const made = Date.parse(entry.madeAt)
  return entry.receivedAt === null ? made : Math.min(made, Date.parse(entry.receivedAt))
}

export function madeBy(entry: AnyEntry): Made {
  return {
    entry: entry.id,
    person: entry.person,
    at: entry.standing.mode === 'now' ? entry.madeAt : entry.standing.doneAt,
    carriedOver: entry.standing.mode === 'carried-over',
    late: entry.standing.mode === 'late',
  }
}

/** The frozen sheet of the plan; before one, the unit's as it is now. */
export function sheetOf(progress: Progress): Sheet | null {
  const { plan, context } = progress
  return plan ? (context.sheetAt(plan.sheet.id, plan.sheet.revision) ?? null) : context.currentSheet
}

export function traitsFor(progress: Progress): Traits {
  const sheet = sheetOf(progress)
  return traitsOf(sheet?.kind ?? progress.context.unit?.kind ?? 'fork-air', sheet)
}

export function maximumFor(progress: Progress): number | null {
  return sheetOf(progress)?.maxPressure?.value ?? progress.maximumOnUnit
}

export function lengthAllowedBy(sheet: Sheet | null): number {
  return sheet?.limits['short-of-length']?.watch ?? lengthAllowed
}

/**
 * The facts as they stand for this person at this time: a released pressure is vouched for by the hands that released it
 * or took the unit over, and for 12 h.
 */
export function factsFor(progress: Progress, at: number, person: Id | null): Facts {
  const { facts, releasedAt, hands } = progress
  if (facts.pressure !== 'released') return facts
  const stale = releasedAt === null || at - releasedAt > pressureKnownFor
  const otherHands = person !== null && hands !== null && hands !== person
  return stale || otherHands ? { ...facts, pressure: 'unknown' } : facts
}
