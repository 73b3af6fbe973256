import reference from '@legwork/engine/reference/standard-atmosphere.json' with { type: 'json' }
import { describe, expect, it } from 'vitest'
import { Refusal } from '../refusal/refusal.ts'
import { geopotentialAltitude, standardAir } from './atmosphere.ts'

describe('standard atmosphere', () => {
  // Half of the last printed digit: the table prints five figures.
  it.each(reference.geometric.rows)(
    'geometric %i m: %i Pa, %f K as printed',
    (altitude = 0, pressure = 0, temperature = 0) => {
      const air = standardAir(geopotentialAltitude(altitude))
      const lastDigit = 10 ** (Math.floor(Math.log10(pressure)) - 4)
      expect(Math.abs(air.ambient - pressure)).toBeLessThanOrEqual(lastDigit / 2)
      expect(Math.abs(air.temperature - temperature)).toBeLessThanOrEqual(0.0051)
    },
  )

  it.each(reference.geopotential.rows)('geopotential %i m: %f Pa', (altitude = 0, pressure = 0) => {
    // 5.25588 is the exponent of the standard rounded to six figures: 0.01 Pa at 5 km.
    expect(Math.abs(standardAir(altitude).ambient - pressure)).toBeLessThanOrEqual(0.05)
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1001, 11_001])('refuses %f m', (altitude) => {
    expect(() => standardAir(altitude)).toThrow(Refusal)
  })
})
