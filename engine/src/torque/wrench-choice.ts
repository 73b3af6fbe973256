import { figure } from '../quantities/kinds.ts'
import type { Degree, Metre, NewtonMetre } from '../quantities/si.ts'
import { pairWithin, refuseOne, stopAt, within } from '../refusal/found.ts'
import { wrenchSetting } from './wrench-setting.ts'

export interface Wrench {
  readonly id: string
  readonly low: NewtonMetre
  readonly high: NewtonMetre
  /** Permitted error as a fraction: 0.04, 0.06. */
  readonly class: number
  /** From the square to the middle of the grip. */
  readonly length: Metre
}

export interface ChoiceQuestion {
  readonly wanted: NewtonMetre
  readonly wrenches: readonly Wrench[]
  readonly adapterLength?: Metre
  readonly adapterAngle?: Degree
}

export interface WrenchChoice {
  /** Null where none can do it. */
  best: { id: string; set: NewtonMetre; error: NewtonMetre } | null
  refused: { id: string; why: string }[]
}

/**
 * The wrench of the shop that suits: its setting lies inside its stated range; smallest class first, then smallest range.
 *
 * @param question  wanted [N·m], wrenches, adapter [m, °]
 * @returns the best with its setting and permitted error at the fastener [N·m], and why the others can't
 * @throws Refusal naming every field that can't be
 * @source ISO 6789:2003: the permitted deviation holds inside the stated range only
 * @example wrenchChoice({ wanted: 5, wrenches: [{ id: 'W1', low: 2, high: 10, class: 0.06, length: 0.2 }] }).best // {"id":"W1","set":5,"error":0.3}
 */
export function wrenchChoice(question: ChoiceQuestion): WrenchChoice {
  const { wanted, wrenches, adapterLength = 0, adapterAngle = 0 } = question
  if (wrenches.length < 1 || wrenches.length > 200) {
    refuseOne(
      'wrenches',
      'wrong-count',
      `${wrenches.length} wrenches`,
      '1 to 200 wrenches',
      "Give the shop's wrenches.",
    )
  }
  let found = within(null, '', 'wanted', wanted, 'torque', 0.01, 1000, 'Take it from the sheet.')
  wrenches.forEach((wrench, index) => {
    const at = `wrenches[${index}].`
    const ends = [wrench.low, wrench.high] as const
    const read = 'Read the range from the wrench.'
    found = pairWithin(found, at, ['low', 'high'], ends, 'torque', 0, 2000, read)
    found = within(found, at, 'class', wrench.class, 'fraction', 0.001, 0.3, 'Give the permitted error, like "4 %".')
    found = within(
      found,
      at,
      'length',
      wrench.length,
      'length',
      0.01,
      2,
      'Measure from the square to the middle of the grip.',
    )
  })
  stopAt(found)
  const choice: WrenchChoice = { best: null, refused: [] }
  let bestClass = Number.POSITIVE_INFINITY
  let bestHigh = Number.POSITIVE_INFINITY
  for (const { id, low, high, class: error, length } of wrenches) {
    const { set } = wrenchSetting({ wanted, wrenchLength: length, adapterLength, adapterAngle })
    if (set < low || set > high) {
      const why = `would be set to ${figure(set, 'torque')}; its range is ${figure(low, 'torque')} to ${figure(high, 'torque')}`
      choice.refused.push({ id, why })
    } else if (error < bestClass || (error === bestClass && high < bestHigh)) {
      choice.best = { id, set, error: error * wanted }
      bestClass = error
      bestHigh = high
    }
  }
  return choice
}
