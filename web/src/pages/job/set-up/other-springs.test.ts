import { type Bike, demoDimensions, demoRiders, demoSheet, demoUnits, type Rider, type Sheet } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { loadAsked, loadOfAsked, springFor } from './other-springs.ts'

const atmosphere = 101_325

function known(key: string): { sheet: Sheet; rider: Rider; bike: Bike } {
  const unit = demoUnits.find((one) => one.key === key)
  const rider = demoRiders.find((one) => one.key === unit?.rider)
  if (!unit || !rider) throw new Error(`the demo has no ${key}`)
  const { headAngle = null, bikeFrontMass = null, leverage = null, rearSprungMass = null } = demoDimensions(key)
  return {
    sheet: demoSheet(unit, 'sheet'),
    // Only what a load is worked out from is looked at.
    rider: { mass: rider.mass, frontShare: rider.frontShare, posture: 'standing' } as Rider,
    bike: { headAngle, frontMass: bikeFrontMass, leverage, rearSprungMass } as Bike,
  }
}

function solved(key: string) {
  const { sheet, rider, bike } = known(key)
  const asked = loadAsked(sheet, rider, bike)
  if (!('calculation' in asked)) throw new Error(`${key} lacks ${asked.join(', ')}`)
  const load = loadOfAsked(asked)
  const { sag, load: expected } = demoDimensions(key)
  return { load, expected, sag, found: springFor(sheet, load, sag / sheet.stroke.value, atmosphere) }
}

// The demo's invented dimensions hold loads, sags, pressures and rates that were worked out with another program.
describe('a shock or a coil at the sag that is wanted', () => {
  it.each(['U10', 'U11', 'U13', 'U14'])('%s: the demo’s own pressure within 1 psi', (key) => {
    const { load, expected, found } = solved(key)
    expect(load / expected).toBeCloseTo(1, 2)
    if (found.kind !== 'air') throw new Error(`${key} is an air shock`)
    expect(Math.abs(found.pressure - (demoDimensions(key).pressure ?? 0))).toBeLessThan(6895)
  })

  it.each(['U08', 'U12', 'U15', 'U16'])('%s: the demo’s own coil rests at its sag', (key) => {
    const { load, expected, sag, found } = solved(key)
    expect(load / expected).toBeCloseTo(1, 2)
    if (found.kind !== 'coil') throw new Error(`${key} is a coil`)
    const { spring } = known(key).sheet
    expect(found.rate / (spring.rate?.value ?? 0)).toBeCloseTo(1, 1)
    expect(Math.abs(found.rests - sag)).toBeLessThan(0.0015)
  })

  it('a shock is never loaded like a fork: what is not known of the rear is asked for', () => {
    const { sheet, rider } = known('U10')
    const bare = { headAngle: 65, frontMass: 5, leverage: null, rearSprungMass: null } as Bike
    expect(loadAsked(sheet, rider, bare)).toEqual(['rear-mass', 'leverage'])
    expect(loadAsked(sheet, rider, null)).toEqual(['rear-mass', 'leverage'])
    expect(loadAsked(known('U08').sheet, null, null)).toEqual(['mass', 'front-mass', 'head-angle'])
  })
})
