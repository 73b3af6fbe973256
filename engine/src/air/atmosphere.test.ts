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
    // 5.25588 is the exponent of the standard rounded to six figures: 0.01 Pa at 5 km, 0.06 Pa at 11 km.
    expect(Math.abs(standardAir(altitude).ambient - pressure)).toBeLessThanOrEqual(0.07)
  })

  it.each(reference.geometricSeparate.rows)('geometric %i m: %f Pa', (altitude = 0, pressure = 0) => {
    expect(Math.abs(standardAir(geopotentialAltitude(altitude)).ambient - pressure)).toBeLessThanOrEqual(0.1)
  })

  // Foot and pound to the inch² by their definitions; half of the last printed digit.
  it.each(reference.feet.rows)('geometric %i ft: %f psi', (feet = 0, psi = 0) => {
    const { ambient } = standardAir(geopotentialAltitude(feet * 0.3048))
    expect(Math.abs(ambient / 6894.757 - psi)).toBeLessThanOrEqual(0.00051)
  })
  // A handbook's rounded form, off by up to two of its last digits.
  it.each(reference.feetByAshrae.rows)('%i ft: %f psi', (feet = 0, psi = 0) => {
    expect(Math.abs(standardAir(geopotentialAltitude(feet * 0.3048)).ambient / 6894.757 - psi)).toBeLessThanOrEqual(
      0.0025,
    )
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1001, 11_001])('refuses %f m', (altitude) => {
    expect(() => standardAir(altitude)).toThrow(Refusal)
  })
})
