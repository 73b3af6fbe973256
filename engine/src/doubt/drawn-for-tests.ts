/** Draws of a study as the tests of doubt look at them: with mean and standard deviation besides. */
import { expect } from 'vitest'
import { quantile } from '../numerics/quantile.ts'
import { doubtAtOnce } from './doubt-in-steps.ts'
import type { Doubtful } from './doubtful.ts'

export function study(
  inputs: readonly Doubtful[],
  run: (values: readonly number[]) => number | number[],
  draws = 200_000,
) {
  const names = inputs.map((_, index) => `x${index}`)
  const first = run(inputs.map(({ value }) => value))
  const outputs = typeof first === 'number' ? 1 : first.length
  const each = (values: Float64Array) => {
    const answer = run([...values])
    return typeof answer === 'number' ? [answer] : answer
  }
  const { outputs: answered } = doubtAtOnce({ inputs, names, outputs, run: each, draws, seed: 7 })
  return answered.map(({ spread, shares, values }) => {
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length
    const u = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1))
    return { ...spread, shares, values, mean, u }
  })
}

export const one = (inputs: readonly Doubtful[], run: (values: readonly number[]) => number, draws?: number) => {
  const [answer] = study(inputs, run, draws)
  if (!answer) throw new Error('no output')
  return answer
}
export const within = (value: number | undefined, expected: number, off: number) =>
  expect(Math.abs((value ?? Number.NaN) - expected), `${value} against ${expected}`).toBeLessThanOrEqual(off)
export const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
/** Half the width of a rectangle with a standard deviation of 1. */
export const edge = Math.sqrt(3)

/** The ends that leave as much out below as above. */
export function symmetricBand(values: Float64Array, share: number): [number, number] {
  const sorted = Float64Array.from(values).sort()
  return [quantile(sorted, (1 - share) / 2), quantile(sorted, (1 + share) / 2)]
}

/** The shortest way that holds a share of the draws. */
export function shortestHolding(values: Float64Array, share: number): [number, number] {
  const sorted = Float64Array.from(values).sort()
  const held = Math.ceil(share * sorted.length)
  let best: [number, number] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  for (let from = 0; from + held <= sorted.length; from += 1) {
    const [low = 0, high = 0] = [sorted[from], sorted[from + held - 1]]
    if (high - low < best[1] - best[0]) best = [low, high]
  }
  return best
}
