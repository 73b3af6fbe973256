/** Where a plan's gates stand: behind the step that opens each. */
import { changed } from '../journal/apply-step.ts'
import type { GateId, PlannedStep } from '../journal/entry.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import type { Sheet, UnitKind } from '../sheets/sheet.ts'
import type { Asked } from './asked.ts'
import { type Facts, factsAtTakeIn } from './facts.ts'
import { rules } from './rules.ts'
import { traitsOf } from './traits.ts'

/** A gate with no way round, behind the step with this number (1, 2, 3 …). */
export interface GatePost {
  after: number
  gate: GateId
}

/** Ready for the first step: looked over, agreed, nothing in the way but the order of the steps themselves. */
function factsAtStart(): Facts {
  return { ...factsAtTakeIn(), plan: 'agreed', values: 'known', maximum: 'known', pressureToFill: 'worked-out' }
}

/** Which gates with no way round are shut before a step, on these facts, whatever its tick says. */
function shutBefore(step: PlannedStep, facts: Facts, traits: Asked['traits']): readonly GateId[] {
  if (!isStepId(step.step)) return []
  const { acts, fills } = procedureSteps[step.step]
  const asked: Asked = {
    entry: 'step-done',
    acts,
    facts,
    traits,
    leg: null,
    saidSo: rules.map((rule) => rule.id),
    wrenchSet: 0,
    reading: { value: 0, measure: 'm³', instrument: null, how: null },
    snapshotItem: null,
    fills: fills ?? null,
    pressure: null,
    target: null,
    maximum: Number.POSITIVE_INFINITY,
    missing: [],
    soaked: { minutes: Number.POSITIVE_INFINITY, by: null, apart: null },
    leakDown: { act: null, rested: null },
    readBefore: false,
    off: { travel: 0, length: 0, lengthAllowed: 0 },
  }
  return rules
    .filter((rule) => rule.noWayRound && rule.guards.acts?.some((act) => acts.includes(act)) && rule.shut(asked))
    .map((rule) => rule.id)
}

/**
 * The posts of a plan, one a step at most: a step opens a gate if a later step meets it shut on the facts before, and open
 * on the facts after.
 *
 * @example gatePosts(planSteps(['lower-legs'], sheet), sheet.kind, sheet) // R3 behind the air, R4, R16 behind the torque
 */
export function gatePosts(steps: readonly PlannedStep[], kind: UnitKind, sheet: Sheet | null): readonly GatePost[] {
  const traits = traitsOf(kind, sheet)
  const looked: Facts = {
    ...factsAtStart(),
    ...Object.fromEntries(traits.parts.map((part) => [`chassis.${part}`, 'sound'])),
    ...Object.fromEntries(traits.snapshot.map((item) => [`snapshot.${item}`, 'kept'])),
  }
  const posts: GatePost[] = []
  let facts = looked
  for (const [index, step] of steps.entries()) {
    if (!isStepId(step.step)) continue
    const { makes, spoils } = procedureSteps[step.step]
    const then = changed(facts, { ...spoils, ...makes }, null)
    const opened = steps.slice(index + 1).flatMap((later) => {
      const after = shutBefore(later, then, traits)
      return shutBefore(later, facts, traits).filter((gate) => !after.includes(gate))
    })
    const [gate] = opened
    if (gate) posts.push({ after: index + 1, gate })
    facts = then
  }
  return posts
}
