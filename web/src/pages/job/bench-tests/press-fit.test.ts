import { demoSheet, demoUnits, springOf } from '@legwork/trade'
import { expect, test } from 'vitest'
import { foreseen, plannedStops } from './press-asked.ts'
import { fitOf } from './press-fit.ts'

const unit = demoUnits.find(({ key }) => key === 'U01')
if (!unit) throw new Error('no U01')
const spring = springOf(demoSheet(unit, '01900000-0000-7000-8000-000000000001'))
const psi = 6894.757293168
const strokes = [0.02, 0.05, 0.08, 0.11]

/** Read with 16 N of friction at 88 psi, whatever the filling is said to have been. */
const asked = (pressure: number) => ({
  spring,
  presses: [
    {
      pressure,
      readings: strokes.map((stroke) => {
        const force = foreseen(spring, 88 * psi, stroke)
        return { stroke, pressing: force + 16, releasing: force - 16 }
      }),
    },
  ],
  forceSd: 4,
  strokeSd: 0.7e-3,
})

// Half of what pressing and releasing are apart is the friction, whatever the spring is like: 16 N.
test('a press that can be is fitted', () => {
  const fit = fitOf(asked(88 * psi))
  expect('test' in fit && fit.test.friction).toBeCloseTo(16, 6)
})

test.each([0, -0.5e5, 2.5e7])('a filling of %d Pa is answered by what is wrong with it', (pressure) => {
  const fit = fitOf(asked(pressure))
  expect('refused' in fit && fit.refused.map(({ field }) => field)).toEqual(['presses[0].pressure'])
})

test('what can’t be filled is pressed at no stop', () => {
  expect(plannedStops(spring, 88 * psi, null).length).toBeGreaterThan(10)
  expect(plannedStops(spring, -0.5e5, null)).toEqual([])
  expect(plannedStops(spring, 2.5e7, null)).toEqual([])
})
