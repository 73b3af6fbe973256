/** Facts: what is true of the unit now. Steps need, make and spoil them; gates are rules over them. */
import {
  type ChassisPart,
  chassisParts,
  type Leg,
  legs,
  type PutBackItem,
  type SnapshotItem,
} from '../journal/entry.ts'

/** Facts of the whole unit and the values each may have; the first is how it is at take-in. */
export const unitFacts = {
  plan: ['none', 'agreed'],
  values: ['unknown', 'known', 'missing'],
  /** Held after any filling; unknown at take-in, after a take-over and after 12 h. */
  pressure: ['unknown', 'held', 'released'],
  /** Whether a loaded negative chamber was ruled out since the air was let out. */
  trapped: ['unknown', 'none'],
  preload: ['on', 'off'],
  maximum: ['unknown', 'known'],
  pressureToFill: ['unknown', 'worked-out'],
  fill: ['none', 'quarter', 'half', 'target'],
  /** `back`: off for this job, and wheel or caliper is at the fork again. */
  brake: ['at-fork', 'away', 'back', 'no-bike'],
  knob: ['on', 'off'],
  lever: ['unknown', 'open'],
  lowers: ['seated', 'off', 'on-bushings'],
  seals: ['old', 'out', 'new'],
  cleaned: ['no', 'yes'],
  inspected: ['no', 'yes'],
  cap: ['shut', 'open'],
  spacersNoted: ['no', 'yes'],
  circlip: ['in', 'out'],
  airShaft: ['in', 'out'],
  airSeals: ['old', 'new'],
  bore: ['as-was', 'inspected', 'greased'],
  /** Of a second crown: heights noted, found even after the rebuild, lower and then upper clamps torqued. */
  clamps: ['as-was', 'noted', 'even', 'lower', 'torqued'],
  /** Whether anything on the spring's side was opened or emptied in this job. */
  springSide: ['untouched', 'worked-on'],
  travel: ['unmeasured', 'within', 'outside'],
  length: ['unmeasured', 'within', 'outside', 'cannot-tell'],
  leakDown: ['none', 'running', 'finished'],
  setting: ['none', 'written'],
  damper: ['closed', 'open'],
  gas: ['unknown', 'charged', 'released'],
} as const satisfies Record<string, readonly [string, ...string[]]>

/** Facts of each leg. */
export const legFacts = {
  foot: ['fast', 'out', 'torqued'],
  washer: ['old', 'new'],
  oil: ['old', 'drained', 'filled'],
  /** Of the stanchion above the upper crown, before the strip. */
  height: ['unknown', 'noted'],
} as const satisfies Record<string, readonly [string, ...string[]]>

export type UnitFact = keyof typeof unitFacts
export type LegFact = keyof typeof legFacts
export type LegFactOf = `${LegFact}.${Leg}`
export type FactValue<F extends UnitFact | LegFactOf> = F extends UnitFact
  ? (typeof unitFacts)[F][number]
  : F extends `${infer Base extends LegFact}.${Leg}`
    ? (typeof legFacts)[Base][number]
    : never

export type Facts = { readonly [F in UnitFact | LegFactOf]: FactValue<F> } & {
  readonly [P in `chassis.${ChassisPart}`]: 'not-looked-at' | 'sound' | 'condemned'
} & { readonly [I in `snapshot.${SnapshotItem}`]: 'none' | 'kept' | 'not-known' } & {
  readonly [P in `put-back.${PutBackItem}`]: 'no' | 'yes'
}
export type FactName = keyof Facts

export const snapshotItems: readonly SnapshotItem[] = ['length', 'ring', 'photos', 'pressure', 'rebound', 'compression']
export const putBackItems: readonly PutBackItem[] = ['wheel', 'axle', 'caliper', 'cables', 'brake-holds', 'wheel-free']

/** Nothing is known yet: how a unit comes in. */
export function factsAtTakeIn(): Facts {
  const first = (values: Readonly<Record<string, readonly string[]>>) =>
    Object.entries(values).map(([name, [value]]) => [name, value] as const)
  const facts = Object.fromEntries([
    ...first(unitFacts),
    ...legs.flatMap((leg) => first(legFacts).map(([name, value]) => [`${name}.${leg}`, value] as const)),
    ...chassisParts.map((part) => [`chassis.${part}`, 'not-looked-at'] as const),
    ...snapshotItems.map((item) => [`snapshot.${item}`, 'none'] as const),
    ...putBackItems.map((item) => [`put-back.${item}`, 'no'] as const),
  ])
  // Made above from the very lists that the type is made of.
  return facts as unknown as Facts
}
