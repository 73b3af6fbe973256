import { expect, it } from 'vitest'
import { forkForTests } from './fork-for-tests.ts'
import { forkShapes } from './fork-shapes.ts'
import { outlinesOf, type Place } from './outline.ts'
import { setPlaces } from './set-places.ts'

const fork = { ...forkForTests(0), ring: 0.03 }
const shapes = forkShapes(fork)
const places = setPlaces(fork, 0.03)

/** Whether a place lies inside a closed outline: a ray to the right crosses its edges an odd number of times. */
function isInside([x, y]: Place, outline: readonly Place[]): boolean {
  return outline.reduce((inside, [x0, y0], index) => {
    const [x1, y1] = outline[(index + 1) % outline.length] ?? [x0, y0]
    if (y0 > y === y1 > y) return inside
    return x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0) ? !inside : inside
  }, false)
}

it.each([
  ['valve', 'valve'],
  ['spacers', 'spacer.1'],
  ['rebound', 'knob.rebound'],
  ['compression', 'knob.compression'],
  ['bath', 'oil.left'],
] as const)('the place of %s lies inside %s as it is drawn', (place, name) => {
  const outlines = shapes.filter((shape) => shape.name === name).flatMap((shape) => outlinesOf(shape, true))
  expect(outlines.some((outline) => isInside(places[place], outline))).toBe(true)
})

it('the ring is drawn where the sag left it, as far along as the sag', () => {
  const ring = shapes.find((shape) => shape.name === 'ring')
  if (!ring) throw new Error('no ring')
  expect(
    Math.min(
      ...outlinesOf(ring, true)
        .flat()
        .map(([x]) => x),
    ),
  ).toBeCloseTo(places.ring[0], 9)
  expect(places.ring[0] - places.unmoved[0]).toBeCloseTo(30, 9)
})
