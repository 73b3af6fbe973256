import { brent } from '../numerics/brent.ts'
import type { SquareMetrePerSecond } from '../quantities/si.ts'

/** From [mm²/s at 100 °C], then L = a·Y² + b·Y + c and H = d·Y² + e·Y + f. */
const pieces: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [2, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077],
  [3.8, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183],
  [4.4, 2.5, -7.2143, 13.812, 0.82143, 1.5679, 0.119],
  [5, 0.101, 16.635, -45.469, 0.04985, 9.1613, -18.557],
  [6.4, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656],
  [7, 0.01191, 21.475, -72.87, 0.79762, -0.7321, 14.61],
  [7.7, 0.41858, 16.1558, -56.04, 0.05794, 10.5156, -28.24],
  [9, 0.88779, 7.5527, -16.6, 0.26665, 6.7015, -10.81],
  [12, 0.7672, 10.7972, -38.18, 0.20073, 8.4658, -22.49],
  [15, 0.97305, 5.3135, -2.2, 0.28889, 5.9741, -4.93],
  [18, 0.97256, 5.25, -0.98, 0.24504, 7.416, -16.73],
  [22, 0.91413, 7.4759, -21.82, 0.20323, 9.1267, -34.23],
  [28, 0.87031, 9.7157, -50.77, 0.18411, 10.1015, -46.75],
  [40, 0.84703, 12.6752, -133.31, 0.17029, 11.4866, -80.62],
  [55, 0.85921, 11.1009, -83.19, 0.1713, 11.368, -76.94],
  [70, 0.83531, 14.6731, -216.246, 0.16841, 11.8493, -96.947],
]

/**
 * Viscosity index: up to 100 VI = 100·(L − U)/(L − H); above N = (log H − log U)/log Y, VI = (10^N − 1)/0.00715 + 100.
 *
 * @param at40   viscosity at 40 °C [m²/s]
 * @param at100  viscosity at 100 °C [m²/s]
 * @returns the index, not rounded; null below 2 mm²/s at 100 °C, where the standard has none
 * @source ASTM D2270-10 / ISO 2909:2002, equations of the annex
 * @example viscosityIndex(73.3e-6, 8.86e-6) // 92.4
 */
export function viscosityIndex(at40: SquareMetrePerSecond, at100: SquareMetrePerSecond): number | null {
  const u = at40 * 1e6
  const y = at100 * 1e6
  const piece = pieces.findLast(([from]) => y >= from)
  if (!piece) return null
  const [, a, b, c, d, e, f] = piece
  const l = (a * y + b) * y + c
  const h = (d * y + e) * y + f
  if (u >= h) return (100 * (l - u)) / (l - h)
  const n = (Math.log10(h) - Math.log10(u)) / Math.log10(y)
  return (10 ** n - 1) / 0.00715 + 100
}

/**
 * Viscosity at 100 °C of an oil known at 40 °C and by its index; null where none between 2 mm²/s and that at 40 °C has it.
 *
 * @example viscosityAt100(73.3e-6, 92.42) // 8.86e-6
 */
export function viscosityAt100(at40: SquareMetrePerSecond, index: number): SquareMetrePerSecond | null {
  const high = at40 * 0.95
  if (!(high > 2e-6)) return null
  return brent((tried) => (viscosityIndex(at40, tried) ?? Number.NaN) - index, 2e-6, high, 1e-14)
}

/** Mid-points at 40 °C [mm²/s] by grade. */
const grades: readonly (readonly [string, number])[] = [
  ['2', 2.2],
  ['3', 3.2],
  ['5', 4.6],
  ['7', 6.8],
  ...[10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500].map((mid) => [String(mid), mid] as const),
]

/**
 * ISO VG of a viscosity at 40 °C: the grade whose mid-point is within ±10 %, else null.
 *
 * @source ISO 3448:1992, table 1
 * @example viscosityGrade(15.2e-6) // "ISO VG 15"
 */
export function viscosityGrade(at40: SquareMetrePerSecond): string | null {
  const found = grades.find(([, mid]) => Math.abs(at40 * 1e6 - mid) <= 0.1 * mid + 1e-9)
  return found ? `ISO VG ${found[0]}` : null
}
