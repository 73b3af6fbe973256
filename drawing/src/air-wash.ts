/**
 * Strength of the air's wash: fuller is more pressure, so that chambers can be compared at a glance.
 *
 * @param pressure  gauge [Pa]; below 0 it counts as 0
 * @returns opacity 0.07 … 0.85
 * @example airStrength(0) // 0.07
 */
export function airStrength(pressure: number): number {
  return Math.min(0.85, 0.07 + 0.62 * (Math.max(0, pressure) / 20e5) ** 0.62)
}
