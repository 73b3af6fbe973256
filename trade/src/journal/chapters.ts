/** The seven chapters of a job: done, open, shut by a gate, not begun, not needed. */
import { message } from '../words/words.ts'
import { isComplete } from './apply-step.ts'
import type { Instant, PutBackItem } from './entry.ts'
import { settling } from './job-rests.ts'
import { type Blocked, type Chapter, type ChapterState, chapterOrder, type JobState, type Made } from './job-state.ts'
import { type Progress, traitsFor } from './progress.ts'

const latest = (all: readonly (Made | null | undefined)[]): Instant | null =>
  all.reduce<Instant | null>((last, made) => (made && (last === null || made.at > last) ? made.at : last), null)

type Finished = { done: boolean; at: Instant | null; needed: boolean; begun: boolean }

function finished(progress: Progress): Record<Chapter, Finished> {
  const { facts, snapshot, chassis, plan, steps, measured, setting, setUp, sag, handedOver, putBack } = progress
  const traits = traitsFor(progress)
  const looked = Object.values(chassis)
  const ticks = steps.flatMap((step) => Object.values(step.done))
  const proofs = measured.filter((one) => one.phase === 'done')
  const working = plan !== null && plan.answer !== 'no'
  const declined = plan?.answer === 'no'
  return {
    'take-in': {
      done: progress.opened !== null && traits.snapshot.every((item) => facts[`snapshot.${item}`] !== 'none'),
      at: latest(Object.values(snapshot)),
      needed: true,
      begun: progress.opened !== null,
    },
    'look-over': {
      done: traits.parts.every((part) => facts[`chassis.${part}`] === 'sound'),
      at: latest(looked),
      needed: true,
      begun: looked.length > 0 || measured.some((one) => one.phase === 'received'),
    },
    plan: { done: plan !== null, at: plan?.at ?? null, needed: true, begun: plan !== null },
    work: {
      done: working && steps.every((step) => isComplete(progress, step)),
      at: latest(ticks),
      needed: !declined,
      begun: ticks.some((tick) => tick !== null),
    },
    prove: {
      done: facts.length === 'within' && leakDownDone(progress),
      at: latest(proofs),
      needed: !declined,
      begun: proofs.length > 0,
    },
    'set-up': {
      done: facts.setting === 'written',
      at: setting?.at ?? null,
      needed: !declined,
      begun: setUp !== null || sag !== null,
    },
    'hand-over': {
      done: handedOver !== null,
      at: handedOver?.at ?? null,
      needed: true,
      begun: Object.keys(putBack).length > 0,
    },
  }
}

/** After a filling one is demanded before the unit leaves, or a person passes the gate by name. */
function leakDownDone({ facts, waivers }: Progress): boolean {
  if (facts.leakDown === 'finished' || waivers.some((waiver) => waiver.gate === 'R22')) return true
  return facts.fill === 'none' && facts.leakDown === 'none'
}

/** What is put back before the unit leaves and is not back yet. */
export function notBack(progress: Progress): PutBackItem | undefined {
  const { facts } = progress
  return facts.brake === 'away' || facts.brake === 'back'
    ? traitsFor(progress).putBack.find((one) => facts[`put-back.${one}`] !== 'yes')
    : undefined
}

/**
 * The first chapter that is needed and not done; hand over where all are. While air settles or a leak-down runs, what can
 * be done meanwhile comes first; a condemned chassis keeps the job where it was looked at.
 *
 * @param at  when it is looked at [ms]
 */
export function currentChapter(progress: Progress, at: number): Chapter {
  if (traitsFor(progress).parts.some((part) => progress.facts[`chassis.${part}`] === 'condemned')) return 'look-over'
  const all = finished(progress)
  const first = chapterOrder.find((chapter) => all[chapter].needed && !all[chapter].done) ?? 'hand-over'
  const waits =
    progress.facts.length === 'within' && (progress.facts.leakDown === 'running' || settling(progress, at) !== null)
  if (first !== 'prove' || !waits) return first
  if (!all['set-up'].done) return 'set-up'
  return notBack(progress) ? 'hand-over' : 'prove'
}

/**
 * The chapters, the current one open or shut by what blocks its next act.
 *
 * @param at       when they are looked at [ms]
 * @param blocked  what stands before the next act
 * @param stopped  a stopped job shuts its current chapter
 */
export function chaptersOf(
  progress: Progress,
  at: number,
  blocked: Blocked | null,
  stopped: JobState['stopped'],
  carriedOver: boolean,
): Record<Chapter, ChapterState> {
  const all = finished(progress)
  const current = currentChapter(progress, at)
  const stateOf = (chapter: Chapter): ChapterState => {
    const { done, at, needed, begun } = all[chapter]
    const plain = { by: null, because: null, at: null }
    if (done) return { ...plain, state: 'done', at }
    if (!needed || carriedOver) return { ...plain, state: 'not-needed' }
    if (chapter !== current) return { ...plain, state: begun ? 'open' : 'not-yet' }
    if (!progress.opened) return { ...plain, state: 'not-yet' }
    if (stopped) return { ...plain, state: 'shut', by: stopped.gate, because: stopped.because }
    if (blocked) return { ...plain, state: 'shut', by: blocked.gate, because: blocked.because }
    return { ...plain, state: 'open' }
  }
  return {
    'take-in': stateOf('take-in'),
    'look-over': stateOf('look-over'),
    plan: stateOf('plan'),
    work: stateOf('work'),
    prove: stateOf('prove'),
    'set-up': stateOf('set-up'),
    'hand-over': stateOf('hand-over'),
  }
}

/** What a stopped or contested job says at its chapter's head. */
export function stopOf(progress: Progress): JobState['stopped'] {
  const traits = traitsFor(progress)
  const condemned = traits.parts.find((part) => progress.facts[`chassis.${part}`] === 'condemned')
  const found = condemned && progress.chassis[condemned]
  if (condemned && found)
    return {
      entry: found.entry,
      gate: 'R1',
      because: message('gate.R1.condemned', { part: message(`part.${condemned}`) }),
    }
  // A condemned part says more than a person's stop, whose reason is on the notice.
  if (progress.stop) return progress.stop
  if (progress.lateStop) return progress.lateStop
  const open = progress.contested.find((one) => one.ruling === null)
  return open
    ? { entry: open.entry, gate: open.gate, because: message('stopped.contested', { why: open.because }) }
    : null
}
