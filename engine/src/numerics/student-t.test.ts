import { expect, it } from 'vitest'
import { studentFactor } from './student-t.ts'

// JCGM 100:2008 (GUM), table G.2, columns p = 90 % and 99 % (printed digits, from memory; 2.92 of 16 degrees of freedom
// at 99 % seen in H.1.6).
it.each([
  [0.9, 1, 6.31],
  [0.9, 2, 2.92],
  [0.9, 3, 2.35],
  [0.9, 4, 2.13],
  [0.9, 5, 2.02],
  [0.9, 10, 1.81],
  [0.9, 20, 1.72],
  [0.99, 16, 2.92],
  [0.99, 1, 63.66],
])('holds %f of the distribution, %i degrees of freedom: %f', (share, freedom, printed) => {
  expect(Math.abs(studentFactor(share, freedom) - printed)).toBeLessThanOrEqual(0.005)
})

// With many degrees of freedom it is the normal's 1.6449, as every table says.
it('goes over into the normal', () => {
  expect(studentFactor(0.9, 10_000)).toBeCloseTo(1.645, 3)
})
