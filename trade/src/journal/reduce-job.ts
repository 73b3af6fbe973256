/** What a job's entries add up to: replayed in order, gate by gate. The same on the server and in the browser. */
import { rules } from '../gates/rules.ts'
import { newerRevisions } from '../planning/newer-revisions.ts'
import { message } from '../words/words.ts'
import { applyEntry } from './apply-entry.ts'
import { isComplete } from './apply-step.ts'
import { shutFor } from './ask-gates.ts'
import { chaptersOf, stopOf } from './chapters.ts'
import type { AnyEntry, Digest, EntryKind } from './entry.ts'
import { restsOf, toldOfRests } from './job-rests.ts'
import type { Blocked, JobContext, JobStanding, JobState } from './job-state.ts'
import { nextAct } from './next-act.ts'
import { outOfPlace } from './out-of-place.ts'
import { doneAt, factsFor, madeBy, type Progress, progressAtStart, sheetOf } from './progress.ts'
import { replayOrder, rulings } from './replay-order.ts'
import { shutAhead } from './step-ahead.ts'

/** Facts about somebody's decision stay out of dispute: they are judged when they are made. */
const neverContested: readonly EntryKind[] = ['noted', 'struck', 'ruled', 'called-off', 'waiting', 'taken-over']

function shutOrOutOfPlace(progress: Progress, entry: AnyEntry): Blocked | null {
  return outOfPlace(progress, entry) ?? shutFor(progress, entry)
}

/** A gate that may be passed does not hide one with no way round behind it. */
const hard = rules.filter((rule) => rule.noWayRound)

/** Done earlier, entered now: it is the truth and counts; where a gate with no way round was shut then, the job stops. */
function stopByLateTruth(progress: Progress, entry: AnyEntry): void {
  const shut = shutFor(progress, entry, hard)
  if (!shut?.gate) return
  progress.lateStop = { entry: entry.id, gate: shut.gate, because: message('stopped.late', { why: shut.because }) }
}

/** Replays entries: in the server's order, a station's own unsent ones after them. */
export function replay(entries: readonly AnyEntry[], context: JobContext): Progress {
  const progress = progressAtStart(context)
  const { struck, stands } = rulings(entries, context)
  for (const entry of replayOrder(entries)) {
    progress.rests = toldOfRests(progress.rests, entry)
    if (struck.has(entry.id)) continue
    if (entry.standing.mode === 'now' && !neverContested.includes(entry.kind)) {
      const blocked = shutOrOutOfPlace(progress, entry)
      if (blocked) {
        const ruling = stands.has(entry.id) ? 'stands' : null
        const { gate, because } = blocked
        progress.contested.push({ ...madeBy(entry), kind: entry.kind, gate, because, ruling })
        if (ruling === null) continue
      }
    }
    if (entry.standing.mode === 'late') stopByLateTruth(progress, entry)
    applyEntry(progress, entry)
  }
  return progress
}

function standingOf(progress: Progress, stopped: JobState['stopped']): JobStanding {
  if (!progress.opened) return 'booked'
  if (progress.calledOff) return 'called-off'
  if (progress.handedOver) return 'handed-over'
  if (stopped) return 'stopped'
  if (progress.waiting) return 'waiting'
  if (progress.ready) return 'ready'
  return progress.plan && progress.plan.answer !== 'no' ? 'under-way' : 'in'
}

/** Every digest that an entry's body names. */
function digestsIn(entry: AnyEntry): readonly Digest[] {
  const found: Digest[] = []
  const look = (value: unknown): void => {
    if (typeof value === 'string' && /^[0-9a-f]{64}$/.test(value)) found.push(value)
    else if (typeof value === 'object' && value !== null) for (const inner of Object.values(value)) look(inner)
  }
  look(entry.body)
  return found
}

/**
 * What a job's entries add up to.
 *
 * Entries come in the server's order, followed by a station's own unsent ones. An entry made now whose gate does not hold on
 * what is known at its place is contested: it makes no facts and stops the job until a person rules. A strike takes an
 * entry out of account, so that what rested on it becomes contested by the same replay.
 *
 * @param context.now  when the state is looked at, for what ages (a released pressure is vouched for during 12 h); without
 *                     it, the time of the last entry
 * @example reduceJob([], { unit: null, sheetAt: () => undefined, currentSheet: null, roleOf: () => null }).state // 'booked'
 */
export function reduceJob(entries: readonly AnyEntry[], context: JobContext): JobState {
  const progress = replay(entries, context)
  const lastAt = entries.reduce<string | null>(
    (last, { madeAt }) => (last === null || madeAt > last ? madeAt : last),
    null,
  )
  const at = context.now ? Date.parse(context.now) : Math.max(0, ...entries.map(doneAt))
  const moment = { at, person: context.by ?? null }
  const stopped = stopOf(progress)
  const next = nextAct(progress, stopped, moment)
  const carriedOver = entries.length > 0 && entries.every((entry) => entry.standing.mode === 'carried-over')
  const steps = progress.steps.map((step) => ({ ...step, complete: isComplete(progress, step) }))
  const index = steps.findIndex((step) => !step.complete)
  const minutesOf = (all: typeof steps) => all.reduce((sum, step) => sum + step.minutes, 0)
  const minutesPlanned = minutesOf(steps)
  const minutesDone = minutesOf(steps.filter((step) => step.complete))
  const { context: _, facts, releasedAt, rests, filledTo, maximumOnUnit, off, stop, lateStop, ...kept } = progress
  return {
    ...kept,
    basis: { facts, releasedAt, rests, filledTo, maximumOnUnit, off, stop, lateStop },
    facts: factsFor(progress, at, moment.person),
    chapters: chaptersOf(progress, at, next.blocked, stopped, carriedOver),
    state: standingOf(progress, stopped),
    sheet: sheetOf(progress),
    newer: newerRevisions(progress.plan, context.currentSheet),
    steps,
    currentStep: index === -1 ? null : index,
    next,
    ahead: index === -1 || progress.plan?.answer === 'no' ? null : shutAhead(progress, index, moment),
    rests: restsOf(progress),
    stopped,
    struck: rulings(entries, context).struck,
    entryNames: new Set(entries.flatMap(({ id, kind }) => (kind === 'struck' ? [id, `struck:${id}`] : [id]))),
    texts: new Set(entries.flatMap(digestsIn)),
    lastSeq: entries.reduce((last, { seq }) => Math.max(last, seq ?? 0), 0),
    lastAt,
    carriedOver,
    minutesPlanned,
    minutesDone,
    minutesLeft: progress.handedOver ? 0 : minutesPlanned - minutesDone,
  }
}
