/** What the worker that draws tells the page. */
import type { Answer } from '@legwork/contract/calculations/index.ts'

/** Draws counted in equal steps from the smallest to the largest. */
export interface Bars {
  from: number
  to: number
  counts: readonly number[]
}

export type DoubtMessage =
  | { is: 'progress'; share: number }
  | { is: 'done'; answer: Answer; bars: Readonly<Record<string, Bars>> }

const steps = 36

/**
 * @example barsOf([1, 2, 2]).counts.length // 36
 */
export function barsOf(numbers: readonly number[]): Bars {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const number of numbers) {
    from = Math.min(from, number)
    to = Math.max(to, number)
  }
  const counts = Array.from({ length: steps }, () => 0)
  if (numbers.length === 0) return { from: 0, to: 0, counts }
  for (const number of numbers) {
    const step = to > from ? Math.min(steps - 1, Math.floor(((number - from) / (to - from)) * steps)) : 0
    counts[step] = (counts[step] ?? 0) + 1
  }
  return { from, to, counts }
}
