import type { Metre } from '../quantities/si.ts'
import { stopAt, within, withinIfGiven } from '../refusal/found.ts'

export interface RockQuestion {
  /** At the axle, from one end of the play to the other. */
  readonly rock: Metre
  /** From the axle to the lower bushing. */
  readonly a: Metre
  /** Between the bushings. */
  readonly b: Metre
  /** Clearance of the upper bushing ÷ that of the lower; 1 by default. */
  readonly share?: number
}

export interface Rock {
  /** Of the lower bushing, diametral. */
  clearance: Metre
}

/**
 * Clearance of the lower bushing from the rock at the axle: rock = c + (c + share·c)·a/b, peak to peak, so
 * c = rock/(1 + (1 + share)·a/b).
 *
 * @param question  rock, a, b [m]
 * @returns diametral clearance [m]
 * @throws Refusal naming every field that can't be
 * @source geometry of a leg tilting between two bushings
 * @example rock({ rock: 0.0008, a: 0.23, b: 0.115 }).clearance // 0.00016
 */
export function rock(question: RockQuestion): Rock {
  const { rock, a, b, share = 1 } = question
  let found = within(null, '', 'rock', rock, 'length', 0, 0.05, 'Measure the play at the axle from end to end.')
  found = within(found, '', 'a', a, 'length', 0.01, 1, 'Measure from the axle to the lower bushing.')
  found = within(found, '', 'b', b, 'length', 0.01, 1, 'Measure between the middles of the bushings.')
  found = withinIfGiven(found, '', 'share', question.share, 'number', 0, 10, 'Use 1 where both bushings wear alike.')
  stopAt(found)
  return { clearance: rock / (1 + ((1 + share) * a) / b) }
}
