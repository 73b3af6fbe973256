/** How far the ideal gas is off: the bound that answers about air springs state. */
import reference from '@legwork/engine/reference/air-compressibility.json' with { type: 'json' }
import { describe, expect, it } from 'vitest'

const { pressuresBar, rows, bound } = reference

function compressibility(row: readonly number[], bar: number): number {
  const above = pressuresBar.findIndex((pressure) => pressure >= bar)
  const [low = 1, high = 1] = [pressuresBar[above - 1], pressuresBar[above]]
  const [left = 1, right = 1] = [row[above - 1], row[above]]
  return above <= 0 ? (row[0] ?? 1) : left + ((right - left) * (bar - low)) / (high - low)
}

describe.each(Object.entries(rows))('dry air at %s K, Lemmon et al. 2000', (_temperature, row) => {
  it('is within the stated bound of the ideal gas for forks and for shocks', () => {
    const inFork = pressuresBar.filter((bar) => bar <= 27).map((bar) => Math.abs(1 - compressibility(row, bar)))
    inFork.push(Math.abs(1 - compressibility(row, 27)))
    expect(Math.max(...inFork)).toBeLessThanOrEqual(bound.forkLargest)
    expect(Math.max(...row.map((z) => Math.abs(1 - z)))).toBeLessThanOrEqual(bound.shockLargest)
  })

  it('keeps the ratio of two states of a fork stroke closer: filled at 7 bar, end at 27 bar', () => {
    const ratio = compressibility(row, 27) / compressibility(row, 7)
    expect(Math.abs(1 - ratio)).toBeLessThanOrEqual(bound.ratioLargestFork)
  })
})
