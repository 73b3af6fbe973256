import { springCurve } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import { sheetOfDemo } from '../journal/written-job.ts'
import { springOf } from '../sheets/spring-of.ts'
import { pressStops } from './press-stops.ts'

const psi = 6894.757293168
const millimetres = (stops: readonly number[]) => stops.map((stroke) => Math.round(stroke * 1e4) / 10)

// Steps of 10 mm, 5 near the sag, never over 85 % of the travel or 2,000 N: common practice, no source.
describe('the stops of a press', () => {
  it('of a fork stand every 10 mm to 85 % of its travel, every 5 mm about the sag', () => {
    const stops = pressStops(springOf(sheetOfDemo('U01')), 88 * psi, 0.03)
    // 150 mm of travel: 127.5 mm is 85 % of it.
    expect(millimetres(stops)).toEqual([10, 20, 25, 30, 35, 40, 50, 60, 70, 80, 90, 100, 110, 120])
  })

  it('end before the spring pushes 2,000 N', () => {
    const spring = springOf(sheetOfDemo('U01'))
    const hard = pressStops(spring, 200 * psi, null)
    const last = hard.at(-1) ?? 0
    const { points } = springCurve({ ...spring, stroke: last }, { pressure: 200 * psi, points: 2 })
    expect(points[1]?.force).toBeLessThan(2000)
    expect(last).toBeLessThan(0.12)
  })

  it('of a rear shock are half as far apart', () => {
    // 50 mm of stroke: 42.5 mm is 85 % of it; 40 N/mm there is 1,700 N.
    const stops = pressStops({ kind: 'coil', rate: 40_000, stroke: 0.05 }, null, 0.015)
    expect(millimetres(stops)).toEqual([5, 10, 12.5, 15, 17.5, 20, 25, 30, 35, 40])
  })
})
