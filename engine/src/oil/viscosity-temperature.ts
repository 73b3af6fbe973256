import { brent } from '../numerics/brent.ts'
import type { Kelvin, SquareMetrePerSecond } from '../quantities/si.ts'
import { type Found, stopAt, temperatureWithin, within } from '../refusal/found.ts'

/** Z of D341 from a viscosity [mm²/s]: ν + 0.7 + exp(−1.47 − 1.84·ν − 0.51·ν²). */
function zOf(viscosity: number): number {
  return viscosity + 0.7 + Math.exp(-1.47 - 1.84 * viscosity - 0.51 * viscosity ** 2)
}

/** Walther's scale of a viscosity [m²/s]: log₁₀ log₁₀ Z; straight lines on it are oils over log T, and blends over share. */
export function waltherNumber(viscosity: SquareMetrePerSecond): number {
  return Math.log10(Math.log10(zOf(viscosity * 1e6)))
}

/** Viscosity [m²/s] of a number on Walther's scale; null outside 0.2 … 10⁷ mm²/s. */
export function viscosityOfWalther(number: number): SquareMetrePerSecond | null {
  // Solved on Z itself: the standard's printed inverse is off by up to 0.1 % at low viscosities.
  const z = 10 ** (10 ** number)
  if (!Number.isFinite(z)) return null
  const root = brent((viscosity) => zOf(viscosity) - z, 0.2, 1e7, 1e-12)
  return root === null ? null : root * 1e-6
}

export interface ViscosityPoint {
  readonly temperature: Kelvin
  readonly viscosity: SquareMetrePerSecond
}

/** What can't be about a kinematic viscosity: 0.5 mm²/s … 1 m²/s. */
export const viscosityRange = [0.5e-6, 1] as const

/** What can't be about points of one oil. */
export function checkPoints(found: Found, points: readonly ViscosityPoint[]): Found {
  const [low, high] = viscosityRange
  return points.reduce<Found>((before, { temperature, viscosity }, index) => {
    const at = `points[${index}].`
    const checked = temperatureWithin(before, at, 'temperature', temperature)
    return within(checked, at, 'viscosity', viscosity, 'viscosity', low, high, 'Take it from the data sheet.')
  }, found)
}

/**
 * Viscosity at a temperature from two points: log₁₀ log₁₀ Z = A − B·log₁₀ T.
 *
 * @param one          temperature [K], viscosity [m²/s]
 * @param other        at another temperature, at least 5 K away
 * @param temperature  wanted [K]
 * @returns viscosity [m²/s], or null where the line leaves 0.2 … 10⁷ mm²/s
 * @throws Refusal naming every field that can't be
 * @source ASTM D341-20, equations with Z (all of 0.21 mm²/s and up)
 * @example viscosityBetween({ temperature: 313.15, viscosity: 32e-6 }, { temperature: 373.15, viscosity: 5.4e-6 }, 353.15) // 8.5332e-6
 */
export function viscosityBetween(one: ViscosityPoint, other: ViscosityPoint, temperature: Kelvin): number | null {
  stopAt(checkPoints(temperatureWithin(null, '', 'temperature', temperature), [one, other]))
  const apart = Math.log10(other.temperature) - Math.log10(one.temperature)
  const slope = (waltherNumber(other.viscosity) - waltherNumber(one.viscosity)) / apart
  return viscosityOfWalther(
    waltherNumber(one.viscosity) + slope * (Math.log10(temperature) - Math.log10(one.temperature)),
  )
}
