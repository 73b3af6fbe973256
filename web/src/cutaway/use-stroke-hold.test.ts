import { expect, it } from 'vitest'
import { draggedTo } from './use-stroke-hold.ts'

// By hand: a drawing of 400 mm over 800 px is 0.5 mm a pixel.
it.each([
  ['40 px to the crown are 20 mm deeper', 0.03, 40, 0.05],
  ['back past full length stays there', 0.03, -400, 0],
  ['no further than the spring goes', 0.03, 4000, 0.15],
  ['to the nearest millimetre', 0.03, 1.4, 0.031],
] as const)('%s', (_says, from, pixels, expected) => {
  expect(draggedTo(from, pixels, 0.0005, 0.15)).toBeCloseTo(expected, 12)
})
