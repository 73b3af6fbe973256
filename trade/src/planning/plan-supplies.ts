/** What a plan uses up, each thing once: pieces and amounts added up over its steps and legs. */
import type { Leg, PlannedStep } from '../journal/entry.ts'
import { isStepId, procedureSteps } from '../procedures/procedures.ts'
import type { Supply, SupplyId } from '../procedures/supplies.ts'
import type { Sheet, SourcedNumber, SourcedText } from '../sheets/sheet.ts'
import { type Message, message } from '../words/words.ts'

export interface PlanSupply {
  what: SupplyId
  /** Altogether; null where it is not counted. */
  pieces: number | null
  /** Altogether, common practice, no source. */
  usual: { low: number; high: number; measure: 'g' | 'ml' } | null
  /** What the sheet says leg by leg, null where it is silent; of what does not go by leg, null. */
  perLeg: { readonly [L in Leg]?: SourcedNumber | SourcedText | null } | null
  /** Altogether [m³]; null where it is no volume, or the sheet does not say all of it. */
  volume: number | null
}

/** The legs a supply of a step goes to, where it goes by leg. */
function sheetLegs(supply: Supply, step: PlannedStep, sheet: Sheet): PlanSupply['perLeg'] {
  const field = supply.bySheet
  if (!step.legs || (field !== 'bathOil' && field !== 'washer')) return null
  return Object.fromEntries(step.legs.map((leg) => [leg, sheet.legs?.[leg][field] ?? null]))
}

const isNumber = (of: SourcedNumber | SourcedText | null | undefined): of is SourcedNumber =>
  typeof of?.value === 'number'

function volumeOf(supply: Supply, perLeg: PlanSupply['perLeg'], sheet: Sheet): number | null {
  if (supply.bySheet === 'chamberOil') return sheet.spring.chamberOil?.value ?? null
  if (supply.bySheet !== 'bathOil' || !perLeg) return null
  const legs = Object.values(perLeg)
  return legs.every(isNumber) ? legs.reduce((sum, leg) => sum + leg.value, 0) : null
}

function sum(had: PlanSupply, more: PlanSupply): PlanSupply {
  const usual =
    had.usual && more.usual
      ? { ...had.usual, low: had.usual.low + more.usual.low, high: had.usual.high + more.usual.high }
      : (had.usual ?? more.usual)
  const pieces = had.pieces === null ? more.pieces : had.pieces + (more.pieces ?? 0)
  return { ...had, pieces, usual }
}

/**
 * What a plan uses up, in the order of its work.
 *
 * @example planSupplies(planSteps(['lower-legs'], sheet), sheet).find(({ what }) => what === 'wiper')?.pieces // 2
 */
export function planSupplies(steps: readonly PlannedStep[], sheet: Sheet): readonly PlanSupply[] {
  const all = new Map<SupplyId, PlanSupply>()
  for (const step of steps) {
    if (!isStepId(step.step)) continue
    for (const supply of procedureSteps[step.step].consumables) {
      if (supply.again) continue
      const perLeg = sheetLegs(supply, step, sheet)
      const one: PlanSupply = {
        what: supply.what,
        pieces: supply.pieces === undefined ? null : supply.pieces * (step.legs?.length ?? 1),
        usual: supply.usual ?? null,
        perLeg,
        volume: volumeOf(supply, perLeg, sheet),
      }
      const had = all.get(supply.what)
      all.set(supply.what, had ? sum(had, one) : one)
    }
  }
  return [...all.values()]
}

/** A supply as it is laid out for one step. */
export function supplySays({ what, pieces, usual, bySheet }: Supply): Message {
  const name = message(`supply.${what}`)
  if (pieces !== undefined) return message('supply.pieces', { n: pieces, what: name })
  if (usual) return message('supply.usual', { what: name, ...usual })
  return bySheet ? message('supply.by-sheet', { what: name }) : name
}
