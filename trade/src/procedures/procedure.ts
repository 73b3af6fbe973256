/** Procedures as data: what a step needs, makes and spoils, what it is done with, and what is recorded. */
import type { FactValue, LegFact, UnitFact } from '../gates/facts.ts'
import type { RestKind } from '../rests/rest-kinds.ts'
import type { FootFixing } from '../sheets/sheet.ts'
import type { Supply } from './supplies.ts'

/** What a hand does in a step, in the words of the ordering rules: gates guard acts, not single steps. */
export type Act =
  | 'lets-air-out'
  | 'jumps-out'
  | 'turns-adjuster'
  | 'loosens'
  | 'taps'
  | 'drains'
  | 'uses-oil'
  | 'pulls-lowers'
  | 'cleans'
  | 'fits-seals'
  | 'fits-lowers'
  | 'fills-oil'
  | 'seats'
  | 'torques'
  | 'cycles'
  | 'strips-damper'
  | 'proves-travel'
  | 'fills-air'
  | 'adds-preload'
  | 'opens-gas'
  | 'cycles-gas-damper'

/** `oil.*` stands for the leg that is ticked, or for both where a step is done once. */
export type FactNeeds = { readonly [F in UnitFact]?: readonly FactValue<F>[] } & {
  readonly [F in `${LegFact}.*`]?: readonly string[]
}
export type FactChanges = { readonly [F in UnitFact]?: FactValue<F> } & { readonly [F in `${LegFact}.*`]?: string } & {
  /** Everything that goes back. */
  readonly 'put-back.*'?: 'no'
}

/** The figure that stands largest on the step's page. */
export type FigureKind =
  | 'none'
  | 'drained'
  | 'bath-oil'
  | 'foot-torque'
  | 'cap-torque'
  | 'lower-clamp-torque'
  | 'upper-clamp-torque'
  | 'stanchion-height'
  | 'height-difference'
  | 'travel'
  | 'air-pressure'
  | 'clicks'
  | 'clearance'
  | 'spacers'

/** The units that a step is for; a condition left out does not matter. */
export interface OnlyFor {
  spring?: 'air' | 'coil'
  body?: 'dual-crown'
  /** A leg whose fastener sits behind the rebound knob. */
  knob?: true
  /** A unit with a compression adjuster or lever. */
  compression?: true
}

export interface ProcedureStep {
  legs: 'each' | 'once'
  only?: OnlyFor
  acts: readonly Act[]
  /** What must be so for the step to be possible at all; what makes it safe is the gates' matter. */
  needs: FactNeeds
  /** What it needs besides on a leg with this fastener. */
  needsBehind?: { fixing: FootFixing; needs: FactNeeds }
  /** Each fastener is freed in its own way: its caution stands in place of the step's. */
  byFixing?: true
  makes: FactChanges
  /** Facts that no longer hold afterwards. */
  spoils?: FactChanges
  tools: readonly string[]
  consumables: readonly Supply[]
  figure: FigureKind
  /** What may be written down of what was used or found: its kind, batch or lot. */
  used?: 'oil' | 'seals' | 'air-kit' | 'spacers-found' | 'spacers-put'
  /** What is written down with the tick. */
  records: 'reading' | 'wrench' | null
  /** Where its reading is more than this [m], or there is none, it makes nothing and stays open. */
  makesWithin?: number
  /** Share of the air pressure where the step fills. */
  fills?: 'quarter' | 'half' | 'target'
  /** A rest that its tick begins or ends. */
  begins?: RestKind
  ends?: RestKind
  /** Hands-on minutes (common practice, no source). */
  minutes: number
}

export interface Procedure {
  id: string
  revision: number
  /** The kinds it is written for; others are refused by name. */
  kinds: readonly ('fork-air' | 'fork-coil')[]
  steps: readonly string[]
}
