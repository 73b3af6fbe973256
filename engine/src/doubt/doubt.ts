/** What doubtful inputs do to an output: draws, quantiles, and which input the doubt comes from. */
import { quantile } from '../numerics/quantile.ts'
import { type Draws, normalDraw } from '../numerics/random.ts'

/** Normal with a standard uncertainty, or rectangular from low to high. */
export type Doubtful =
  | { readonly value: number; readonly u: number }
  | { readonly value: number; readonly low: number; readonly high: number }

/** One draw of a doubtful input. */
export function drawOf(doubtful: Doubtful, draw: Draws): number {
  if ('u' in doubtful) return doubtful.value + doubtful.u * normalDraw(draw)
  return doubtful.low + (doubtful.high - doubtful.low) * draw()
}

export interface Spread {
  median: number
  /** 90 %. */
  low: number
  high: number
}

/**
 * Median and 90 % band of drawn outputs.
 *
 * @source JCGM 101:2008 (GUM supplement 1), 7.7: probabilistically symmetric interval
 * @example spreadOf([3, 1, 2]).median // 2
 */
export function spreadOf(outputs: readonly number[]): Spread {
  const sorted = Float64Array.from(outputs).sort()
  return { median: quantile(sorted, 0.5), low: quantile(sorted, 0.05), high: quantile(sorted, 0.95) }
}

/**
 * First-order index: the share of an output's variance that one input explains by itself, Var(E[y|x])/Var(y).
 *
 * Draws are sorted by the input and cut into equal groups; the variance of the groups' means, less what scatter inside
 * groups of that size would make, over the whole variance. Between 0 and 1; 0 where the output does not vary.
 *
 * @param inputs   draws of one input
 * @param outputs  the outputs they gave
 * @source I. M. Sobol', Math. Comput. Simul. 55 (2001) 271; estimated from given data by groups
 * @example firstOrderIndex([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16], [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16]) > 0.9 // true
 */
export function firstOrderIndex(inputs: readonly number[], outputs: readonly number[]): number {
  const count = outputs.length
  const groups = Math.max(2, Math.min(50, Math.floor(Math.sqrt(count))))
  const order = [...inputs.keys()].sort((one, other) => (inputs[one] ?? 0) - (inputs[other] ?? 0))
  const mean = outputs.reduce((sum, output) => sum + output, 0) / count
  let between = 0
  let inside = 0
  for (let group = 0; group < groups; group += 1) {
    const members = order.slice(Math.floor((group * count) / groups), Math.floor(((group + 1) * count) / groups))
    const values = members.map((index) => outputs[index] ?? 0)
    const own = values.reduce((sum, value) => sum + value, 0) / values.length
    between += values.length * (own - mean) ** 2
    inside += values.reduce((sum, value) => sum + (value - own) ** 2, 0)
  }
  const total = between + inside
  if (!(total > 0) || total <= 1e-24 * count * mean * mean) return 0
  const scatter = ((groups - 1) * inside) / Math.max(1, count - groups)
  return Math.min(1, Math.max(0, (between - scatter) / total))
}
