import { describe, expect, it } from 'vitest'
import { roundAxis, tickText } from './plot.tsx'

describe('the axis of a plot', () => {
  it.each([
    [[0, 87], true, 0, 90],
    [[54, 68.4], false, 54, 70],
    [[12, 30], true, 0, 30],
    [[-3, 5], true, -3, 5],
    [[7], false, 6, 8],
    [[Number.NaN, 4], true, 0, 4],
  ])('of %j holds all of it and ends at round numbers', (values, zero, from, to) => {
    const axis = roundAxis(values, zero)
    expect(axis).toEqual({ from, to })
  })

  it('writes its numbers with the true minus and no dust of the binary', () => {
    expect(tickText(-0.30000000000000004)).toBe('−0.3')
  })
})
