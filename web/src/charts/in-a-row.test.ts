import { expect, it } from 'vitest'
import { inARow } from './in-a-row.ts'

// By hand.
it.each([
  [
    [10, 12, 200],
    [10, 40, 200],
  ],
  [
    [200, 12, 10],
    [200, 40, 10],
  ],
  [
    [290, 295, 299],
    [240, 270, 300],
  ],
  [[], []],
] as const)('wanted at %j, they stand at %j', (wanted, expected) => {
  expect(inARow(wanted, 30, 300)).toEqual(expected)
})
