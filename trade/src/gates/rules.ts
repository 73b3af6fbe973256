/**
 * The ordering rules R1–R27 as one table of gates over facts. Common practice of careful workshops, no source; R1, R3, R4,
 * R6, R16, R19, R20, R24, R25 and R27 have no way round.
 */
import type { GateId } from '../journal/entry.ts'
import type { Blocked } from '../journal/job-state.ts'
import type { Act } from '../procedures/procedure.ts'
import type { Asked, Rule } from './asked.ts'
import { finishingRules } from './rules-finishing.ts'
import { preparingRules } from './rules-preparing.ts'
import { rebuildingRules } from './rules-rebuilding.ts'
import { strippingRules } from './rules-stripping.ts'

/** All gates, R1 to R27. */
export const rules: readonly Rule[] = [...preparingRules, ...strippingRules, ...rebuildingRules, ...finishingRules]

/** The gate of that name. */
export function ruleOf(id: GateId): Rule | undefined {
  return rules.find((rule) => rule.id === id)
}

/** Whether a named person with a reason may pass it. */
export function isWaivable(id: GateId): boolean {
  const rule = ruleOf(id)
  return rule !== undefined && !rule.noWayRound && !attestedOnly.includes(id)
}

/** Said so by who ticks, and by nobody else: there is nothing to waive. */
const attestedOnly: readonly GateId[] = ['R5', 'R8', 'R11']

/** Whether a gate stands before what is asked at all. */
export function guards(rule: Rule, asked: Asked): boolean {
  return (
    (rule.guards.entries?.includes(asked.entry) ?? false) ||
    (rule.guards.acts?.some((act) => asked.acts.includes(act)) ?? false)
  )
}

/**
 * The first gate that is shut for what is asked, or null where all stand open.
 *
 * @param waived  gates that a person passed with name and reason; those with no way round are asked all the same
 * @param table   the gates; all of them but in a test that leaves one out
 */
export function firstShut(asked: Asked, waived: readonly GateId[], table: readonly Rule[] = rules): Blocked | null {
  for (const rule of table) {
    if (!guards(rule, asked) || (waived.includes(rule.id) && isWaivable(rule.id))) continue
    const blocked = rule.shut(asked)
    if (blocked) return blocked
  }
  return null
}

/** What the person who ticks a step with these acts has to say so. */
export function saidSoFor(acts: readonly Act[]): readonly GateId[] {
  return rules
    .filter((rule) => rule.saidSo && rule.guards.acts?.some((act) => acts.includes(act)))
    .map((rule) => rule.id)
}
