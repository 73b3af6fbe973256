import type { MeasuredEntry } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { pressReadings, sagReadings } from './chart-readings.ts'

const made = { person: 'p', at: '2026-06-03T10:00:00.000Z', carriedOver: false, late: false, leg: null }
const filled = (entry: string, pressure: number, phase: MeasuredEntry['phase'] = 'done'): MeasuredEntry => ({
  ...made,
  entry,
  what: 'press-pressure',
  phase,
  reading: { value: pressure, measure: 'Pa', instrument: null, how: null },
})
const stop = (of: string, stroke: number, way: 'pressing' | 'releasing', force: number): MeasuredEntry => ({
  ...made,
  entry: `${of} ${stroke} ${way}`,
  what: 'press-force',
  phase: 'done',
  reading: { value: force, measure: 'N', instrument: null, how: null },
  press: { of, stroke, way, held: 20 },
})

describe('readings on the curve', () => {
  it('of the sag stand at the load, one for each direction', () => {
    expect(sagReadings({ fromAbove: 0.024, fromBelow: 0.03 }, 351)).toEqual([
      { stroke: 0.024, force: 351, way: 'pressing', when: 'today' },
      { stroke: 0.03, force: 351, way: 'releasing', when: 'today' },
    ])
    expect(sagReadings(null, 351)).toEqual([])
  })

  const measured = [
    filled('full', 600_000),
    stop('full', 0.03, 'pressing', 370),
    stop('full', 0.03, 'releasing', 332),
    stop('full', 0.06, 'pressing', 560),
    filled('half', 300_000),
    stop('half', 0.03, 'pressing', 190),
  ]

  it('of the press are those at this pressure, each way by itself', () => {
    expect(pressReadings(measured, 610_000, 'today')).toEqual([
      { stroke: 0.03, force: 370, way: 'pressing', when: 'today' },
      { stroke: 0.03, force: 332, way: 'releasing', when: 'today' },
      { stroke: 0.06, force: 560, way: 'pressing', when: 'today' },
    ])
    expect(pressReadings(measured, 300_000, 'last visit')).toHaveLength(1)
  })

  it('of the press at another pressure, or before the work, stay off it', () => {
    expect(pressReadings(measured, 650_000, 'today')).toEqual([])
    expect(pressReadings([filled('full', 600_000, 'received')], 600_000, 'today')).toEqual([])
  })
})
