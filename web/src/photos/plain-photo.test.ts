import { expect, test } from 'vitest'
import { fitted } from './plain-photo.ts'

// Worked out by hand: 2,000 px along the long edge, the other in proportion, nothing made larger.
test.each([
  [4000, 3000, 2000, 1500],
  [3024, 4032, 1500, 2000],
  [640, 480, 640, 480],
  [20_000, 3, 2000, 1],
])('%i × %i becomes %i × %i', (width, height, toWidth, toHeight) => {
  expect(fitted(width, height, 2000)).toEqual({ width: toWidth, height: toHeight })
})
