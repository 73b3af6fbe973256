/** What stands before a step that nobody has ticked yet: asked as if its tick said everything that it should. */
import type { Asked } from '../gates/asked.ts'
import { firstShut, rules } from '../gates/rules.ts'
import type { ProcedureStep } from '../procedures/procedure.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import { changed, factsAfterStep, isComplete } from './apply-step.ts'
import { plainAsking } from './ask-gates.ts'
import type { Id, Leg, Reading } from './entry.ts'
import type { Blocked, StepState } from './job-state.ts'
import { stepOutOfPlace } from './out-of-place.ts'
import { factsFor, type Progress } from './progress.ts'

/** Now, and whose hands are on it; without them what the last entry left. */
export interface Moment {
  at: number
  person: Id | null
}

const goodReading = (step: ProcedureStep): Reading | null => {
  if (step.acts.includes('drains')) return { value: 0, measure: 'm³', instrument: null, how: null }
  return step.makes.travel ? { value: 0, measure: 'm', instrument: null, how: null } : null
}

function asIfTicked(progress: Progress, step: ProcedureStep, leg: Leg | null, facts: Asked['facts']): Asked {
  return {
    ...plainAsking(progress, facts),
    entry: 'step-done',
    acts: step.acts,
    leg,
    saidSo: rules.map((rule) => rule.id),
    wrenchSet: 0,
    reading: goodReading(step),
    fills: step.fills ?? null,
  }
}

/** The first leg of a step that is not ticked; null where it is done once or nothing is left. */
export function openLeg(step: StepState): Leg | null {
  return step.legs?.find((leg) => step.done[leg] === null) ?? null
}

/** What shuts a step's tick that would say everything right, or null. */
export function blockedStep(progress: Progress, id: string, leg: Leg | null, moment: Moment): Blocked | null {
  if (!isStepId(id)) return stepOutOfPlace(progress, id, leg, progress.facts)
  const facts = factsFor(progress, moment.at, moment.person)
  const shut = firstShut(
    asIfTicked(progress, procedureSteps[id], leg, facts),
    progress.waivers.map((waiver) => waiver.gate),
  )
  if (shut) return shut
  const place = stepOutOfPlace(progress, id, leg, facts)
  return place && { gate: null, because: place.because, act: place.act }
}

/**
 * The step of the plan that opens what is shut: the last before it whose facts would open the gate, e.g. letting the air
 * out once more after somebody else took over.
 */
export function stepThatOpens(progress: Progress, index: number, moment: Moment): StepState | null {
  const shutStep = progress.steps[index]
  if (!shutStep || !isStepId(shutStep.step)) return null
  const leg = openLeg(shutStep)
  const facts = factsFor(progress, moment.at, moment.person)
  const waived = progress.waivers.map((waiver) => waiver.gate)
  for (const candidate of progress.steps.slice(0, index)) {
    if (!isStepId(candidate.step)) continue
    const step = procedureSteps[candidate.step]
    const then = changed(facts, step.makes, null)
    const target = procedureSteps[shutStep.step]
    const opens =
      firstShut(asIfTicked(progress, target, leg, facts), waived)?.gate !==
        firstShut(asIfTicked(progress, target, leg, then), waived)?.gate ||
      (stepOutOfPlace(progress, shutStep.step, leg, facts) !== null &&
        stepOutOfPlace(progress, shutStep.step, leg, then) === null)
    if (opens && blockedStep(progress, candidate.step, openLeg(candidate), moment) === null) return candidate
  }
  return null
}

/**
 * What shuts the way past a step while it is incomplete: the gate of a later step that a tick here would open, such as R16
 * while a foot is not torqued.
 */
export function shutAhead(progress: Progress, index: number, moment: Moment): Blocked | null {
  const current = progress.steps[index]
  if (!current || !isStepId(current.step) || isComplete(progress, current)) return null
  const step = procedureSteps[current.step]
  const facts = factsFor(progress, moment.at, moment.person)
  const waived = progress.waivers.map((waiver) => waiver.gate)
  const then = factsAfterStep(facts, step, null, { washerNew: true, travelOff: 0 })
  for (const later of progress.steps.slice(index + 1)) {
    if (!isStepId(later.step)) continue
    const ask = (known: Asked['facts']) =>
      firstShut(asIfTicked(progress, procedureSteps[later.step as keyof typeof procedureSteps], null, known), waived)
    const shut = ask(facts)
    if (shut && ask(then)?.gate !== shut.gate) return shut
  }
  return null
}
