/** The demonstration units (invented): load, sag and pressure or rate as the reference states them. */
import reference from '@legwork/engine/reference/demo-units.json' with { type: 'json' }
import { describe, expect, it } from 'vitest'
import { forkLoad } from '../load/fork-load.ts'
import type { Spring } from '../spring/spring.ts'
import { pressureForSag } from './pressure-for-sag.ts'
import { sag } from './sag.ts'

const psi = 6894.757
// JSON widens the kinds to string; the checks of the engine look at every field.
const units = reference.units.map((unit) => ({ ...unit, spring: unit.spring as Spring }))

// The stated pressures were worked out outside this project from the written formulas (SciPy).
describe.each(units.filter(({ spring }) => spring.kind === 'air'))('air unit $unit', (unit) => {
  it('needs its stated pressure within 1 psi', () => {
    const { pressure } = pressureForSag(unit.spring, { load: unit.load, sag: unit.sag / unit.spring.stroke })
    expect(Math.abs(pressure - (unit.pressure ?? Number.NaN))).toBeLessThanOrEqual(psi)
  })

  it('sags where that pressure was asked for', () => {
    const question = { load: unit.load, sag: unit.sag / unit.spring.stroke }
    const { pressure } = pressureForSag(unit.spring, question)
    expect(sag(unit.spring, { pressure, load: unit.load }).stroke).toBeCloseTo(unit.sag, 10)
  })
})

describe.each(units.filter(({ spring }) => spring.kind === 'coil'))('coil unit $unit', (unit) => {
  it('rests at its stated sag: within what 1 % of rate moves it', () => {
    const rest = sag(unit.spring, { load: unit.load })
    expect(Math.abs(rest.stroke - unit.sag) / unit.sag).toBeLessThanOrEqual(0.013)
  })
})

it.each(units.filter(({ headAngle }) => headAngle !== undefined))('load of $unit from its rider', (unit) => {
  const { riderMass, frontShare, bikeFrontMass, headAngle } = unit
  if (riderMass === undefined || frontShare === undefined || bikeFrontMass === undefined || headAngle === undefined) {
    throw new Error('a fork without its rider')
  }
  // Rounded to newtons in the reference, whose bike mass is rounded to 10 g: 0.05 N.
  expect(Math.abs(forkLoad({ riderMass, frontShare, bikeFrontMass, headAngle }).load - unit.load)).toBeLessThanOrEqual(
    0.55,
  )
})
