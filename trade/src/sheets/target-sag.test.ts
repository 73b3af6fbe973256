import { describe, expect, it } from 'vitest'
import { demoSheet } from '../demo/sheets.ts'
import { demoUnits } from '../demo/units.ts'
import { targetSag } from './target-sag.ts'

const sheet = (key: string) => {
  const unit = demoUnits.find((one) => one.key === key)
  if (!unit) throw new Error(`the demo has no ${key}`)
  return demoSheet(unit, '01900000-0000-7000-8000-000000000001')
}

// Common practice, no source: cross-country 15–20 %, trail 15–22 %, hard riding 16–22 %, downhill 18–25 % of a fork.
describe('the sag usually wanted', () => {
  it.each([
    ['fork-air', 'single-crown', 0.032, 0.12, 'cross-country', 0.15, 0.2],
    ['fork-air', 'single-crown', 0.035, 0.15, 'trail', 0.15, 0.22],
    ['fork-air', 'single-crown', 0.038, 0.17, 'hard-riding', 0.16, 0.22],
    ['fork-air', 'dual-crown', 0.04, 0.2, 'downhill', 0.18, 0.25],
    ['shock-air', 'in-line', null, 0.055, 'trail', 0.25, 0.3],
    ['shock-coil', 'piggyback', null, 0.075, 'downhill', 0.28, 0.35],
  ] as const)('%s, %s, %s m, %s m is %s', (kind, body, diameter, stroke, builtFor, low, high) => {
    const { source } = sheet('U01').stroke
    const stanchion = diameter === null ? null : { value: diameter, source }
    expect(targetSag({ kind, body, stanchion, stroke: { value: stroke, source } })).toEqual({ builtFor, low, high })
  })

  it('every demo unit has one', () => {
    for (const { key } of demoUnits) {
      const { low, high } = targetSag(sheet(key))
      expect(low).toBeLessThan(high)
    }
  })
})
