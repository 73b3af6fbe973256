import { expect, it } from 'vitest'
import { wrenchStations } from './wrench-stations.ts'

it.each([
  [0.245, 0.03],
  [0.18, 0],
  [0.35, 0.05],
])(
  'a wrench of %f m with an adapter of %f m is drawn to scale between nut, square and hand',
  (length, adapterLength) => {
    const at = wrenchStations({ length, adapterLength })
    expect(at.square - at.nut).toBeCloseTo(adapterLength * 1e3, 9)
    expect(at.hand - at.square).toBeCloseTo(length * 1e3, 9)
    expect(at.adapter).toBe(adapterLength > 0)
    const order = [at.nut, at.square, at.windowFrom, at.gripFrom, at.hand, at.gripTo]
    expect([...order].sort((a, b) => a - b)).toEqual(order)
  },
)
