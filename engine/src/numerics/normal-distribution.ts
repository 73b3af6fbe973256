import { brent } from './brent.ts'
import { upperGamma } from './incomplete-gamma.ts'

/**
 * Share of a standard normal distribution below z.
 *
 * @source erfc(x) = Q(1/2, x²), Abramowitz & Stegun 6.5.17
 * @example normalShare(1.644853626951) // 0.95
 */
export function normalShare(z: number): number {
  const beyond = upperGamma(0.5, (z * z) / 2) / 2
  return z > 0 ? 1 - beyond : beyond
}

/**
 * The z below which a share of a standard normal distribution lies.
 *
 * @param share  over 0 and under 1; nearer than 1e-15 to either it is taken as 1e-15 away
 * @source root of the distribution function, Brent (1973)
 * @example normalQuantile(0.95) // 1.644853626951
 */
export function normalQuantile(share: number): number {
  const inside = Math.min(Math.max(share, 1e-15), 1 - 1e-15)
  // Solved in the lower half, where a share keeps all its digits.
  const lower = Math.min(inside, 1 - inside)
  const z = brent((x) => Math.log(normalShare(x) / lower), -8.5, 0.5, 1e-14) ?? 0
  return inside < 0.5 ? z : -z
}
