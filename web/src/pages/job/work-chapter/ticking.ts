/** Ticking a step: what has to be said and read first, and what the entry then says. */
import {
  type Digest,
  type EntryBodies,
  type GateId,
  type Leg,
  legs,
  type Message,
  message,
  type Reading,
  type StepState,
} from '@legwork/trade'
import { askedReading, statementsOf, torques } from '../step-figure.ts'

/** `once` for a step that is done once. */
export type Place = Leg | 'once'

export interface TickDraft {
  readings: Partial<Record<Place, number | null>>
  said: ReadonlySet<string>
  /** Beside the step's own reading, by what the book calls it. */
  also: Partial<Record<string, number | null>>
}

export const noDraft: TickDraft = { readings: {}, said: new Set(), also: {} }
export const placesOf = (step: StepState): readonly Place[] => step.legs ?? ['once']
export const statementKey = (gate: GateId, place: Place): string => `${gate} ${place}`

/** New washers are said leg by leg; what is done in one go is said once. */
export function statementsAt(step: StepState, place: Place): readonly GateId[] {
  const all = statementsOf(step)
  return all.filter((gate) => gate === 'R15' || place === placesOf(step)[0])
}

/** What is missing before this place can be ticked; null where it may be. */
export function missingFor(step: StepState, place: Place, draft: TickDraft): Message | null {
  for (const gate of statementsOf(step)) {
    const at = gate === 'R15' ? place : (placesOf(step)[0] ?? place)
    if (draft.said.has(statementKey(gate, at))) continue
    return message('work.tick.say-first', {
      what: message(
        gate === 'R5' || gate === 'R8' || gate === 'R11' ? `work.say.${gate}.short` : 'work.say.R15.plain.short',
      ),
    })
  }
  const asked = askedReading(step)
  return asked?.needed && (draft.readings[place] ?? null) === null ? message('work.tick.reading-first') : null
}

/** The entry that a tick writes. */
export function tickBody(
  step: StepState,
  place: Place,
  draft: TickDraft,
  tools: { wrenchSet: number | null; instrument: string | null; used: Digest | null },
): EntryBodies['step-done'] {
  const asked = askedReading(step)
  const value = draft.readings[place] ?? null
  const reading: Reading | null =
    asked && value !== null
      ? {
          value,
          measure: asked.measure,
          instrument: tools.instrument,
          how: asked.measure === 'Pa' ? 'pumped' : null,
        }
      : null
  return {
    step: step.step,
    leg: place === 'once' ? null : place,
    reading,
    wrenchSet: torques(step) ? tools.wrenchSet : null,
    saidSo: [...statementsOf(step)],
    ...(tools.used ? { used: tools.used } : {}),
  }
}

/** The first place that is not ticked. */
export function openPlace(step: StepState): Place | null {
  return placesOf(step).find((place) => !step.done[place]) ?? null
}

export const isLeg = (place: Place): place is Leg => legs.some((leg) => leg === place)
