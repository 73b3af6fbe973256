import { forkStations } from '@legwork/drawing'
import { forkForTests as fork } from '@legwork/drawing/fork-for-tests.ts'
import { describe, expect, it } from 'vitest'
import { calloutPlaces } from './callout-places.ts'

describe('words between the legs', () => {
  it.each([0, 0.03, 0.06, 0.09, 0.12, 0.15])(
    'at stroke %f they keep their order and clear of one another',
    (stroke) => {
      const places = calloutPlaces(fork(stroke))
      expect(places.map((place) => place.part)).toEqual(['bath', 'negative', 'positive'])
      const starts = places.map((place) => place.from)
      expect((starts[1] ?? 0) - (starts[0] ?? 0)).toBeGreaterThanOrEqual(72)
      expect((starts[2] ?? 0) - (starts[1] ?? 0)).toBeGreaterThanOrEqual(96)
    },
  )

  it('the anchors lie in their chambers over the whole stroke', () => {
    for (const stroke of [0, 0.05, 0.1, 0.15]) {
      const at = forkStations(fork(stroke))
      const piston = at.headTo + at.negativeLength + stroke * 1e3
      const anchor = Object.fromEntries(calloutPlaces(fork(stroke)).map((place) => [place.part, place.anchor[0]]))
      expect(anchor.negative).toBeGreaterThan(at.headTo)
      expect(anchor.negative).toBeLessThan(piston)
      expect(anchor.positive).toBeGreaterThan(piston + at.pistonLength)
      expect(anchor.positive).toBeLessThan(at.cap)
    }
  })
})
