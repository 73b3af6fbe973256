import { quantile } from '../numerics/quantile.ts'

export interface Spread {
  median: number
  /** 90 %. */
  low: number
  high: number
}

/**
 * Median and 90 % band of drawn outputs.
 *
 * @param outputs  in any order, at least one
 * @source JCGM 101:2008 (GUM supplement 1), 7.7: probabilistically symmetric interval
 * @example spreadOf([3, 1, 2]).median // 2
 */
export function spreadOf(outputs: ArrayLike<number>): Spread {
  const sorted = Float64Array.from(outputs).sort()
  return { median: quantile(sorted, 0.5), low: quantile(sorted, 0.05), high: quantile(sorted, 0.95) }
}
