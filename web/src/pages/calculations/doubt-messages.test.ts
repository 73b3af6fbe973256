import { describe, expect, it } from 'vitest'
import { barsOf } from './doubt-messages.ts'

describe('draws as bars', () => {
  it('counts every draw once, from the smallest to the largest', () => {
    const { from, to, counts } = barsOf([0, 1, 1, 35.9, 36])
    expect([from, to, counts.length]).toEqual([0, 36, 36])
    // 0 in the first step, both 1 in the second, 35.9 and 36 in the last: steps are 1 wide.
    expect([counts[0], counts[1], counts[35]]).toEqual([1, 2, 2])
  })

  it('has one bar where all draws are the same, and none of nothing', () => {
    expect(barsOf([5, 5]).counts[0]).toBe(2)
    expect(barsOf([]).counts.every((count) => count === 0)).toBe(true)
  })
})
