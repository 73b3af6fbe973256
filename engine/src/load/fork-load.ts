import { type Degree, gravity, type Kilogram, type Newton } from '../quantities/si.ts'
import { type Found, stopAt, within, withinOf } from '../refusal/found.ts'

/** From scales: the mass the scale under the front wheel shows. From masses: the rider's share on the front wheel. */
export type ForkLoadQuestion =
  | { readonly wheelLoad: Kilogram; readonly unsprungMass: Kilogram; readonly headAngle: Degree }
  | {
      readonly riderMass: Kilogram
      readonly frontShare: number
      /** The bike's sprung mass resting on the fork. */
      readonly bikeFrontMass: Kilogram
      readonly headAngle: Degree
    }

export interface ForkLoad {
  /** Along the leg. */
  load: Newton
  /** Across the leg: loads the bushings. */
  sideLoad: Newton
}

function sprungMass(question: ForkLoadQuestion): number {
  if ('wheelLoad' in question) {
    const { wheelLoad, unsprungMass } = question
    let found = within(null, '', 'wheelLoad', wheelLoad, 'mass', 1, 500, 'Read the scale under the front wheel.')
    found = withinOf(
      found,
      '',
      'unsprungMass',
      unsprungMass,
      'mass',
      0,
      Math.min(30, wheelLoad),
      'Give wheel and lower legs.',
    )
    stopAt(angleWithin(found, question.headAngle))
    return wheelLoad - unsprungMass
  }
  const { riderMass, frontShare, bikeFrontMass } = question
  let found = within(null, '', 'riderMass', riderMass, 'mass', 10, 250, 'Weigh the rider with kit.')
  found = within(
    found,
    '',
    'frontShare',
    frontShare,
    'fraction',
    0,
    1,
    'Give the share on the front wheel, like "42 %".',
  )
  found = within(
    found,
    '',
    'bikeFrontMass',
    bikeFrontMass,
    'mass',
    0,
    50,
    'Give the sprung mass of the bike on the fork.',
  )
  stopAt(angleWithin(found, question.headAngle))
  return riderMass * frontShare + bikeFrontMass
}

/** Head angles from 45° to 90°, from the horizontal. */
export function angleWithin(found: Found, angle: number): Found {
  return within(found, '', 'headAngle', angle, 'angle', 45, 90, 'Measure it from the horizontal, like "65°".')
}

/**
 * Load along the fork: (wheelLoad − unsprungMass)·g·sin(headAngle), or (riderMass·frontShare + bikeFrontMass)·g·sin(headAngle).
 *
 * @param question  masses [kg], share, head angle [°] from the horizontal
 * @returns along the leg and across it [N]
 * @throws Refusal naming every field that can't be
 * @source statics; standard gravity 9.80665 m/s²
 * @example forkLoad({ riderMass: 82, frontShare: 0.42, bikeFrontMass: 5.05, headAngle: 65 }).load // 351.0
 */
export function forkLoad(question: ForkLoadQuestion): ForkLoad {
  const weight = sprungMass(question) * gravity
  const angle = (question.headAngle * Math.PI) / 180
  return { load: weight * Math.sin(angle), sideLoad: weight * Math.cos(angle) }
}
