/** May a draft be added to a job? The server refuses online drafts by it, a station by the same on what it knows. */
import { message, sayMessage } from '../words/words.ts'
import { shutFor } from './ask-gates.ts'
import type { AnyEntry, AnyEntryDraft, Instant } from './entry.ts'
import type { Blocked, EntryCheck, JobContext, JobState } from './job-state.ts'
import { isTakenWhenStopped, type OutOfPlace, outOfPlace } from './out-of-place.ts'
import { doneAt, type Progress } from './progress.ts'
import type { EntryRefusalCode } from './refusal-codes.ts'
import { decides } from './replay-order.ts'

function refusal(blocked: Blocked, code: EntryRefusalCode, field: string, came: string): EntryCheck {
  const { gate, because, act } = blocked
  return {
    ok: false,
    gate,
    code,
    field,
    came,
    allowed: sayMessage(because),
    next: sayMessage(act),
    blocked: { gate, because, act },
  }
}

/** What the draft says of itself, to be named in a refusal. */
function cameOf(draft: AnyEntryDraft): string {
  switch (draft.kind) {
    case 'step-done':
      return draft.body.leg ? `${draft.body.step}, ${draft.body.leg}` : draft.body.step
    case 'set-up-worked-out':
    case 'setting-written':
      return `${draft.body.pressure} Pa`
    case 'gate-waived':
      return draft.body.gate
    case 'struck':
    case 'ruled':
      return draft.body.entry
    case 'measured':
      return draft.body.what
    default:
      return draft.kind
  }
}

function out(code: EntryRefusalCode, field: string, because: Blocked['because'], act: Blocked['act']): OutOfPlace {
  return { gate: null, code, field, because, act }
}

/** Strikes, rulings and lifted stops are about other entries: they are judged when they are made. */
function decisionOutOfPlace(state: JobState, entry: AnyEntry, context: JobContext, known: ReadonlySet<string>) {
  if (entry.kind === 'struck') {
    const target = entry.body.entry
    if (state.struck.has(target))
      return out(
        'strike.already',
        'body.entry',
        message('refused.already-struck'),
        message('refused.already-struck.act'),
      )
    if (state.opened?.entry === target)
      return out('strike.opening', 'body.entry', message('refused.opening'), message('refused.opening.act'))
    if (known.has(`struck:${target}`))
      return out(
        'strike.of-strike',
        'body.entry',
        message('refused.strike-of-strike'),
        message('refused.strike-of-strike.act'),
      )
    if (!known.has(target))
      return out('entry.unknown', 'body.entry', message('refused.no-such-entry'), message('refused.no-such-entry.act'))
  }
  if (entry.kind === 'ruled') {
    if (!decides(context, entry.person))
      return out('role.decides', 'person', message('refused.role'), message('refused.role.act'))
    if (!state.contested.some((one) => one.entry === entry.body.entry && one.ruling === null))
      return out(
        'ruling.not-contested',
        'body.entry',
        message('refused.not-contested'),
        message('refused.not-contested.act'),
      )
  }
  if (entry.kind === 'stop-lifted') {
    if (!state.basis.stop && !state.basis.lateStop)
      return state.stopped?.gate === 'R1'
        ? out('stop.condemned', 'kind', message('refused.still-condemned'), message('refused.still-condemned.act'))
        : out('stop.none', 'kind', message('refused.not-stopped'), message('refused.not-stopped.act'))
  }
  return null
}

/**
 * May this draft be added? The same rules as the replay's, and those that only make sense while it is written: whom a strike
 * strikes, whether a stopped job waits for a decision.
 *
 * @param draft  with `receivedAt` where the server has it, so that its time is the one that the replay will use
 * @example checkEntry(reduceJob(entries, context), draft, context)
 */
export function checkEntry(
  state: JobState,
  draft: AnyEntryDraft & { receivedAt?: Instant | null },
  context: JobContext,
): EntryCheck {
  // An entry of the same kind and body; only what the book adds is filled in.
  const entry = { ...draft, seq: null, receivedAt: draft.receivedAt ?? null } as AnyEntry
  const progress: Progress = {
    ...state,
    ...state.basis,
    context,
    steps: state.steps.map((step) => ({ ...step })),
    signs: [...state.signs],
    history: [...state.history],
    measured: [...state.measured],
    waivers: [...state.waivers],
    notes: [...state.notes],
    contested: [...state.contested],
  }
  const came = cameOf(draft)
  if (entry.standing.mode !== 'now' && doneAt(entry) > Date.parse(draft.receivedAt ?? draft.madeAt))
    return refusal(
      out('late.in-future', 'standing.doneAt', message('refused.done-later'), message('refused.done-later.act')),
      'late.in-future',
      'standing.doneAt',
      entry.standing.doneAt,
    )
  const decision = decisionOutOfPlace(state, entry, context, state.entryNames)
  if (decision) return refusal(decision, decision.code, decision.field, came)
  const opened = entry.kind === 'job-opened' || state.opened !== null
  if (entry.standing.mode !== 'now' && opened) return { ok: true }
  const place = outOfPlace(progress, entry)
  if (place) return refusal(place, place.code, place.field, came)
  if (state.stopped && !isTakenWhenStopped(entry.kind)) {
    const because = message('refused.stopped', { why: state.stopped.because })
    return refusal(
      { gate: state.stopped.gate, because, act: message('refused.stopped.act') },
      'job.stopped',
      'kind',
      came,
    )
  }
  const shut = shutFor(progress, entry)
  return shut
    ? refusal(
        shut,
        shut.gate ? `gate.${shut.gate}` : 'step.needs',
        entry.kind === 'step-done' ? 'body.step' : 'kind',
        came,
      )
    : { ok: true }
}
