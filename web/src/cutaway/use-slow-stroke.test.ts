import { expect, it } from 'vitest'
import { slowStroke } from './use-slow-stroke.ts'

// By hand: a half cosine over 4 s each way: 0, half at 2 s, all at 4 s, back at 8 s.
it.each([
  [0, 0],
  [2, 0.075],
  [4, 0.15],
  [6, 0.075],
  [8, null],
] as const)('after %d s it stands at %s m', (seconds, expected) => {
  const stroke = slowStroke(seconds, 0.15)
  if (expected === null) expect(stroke).toBeNull()
  else expect(stroke).toBeCloseTo(expected, 12)
})
