import { Refusal, toSI } from '@legwork/engine'
import { describe, expect, it } from 'vitest'
import { measureHose } from './measure-hose.ts'

const psi = (value: number): number => toSI(value, 'psi')
const ml = 1e-6

describe('a hose measured by attaching its pump three times', () => {
  // Demo job J01 (invented): U10, 95 ml, reads 171, 162, 154 psi: 5 % each time; its pump's hose is 5 ml.
  it('finds the 5 ml of the demo pump', () => {
    const found = measureHose([171, 162, 154].map(psi), 95 * ml, psi(1))
    expect(found.hoseVolume / ml).toBeCloseTo(5.1, 1)
    expect(found.band[0] / ml).toBeLessThan(5)
    expect(found.band[1] / ml).toBeGreaterThan(5.1)
    // By hand: ratio = (162/171 + 154/162)/2 = 0.948993.
    expect(found.ratio).toBeCloseTo(0.948993, 6)
  })

  // By hand: 100 ml and 4 ml keep 100/104 of the pressure each time.
  it('gives the exact volume back for exact readings, whatever a gauge adds in proportion', () => {
    for (const offset of [1, 1.04, 0.97]) {
      const readings = [200, 200 / 1.04, 200 / 1.04 ** 2].map((value) => psi(value * offset))
      expect(measureHose(readings, 100 * ml, psi(0.1)).hoseVolume / ml).toBeCloseTo(4, 9)
    }
  })

  it('doubts less with a finer gauge, and with more readings', () => {
    const readings = [171, 162, 154, 146].map(psi)
    const width = (list: readonly number[], step: number): number => {
      const { band } = measureHose(list, 95 * ml, psi(step))
      return band[1] - band[0]
    }
    expect(width(readings.slice(0, 3), 0.1)).toBeLessThan(width(readings.slice(0, 3), 1))
    expect(width(readings, 1)).toBeLessThan(width(readings.slice(0, 3), 1))
  })

  it.each([
    ['one reading', [171]],
    ['readings that rise', [150, 160, 171]],
    ['readings that stay', [171, 171, 171]],
    ['a fall inside the gauge’s step', [80, 79.8, 79.6]],
  ])('refuses %s', (_what, readings) => {
    expect(() => measureHose(readings.map(psi), 190 * ml, psi(1))).toThrow(Refusal)
  })
})
