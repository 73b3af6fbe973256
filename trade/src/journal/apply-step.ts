/** What a ticked step makes and spoils. */
import { type Facts, legFacts, putBackItems } from '../gates/facts.ts'
import type { FactChanges, FactNeeds, ProcedureStep } from '../procedures/procedure.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import type { Sheet } from '../sheets/sheet.ts'
import { type AnyEntry, type Leg, legs, type PutBackItem } from './entry.ts'
import { restStep } from './job-rests.ts'
import type { StepState } from './job-state.ts'
import { doneAt, factsFor, madeBy, type Progress, sheetOf } from './progress.ts'

/** Full travel may be off by this much (common practice, no source). */
export const travelAllowed = 0.003

type Expanded = readonly [string, unknown][]
/** Step data never changes, and is asked for at every line of every replay. */
const known = new WeakMap<FactChanges | FactNeeds, Map<Leg | null, Expanded>>()

/** `oil.*` as the names it stands for. */
function expanded(pattern: FactChanges | FactNeeds, leg: Leg | null): Expanded {
  const byLeg = known.get(pattern) ?? new Map<Leg | null, Expanded>()
  const found = byLeg.get(leg) ?? expand(pattern, leg)
  known.set(pattern, byLeg.set(leg, found))
  return found
}

function expand(pattern: FactChanges | FactNeeds, leg: Leg | null): Expanded {
  return Object.entries(pattern).flatMap(([name, value]) => {
    if (!name.endsWith('.*')) return [[name, value] as [string, unknown]]
    const base = name.slice(0, -2)
    if (base === 'put-back') return putBackItems.map((item) => [`put-back.${item}`, value] as [string, unknown])
    return (leg ? [leg] : legs).map((side) => [`${base}.${side}`, value] as [string, unknown])
  })
}

/** Facts after a change written with `*` for the legs. */
export function changed(facts: Facts, changes: FactChanges, leg: Leg | null): Facts {
  // Every name and value comes from typed step data.
  return { ...facts, ...(Object.fromEntries(expanded(changes, leg)) as Partial<Facts>) }
}

/** The first fact that a step needs and does not find. */
export function unmet(facts: Facts, needs: FactNeeds, leg: Leg | null): string | null {
  const all = facts as unknown as Readonly<Record<string, string>> // names come from data here
  const found = expanded(needs, leg).find(([name, values]) => !(values as readonly string[]).includes(all[name] ?? ''))
  return found ? found[0] : null
}

/** The same with what a fastener behind the knob needs besides. */
export function unmetOn(facts: Facts, step: ProcedureStep, leg: Leg | null, sheet: Sheet | null): string | null {
  const plain = unmet(facts, step.needs, leg)
  const { needsBehind } = step
  if (plain !== null || !needsBehind || !leg || sheet?.legs?.[leg].fixing !== needsBehind.fixing) return plain
  return unmet(facts, needsBehind.needs, leg)
}

/** Whether everything that the step makes is so. */
export function holds(facts: Facts, step: ProcedureStep, leg: Leg | null): boolean {
  const all = facts as unknown as Readonly<Record<string, string>> // names come from data here
  return expanded(step.makes, leg).every(([name, value]) => all[name] === value)
}

/** Whether what was read is what the step asks for; `read` left out where nobody has read yet. */
function isWithin({ makesWithin }: ProcedureStep, read: number | null | undefined): boolean {
  return makesWithin === undefined || read === undefined || (read !== null && Math.abs(read) <= makesWithin + 1e-9)
}

/** Facts after a step; what its reading and its saying so add is in them. */
export function factsAfterStep(
  facts: Facts,
  step: ProcedureStep,
  leg: Leg | null,
  said: { washerNew: boolean; travelOff: number | null; read?: number | null },
): Facts {
  const spoiled = step.spoils ? changed(facts, step.spoils, leg) : facts
  if (!isWithin(step, said.read)) return spoiled
  let after = changed(spoiled, step.makes, leg)
  if ('washer.*' in step.makes && !said.washerNew) after = changed(after, { 'washer.*': legFacts.washer[0] }, leg)
  if (step.makes.travel)
    after = {
      ...after,
      travel:
        said.travelOff === null
          ? 'unmeasured'
          : Math.abs(said.travelOff) <= travelAllowed + 1e-9
            ? 'within'
            : 'outside',
    }
  return after
}

const beside: readonly PutBackItem[] = ['wheel', 'caliper']

/** Facts after something went back on the bike; with wheel or caliper there the brake is where oil would reach it. */
export function factsPutBack(facts: Facts, item: PutBackItem): Facts {
  const near = facts.brake === 'away' && beside.includes(item)
  return { ...facts, [`put-back.${item}`]: 'yes', ...(near ? { brake: 'back' as const } : {}) }
}

/** Every leg ticked, and a measured travel within what is allowed or let pass by a waiver. */
export function isComplete(progress: Progress, step: StepState): boolean {
  const ticked = step.legs ? step.legs.every((leg) => step.done[leg] !== null) : step.done.once !== null
  const proves = isStepId(step.step) && procedureSteps[step.step].makes.travel !== undefined
  const passed = progress.facts.travel === 'within' || progress.waivers.some((waiver) => waiver.gate === 'R26')
  const read = isStepId(step.step) ? isWithin(procedureSteps[step.step], step.done.once?.reading?.value ?? null) : true
  return ticked && read && (!proves || passed)
}

/** A step done earlier in the plan than others takes back what it undoes of them: they stand open again. */
function reopen(progress: Progress, from: number, before: Facts): void {
  const was = before as unknown as Readonly<Record<string, string>> // names come from data here
  const is = progress.facts as unknown as Readonly<Record<string, string>> // names come from data here
  for (const [index, step] of progress.steps.entries()) {
    if (index <= from || !isStepId(step.step)) continue
    for (const leg of step.legs ?? [null]) {
      const undone = expanded(procedureSteps[step.step].makes, leg).some(
        ([name, value]) => was[name] === value && is[name] !== value,
      )
      const key = leg ?? 'once'
      if (!undone || step.done[key] === null) continue
      step.done = { ...step.done, [key]: null }
    }
  }
}

/** A tick takes effect. */
export function applyStep(progress: Progress, entry: Extract<AnyEntry, { kind: 'step-done' }>): void {
  const { step: id, leg, reading, wrenchSet, saidSo, used = null } = entry.body
  const index = progress.steps.findIndex((one) => one.step === id)
  const planned = progress.steps[index]
  if (!isStepId(id)) return
  const step = procedureSteps[id]
  const at = doneAt(entry)
  const before = factsFor(progress, at, entry.person)
  if (step.makes.travel && reading) {
    const stroke = sheetOf(progress)?.stroke.value
    progress.off.travel = stroke === undefined ? null : reading.value - stroke
  }
  progress.facts = factsAfterStep(before, step, leg, {
    washerNew: saidSo.includes('R15'),
    travelOff: reading ? progress.off.travel : null,
    read: reading?.value ?? null,
  })
  progress.hands = entry.person
  if (step.spoils?.['put-back.*']) progress.putBack = {}
  if (step.makes.pressure === 'released') progress.releasedAt = at
  restStep(progress, step, entry)
  if (step.fills) {
    progress.filledTo = reading?.measure === 'Pa' ? reading.value : (progress.setUp?.pressure ?? null)
  }
  // What was done counts, also where no plan that stands has it: late truth, or a person's ruling.
  if (!planned) return
  planned.done = { ...planned.done, [leg ?? 'once']: { ...madeBy(entry), reading, wrenchSet, saidSo, used } }
  planned.carriedOver = entry.standing.mode === 'carried-over'
  reopen(progress, index, before)
}
