/**
 * The standard atmosphere up to 11 km: p = 101 325·(1 − 0.0065·h/288.15)^5.25588, T = 288.15 − 0.0065·h.
 *
 * @param altitude  geopotential [m], −2000 … 11 000; a map's altitude is taken for it (under 0.1 % below 4 km)
 * @returns ambient [Pa, absolute], temperature [K]
 * @source ISO 2533:1975 / US Standard Atmosphere 1976
 * @example airPressure(2000).ambient // 79495.2
 */
export function airPressure(altitude: number): { ambient: number; temperature: number } {
  const temperature = 288.15 - 0.0065 * altitude
  return { ambient: 101_325 * (temperature / 288.15) ** 5.25588, temperature }
}
