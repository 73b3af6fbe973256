import type { Kelvin, Metre, Pascal } from '../quantities/si.ts'
import { stopAt, within } from '../refusal/found.ts'

export interface Air {
  /** Air pressure [Pa, absolute]. */
  ambient: Pascal
  temperature: Kelvin
}

const seaLevelPressure = 101_325
const seaLevelTemperature = 288.15
const lapse = 0.0065
/** g₀·M/(R·L) with the constants of 1976. */
const exponent = 5.25588
const earthRadius = 6_356_766

/**
 * Standard atmosphere by geopotential altitude: p = 101325·(1 − 0.0065·h/288.15)^5.25588, T = 288.15 − 0.0065·h.
 *
 * An altitude from a map is taken as geopotential: under 0.1 % off below 4 km.
 *
 * @param altitude  geopotential [m], −1000 … 11,000
 * @returns air pressure [Pa, absolute] and temperature [K]
 * @throws Refusal naming `altitude`
 * @source ISO 2533:1975; U.S. Standard Atmosphere 1976
 * @example standardAir(2000).ambient // 79495
 */
export function standardAir(altitude: Metre): Air {
  stopAt(within(null, '', 'altitude', altitude, 'altitude', -1000, 11_000, 'Give the altitude above the sea.'))
  const temperature = seaLevelTemperature - lapse * altitude
  return { ambient: seaLevelPressure * (temperature / seaLevelTemperature) ** exponent, temperature }
}

/**
 * Geopotential altitude of a geometric one: H = r·Z/(r + Z), r = 6,356,766 m.
 *
 * @param geometric  [m], −1000 … 11,000
 * @returns geopotential altitude [m]
 * @throws Refusal naming `altitude`
 * @source U.S. Standard Atmosphere 1976, equation 18
 * @example geopotentialAltitude(4000) // 3997.48
 */
export function geopotentialAltitude(geometric: Metre): Metre {
  stopAt(within(null, '', 'altitude', geometric, 'altitude', -1000, 11_000, 'Give the altitude above the sea.'))
  return (earthRadius * geometric) / (earthRadius + geometric)
}
