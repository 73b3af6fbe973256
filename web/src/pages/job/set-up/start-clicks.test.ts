import { expect, it } from 'vitest'
import { startClicks } from './start-clicks.ts'

const psi = 6894.757293168
const middle = (clicks: number, pressure: number) => ({ basis: 'middle', clicks, pressure: pressure * psi }) as const

// By hand, one click for 6 to 10 psi, 8 in the middle: 16 psi more are 2 clicks, between 1.6 and 2.7.
it.each([
  ['harder, more closed', 9, 80, 96, 18, [7, 6, 7]],
  ['softer, more open', 9, 80, 56, 18, [12, 11, 13]],
  ['the same', 9, 80, 80, 18, [9, 9, 9]],
  ['never beyond closed', 2, 60, 120, 18, [0, 0, 0]],
  ['never beyond open', 16, 120, 60, 18, [18, 18, 18]],
] as const)('%s', (_says, from, was, is, range, expected) => {
  const { clicks, low, high } = startClicks(middle(from, was), is * psi, range)
  expect([clicks, low, high]).toEqual(expected)
})
