import { gravity, type Kilogram, type Metre, type Newton } from '../quantities/si.ts'
import { stopAt, within, withinOf } from '../refusal/found.ts'
import { checkLeverage, type Leverage, leverageAt, strokeOnLeverage } from './leverage.ts'

export type ShockLoadQuestion = {
  readonly leverage: Leverage
  /** Shock stroke at which the leverage is taken; 0 by default. */
  readonly stroke?: Metre
} & ({ readonly rearSprungMass: Kilogram } | { readonly wheelLoad: Kilogram; readonly unsprungMass: Kilogram })

/**
 * Load on a shock: sprung mass at the rear wheel · g · leverage at a stroke.
 *
 * @param question  mass [kg] (or scale and unsprung mass), leverage, shock stroke [m]
 * @returns axial load [N]
 * @throws Refusal naming every field that can't be
 * @source virtual work; standard gravity 9.80665 m/s²
 * @example shockLoad({ rearSprungMass: 55.22, leverage: 2.6 }).load // 1408.0
 */
export function shockLoad(question: ShockLoadQuestion): { load: Newton } {
  const { leverage, stroke = 0 } = question
  let found = checkLeverage(null, leverage)
  found = within(found, '', 'stroke', stroke, 'length', 0, 0.5, 'Give the shock stroke.')
  if (found === null) found = strokeOnLeverage(found, 'stroke', stroke, leverage)
  let mass: number
  if ('wheelLoad' in question) {
    const { wheelLoad, unsprungMass } = question
    found = within(found, '', 'wheelLoad', wheelLoad, 'mass', 1, 500, 'Read the scale under the rear wheel.')
    found = withinOf(
      found,
      '',
      'unsprungMass',
      unsprungMass,
      'mass',
      0,
      Math.min(30, wheelLoad),
      'Give wheel and swingarm.',
    )
    mass = wheelLoad - unsprungMass
  } else {
    mass = question.rearSprungMass
    found = within(found, '', 'rearSprungMass', mass, 'mass', 1, 500, 'Give the sprung mass on the rear wheel.')
  }
  stopAt(found)
  return { load: mass * gravity * leverageAt(leverage, stroke) }
}
