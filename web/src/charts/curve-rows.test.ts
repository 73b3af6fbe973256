import { expect, it } from 'vitest'
import { curveRows } from './curve-rows.ts'

const straight = (end: number, slope: number) => [
  { stroke: 0, force: 0 },
  { stroke: end, force: slope * end },
]

// By hand: 1000 N/m over 100 mm; the fast one begins at 40 mm.
it('gives every tenth, and nothing where a curve does not go', () => {
  const fast = [
    { stroke: 0.04, force: 40 },
    { stroke: 0.1, force: 160 },
  ]
  const rows = curveRows(straight(0.1, 1000), fast, null)
  expect(rows).toHaveLength(11)
  expect(rows[5]).toEqual({ stroke: 0.05, slow: 50, fast: expect.closeTo(60, 9), before: null, lastVisit: null })
  expect(rows[3]?.fast).toBeNull()
  expect(rows[10]).toEqual({ stroke: 0.1, slow: 100, fast: 160, before: null, lastVisit: null })
})

it('goes as far as the longest of the settings', () => {
  const rows = curveRows(straight(0.08, 1000), [], straight(0.1, 500), straight(0.1, 700))
  expect(rows[10]).toEqual({ stroke: 0.1, slow: null, fast: null, before: 50, lastVisit: 70 })
})
