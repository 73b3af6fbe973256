import { figure } from '../quantities/kinds.ts'
import type { CubicMetre, SquareMetrePerSecond } from '../quantities/si.ts'
import { type Found, refuseOne, stopAt, within } from '../refusal/found.ts'
import { viscosityOfWalther, viscosityRange, waltherNumber } from './viscosity-temperature.ts'

/** D7152: shares by volume. Refutas: shares by mass. */
export type BlendMethod = 'D7152' | 'Refutas'

export interface BlendQuestion {
  /** All three at one temperature. */
  readonly a: SquareMetrePerSecond
  readonly b: SquareMetrePerSecond
  readonly target: SquareMetrePerSecond
  readonly method?: BlendMethod
}

function viscosityWithin(found: Found, name: string, viscosity: number): Found {
  const [low, high] = viscosityRange
  return within(found, '', name, viscosity, 'viscosity', low, high, 'Take it at one temperature, like "15 mm²/s".')
}

/** Refutas' blending number of a viscosity [m²/s]: 14.534·ln ln(ν + 0.8) + 10.975, ν in mm²/s. */
export function refutasNumber(viscosity: SquareMetrePerSecond): number {
  return 14.534 * Math.log(Math.log(viscosity * 1e6 + 0.8)) + 10.975
}

/**
 * How much of oil b in a makes the wanted viscosity; shares add up on the method's scale.
 *
 * Oils with index improvers are outside the scope of D7152.
 *
 * @param question  viscosities of a, b and target at one temperature [m²/s], method
 * @returns share of b (0 … 1) and what it is a share of
 * @throws Refusal naming every field that can't be; a target not between a and b
 * @source ASTM D7152-11 (by volume); Maples, Petroleum Refinery Process Economics 2nd ed. 2000 (Refutas, by mass)
 * @example blend({ a: 5e-6, b: 20e-6, target: 8.108549e-6, method: 'Refutas' }).fractionOfB // 0.40000
 */
export function blend(question: BlendQuestion): { fractionOfB: number; basis: 'volume' | 'mass' } {
  const { a, b, target, method = 'D7152' } = question
  stopAt(viscosityWithin(viscosityWithin(viscosityWithin(null, 'a', a), 'b', b), 'target', target))
  if (!(target >= Math.min(a, b) && target <= Math.max(a, b)) || Math.abs(a - b) < 1e-3 * a) {
    const allowed = `between a (${figure(a, 'viscosity')}) and b (${figure(b, 'viscosity')}), which must differ`
    refuseOne(
      'target',
      'no-answer',
      figure(target, 'viscosity'),
      allowed,
      'Choose oils on both sides of the wanted viscosity.',
    )
  }
  const scale = method === 'D7152' ? waltherNumber : refutasNumber
  const fractionOfB = (scale(target) - scale(a)) / (scale(b) - scale(a))
  return { fractionOfB, basis: method === 'D7152' ? 'volume' : 'mass' }
}

export interface ResidualQuestion {
  /** Both at one temperature. */
  readonly old: SquareMetrePerSecond
  readonly fresh: SquareMetrePerSecond
  readonly residualVolume: CubicMetre
  /** Of fresh oil. */
  readonly fillVolume: CubicMetre
}

/**
 * Viscosity of a fill with old oil left in: share of old = residual/(residual + fill), blended by volume.
 *
 * @param question  viscosities at one temperature [m²/s], volumes [m³]
 * @returns viscosity [m²/s]
 * @throws Refusal naming every field that can't be
 * @source ASTM D7152-11
 * @example residualOil({ old: 20e-6, fresh: 5e-6, residualVolume: 4e-6, fillVolume: 6e-6 }).viscosity // 8.081274e-6
 */
export function residualOil(question: ResidualQuestion): { viscosity: SquareMetrePerSecond } {
  const { old, fresh, residualVolume, fillVolume } = question
  let found = viscosityWithin(viscosityWithin(null, 'old', old), 'fresh', fresh)
  found = within(found, '', 'residualVolume', residualVolume, 'volume', 0, 0.01, 'Give what stayed in the unit.')
  found = within(found, '', 'fillVolume', fillVolume, 'volume', 1e-7, 0.01, 'Give the fresh oil.')
  stopAt(found)
  const share = residualVolume / (residualVolume + fillVolume)
  const viscosity = viscosityOfWalther(waltherNumber(fresh) + share * (waltherNumber(old) - waltherNumber(fresh)))
  if (viscosity === null) {
    return refuseOne(
      'old',
      'no-answer',
      figure(old, 'viscosity'),
      'an oil on the scale of the standard',
      'Check both viscosities.',
    )
  }
  return { viscosity }
}
