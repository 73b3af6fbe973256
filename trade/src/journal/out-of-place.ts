/** The plain order of things, apart from the gates: what an entry must find to be possible at all. */
import { isWaivable } from '../gates/rules.ts'
import type { ProcedureStep } from '../procedures/procedure.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import { type Message, message } from '../words/words.ts'
import { holds, isComplete, unmetOn } from './apply-step.ts'
import type { AnyEntry, EntryKind, Leg } from './entry.ts'
import type { Blocked } from './job-state.ts'
import { doneAt, factsFor, type Progress, sheetOf } from './progress.ts'
import type { EntryRefusalCode } from './refusal-codes.ts'
import { decides } from './replay-order.ts'

export type OutOfPlace = Blocked & { code: EntryRefusalCode; field: string }

const out = (code: EntryRefusalCode, field: string, because: Message, act: Message): OutOfPlace => ({
  gate: null,
  code,
  field,
  because,
  act,
})

const takenWhenStopped: readonly EntryKind[] = [
  'snapshot-kept',
  'chassis-checked',
  'sign-noted',
  'history-said',
  'measured',
  'waiting',
  'stopped',
  'stop-lifted',
  'called-off',
  'noted',
  'struck',
  'ruled',
  'taken-over',
]
const takenWhenClosed: readonly EntryKind[] = ['noted', 'measured', 'struck', 'ruled']

/** The step of the plan that makes a fact as it is needed, to say what comes before. */
function makerOf(progress: Progress, fact: string, { needs, needsBehind }: ProcedureStep): Message | null {
  const pattern = `${fact.split('.')[0]}.*`
  const at = (of: object): readonly unknown[] => [Reflect.get(of, fact) ?? Reflect.get(of, pattern) ?? []].flat()
  const wanted = [...at(needs), ...at(needsBehind?.needs ?? {})]
  const step = progress.steps
    .map((one) => one.step)
    .filter(isStepId)
    .find((id) => at(procedureSteps[id].makes).some((made) => wanted.includes(made)))
  return step ? message(`step.${step}`) : null
}

/** What a step of the plan needs and does not find. */
export function stepOutOfPlace(
  progress: Progress,
  id: string,
  leg: Leg | null,
  facts: Progress['facts'],
): OutOfPlace | null {
  const planned = progress.steps.find((one) => one.step === id)
  if (!planned || !isStepId(id))
    return out('step.not-in-plan', 'body.step', message('refused.unknown-step'), message('refused.unknown-step.act'))
  const step: ProcedureStep = procedureSteps[id]
  if ((step.legs === 'each') !== (leg !== null))
    return out(
      'step.leg',
      'body.leg',
      message('refused.leg', { how: message(`refused.leg.${step.legs}`) }),
      message('refused.leg.act'),
    )
  if (planned.done[leg ?? 'once'] && holds(facts, step, leg))
    return out('step.already-done', 'body.step', message('refused.already-done'), message('refused.already-done.act'))
  const missing = unmetOn(facts, step, leg, sheetOf(progress))
  if (missing === null) return null
  if (missing === 'pressureToFill')
    return out('set-up.missing', 'body.step', message('refused.needs-set-up'), message('refused.needs-set-up.act'))
  const before = makerOf(progress, missing, step)
  if (before === null)
    return out('step.not-in-plan', 'body.step', message('refused.unknown-step'), message('refused.unknown-step.act'))
  return out(
    'step.needs',
    'body.step',
    message('refused.needs', { step: before }),
    message('refused.needs.act', { step: before }),
  )
}

function unfinished(progress: Progress): OutOfPlace | null {
  const open = progress.plan?.answer === 'no' ? undefined : progress.steps.find((step) => !isComplete(progress, step))
  if (!open || !isStepId(open.step)) return null
  const step = message(`step.${open.step}`)
  return out(
    'work.unfinished',
    'kind',
    message('refused.unfinished', { step }),
    message('refused.unfinished.act', { step }),
  )
}

function placeOfKind(progress: Progress, entry: AnyEntry): OutOfPlace | null {
  switch (entry.kind) {
    case 'step-done':
      return stepOutOfPlace(progress, entry.body.step, entry.body.leg, factsFor(progress, doneAt(entry), entry.person))
    case 'plan-agreed':
      if (entry.body.answer !== 'no' && entry.body.steps.length === 0)
        return out('plan.empty', 'body.steps', message('refused.plan-empty'), message('refused.plan-empty.act'))
      return null
    case 'set-up-worked-out':
    case 'setting-written':
      return Number.isFinite(entry.body.pressure) && entry.body.pressure >= 0
        ? null
        : out('pressure.range', 'body.pressure', message('refused.pressure'), message('refused.pressure.act'))
    case 'gate-waived':
      if (!isWaivable(entry.body.gate))
        return out(
          'gate.no-way-round',
          'body.gate',
          message('refused.no-way-round'),
          message('refused.no-way-round.act'),
        )
      return decides(progress.context, entry.person)
        ? null
        : out('role.decides', 'person', message('refused.role'), message('refused.role.act'))
    case 'stop-lifted':
      return decides(progress.context, entry.person)
        ? null
        : out('role.decides', 'person', message('refused.role'), message('refused.role.act'))
    case 'ready':
    case 'handed-over':
      return unfinished(progress)
    default:
      return null
  }
}

/** What stands in an entry's way apart from the gates, or null. */
export function outOfPlace(progress: Progress, entry: AnyEntry): OutOfPlace | null {
  if (entry.kind === 'job-opened')
    return progress.opened
      ? out('job.already-open', 'kind', message('refused.already-open'), message('refused.already-open.act'))
      : null
  if (!progress.opened) return out('job.not-open', 'kind', message('refused.not-open'), message('refused.not-open.act'))
  if ((progress.handedOver || progress.calledOff) && !takenWhenClosed.includes(entry.kind))
    return out('job.closed', 'kind', message('refused.closed'), message('refused.closed.act'))
  if (progress.stop && !takenWhenStopped.includes(entry.kind))
    return out(
      'job.stopped',
      'kind',
      message('refused.stopped', { why: progress.stop.because }),
      message('refused.stopped.act'),
    )
  return placeOfKind(progress, entry)
}

/** Whether an entry may be made while the job is stopped. */
export function isTakenWhenStopped(kind: EntryKind): boolean {
  return takenWhenStopped.includes(kind)
}
