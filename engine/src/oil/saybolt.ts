import { brent } from '../numerics/brent.ts'
import type { Kelvin, Second, SquareMetrePerSecond } from '../quantities/si.ts'
import { refuseOne, stopAt, temperatureWithin, within, withinIfGiven } from '../refusal/found.ts'

export interface SayboltQuestion {
  readonly viscosity?: SquareMetrePerSecond
  /** Saybolt universal seconds. */
  readonly seconds?: Second
  readonly temperature: Kelvin
}

function secondsOf(viscosity: SquareMetrePerSecond, temperature: Kelvin): Second {
  const v = viscosity * 1e6
  const at100F = 4.6324 * v + (1 + 0.03264 * v) / ((3930.2 + 262.7 * v + 23.97 * v ** 2 + 1.646 * v ** 3) * 1e-5)
  const fahrenheit = (temperature - 273.15) * 1.8 + 32
  return at100F * (1 + 0.000061 * (fahrenheit - 100))
}

/**
 * Kinematic viscosity to Saybolt universal seconds and back.
 *
 * SUS at 100 °F = 4.6324·ν + (1 + 0.03264·ν)/((3930.2 + 262.7·ν + 23.97·ν² + 1.646·ν³)·10⁻⁵), ν in mm²/s; at other
 * temperatures times 1 + 0.000061·(t − 100 °F).
 *
 * @param question  viscosity [m²/s] or seconds, and the temperature [K]
 * @returns the other
 * @throws Refusal `wrong-form` where both or neither are given; 1.8 mm²/s … 10,000 mm²/s
 * @source ASTM D2161-93, equations; the temperature factor is from memory, in accord with its factor at 210 °F
 * @example saybolt({ viscosity: 32e-6, temperature: 310.928 }).seconds // 150.488
 */
export function saybolt(question: SayboltQuestion): { viscosity: SquareMetrePerSecond } | { seconds: Second } {
  const { viscosity, seconds, temperature } = question
  let found = temperatureWithin(null, '', 'temperature', temperature)
  found = withinIfGiven(
    found,
    '',
    'viscosity',
    viscosity,
    'viscosity',
    1.8e-6,
    0.01,
    'The standard begins at 1.8 mm²/s.',
  )
  stopAt(found)
  if (viscosity !== undefined && seconds === undefined) return { seconds: secondsOf(viscosity, temperature) }
  if (seconds === undefined || viscosity !== undefined) {
    const came = viscosity === undefined ? 'neither viscosity nor seconds' : 'both viscosity and seconds'
    return refuseOne('seconds', 'wrong-form', came, 'viscosity or seconds, one of them', 'Give the one you know.')
  }
  const [low, high] = [secondsOf(1.8e-6, temperature), secondsOf(0.01, temperature)]
  stopAt(within(null, '', 'seconds', seconds, 'duration', low, high, 'The standard begins at 1.8 mm²/s.'))
  const root = brent((tried) => secondsOf(tried, temperature) - seconds, 1.8e-6, 0.01, 1e-15)
  return { viscosity: root ?? 1.8e-6 }
}
