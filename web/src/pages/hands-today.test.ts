import { expect, test } from 'vitest'
import { minutesOfHands } from './hands-today.ts'

// By hand: from 11:20 to 17:00 it is 5 h 40 min.
test.each([
  ['17:00', 1, 340],
  ['17:00', 2, 680],
  ['11:00', 2, 0],
])('to %s with %i: %i min', (closes, people, minutes) => {
  expect(minutesOfHands({ closes, people }, new Date(2026, 4, 9, 11, 20))).toBe(minutes)
})
