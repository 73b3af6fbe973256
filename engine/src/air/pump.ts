/** What a pump's gauge shows: attaching fills the hose from the chamber. */
import { standardAmbient } from '../spring/spring-force.ts'

/**
 * Attaching a hose at ambient lowers the chamber from p to p·V/(V + V_h), gauge; detaching leaves it at the reading.
 *
 * @param input  volume: all chambers joined where the leg rests [m³]; hoseVolume [m³]; pressure or reading, gauge [Pa]
 * @returns pressure before attaching, reading, pressureAfter [Pa, gauge]
 * @source ideal gas at one temperature, hose at ambient before
 * @example pumpReading({ volume: 187e-6, hoseVolume: 5e-6, pressure: 606739 }).reading // 590938
 */
export function pumpReading(
  input: { volume: number; hoseVolume: number } & ({ pressure: number } | { reading: number }),
): { pressure: number; reading: number; pressureAfter: number } {
  const ratio = input.volume / (input.volume + input.hoseVolume)
  const reading = 'pressure' in input ? input.pressure * ratio : input.reading
  return { pressure: reading / ratio, reading, pressureAfter: reading }
}

/**
 * A sealed gas carried elsewhere: absolute pressure goes with temperature, gauge follows ambient.
 *
 * @param input  pressure gauge [Pa]; from, to: temperature [K] and ambient [Pa, absolute]
 * @returns gauge pressure there [Pa]
 * @source ideal gas at constant volume
 * @example gaugeElsewhere({ pressure: 551580.6, from: { temperature: 293.15, ambient: 101325 }, to: { temperature: 273.15, ambient: 101325 } }) // 507037
 */
export function gaugeElsewhere(input: {
  pressure: number
  from: { temperature: number; ambient?: number }
  to: { temperature: number; ambient?: number }
}): number {
  const { pressure, from, to } = input
  const absolute = pressure + (from.ambient ?? standardAmbient)
  return (absolute * to.temperature) / from.temperature - (to.ambient ?? standardAmbient)
}
