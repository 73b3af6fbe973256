/**
 * Quantile of sorted numbers, straight between neighbours at (n − 1)·share.
 *
 * @param sorted  ascending, at least one
 * @param share   0 … 1
 * @source R. J. Hyndman, Y. Fan, Am. Stat. 50 (1996) 361, type 7
 * @example quantile([1, 2, 3, 4], 0.5) // 2.5
 */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const place = (sorted.length - 1) * share
  const below = Math.floor(place)
  const low = sorted[below] ?? 0
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? low
  return low + (high - low) * (place - below)
}
