import { forkLoad, pressureForSag, Refusal } from '@legwork/engine'
import reference from '@legwork/engine/reference/demo-units.json' with { type: 'json' }
import { describe, expect, it } from 'vitest'
import { psi, sheetOfDemo } from '../journal/written-job.ts'
import { springOf } from './spring-of.ts'

const units = reference.units as unknown as readonly {
  unit: string
  load: number
  sag: number
  pressure?: number
  spring: { stroke: number; kind: string }
}[] // one shape; TypeScript infers sixteen

describe('the spring of a sheet', () => {
  // Origin: pressure, load and sag as they stand together in engine/reference/demo-units.json.
  it.each(units.filter((unit) => unit.pressure !== undefined).map((unit) => [unit.unit, unit] as const))(
    'of %s gives the pressure of the reference within 1 psi',
    (key, unit) => {
      const spring = springOf(sheetOfDemo(key))
      if (spring.kind !== 'air') throw new Error('an air unit')
      const { pressure } = pressureForSag(spring, { load: unit.load, sag: unit.sag / unit.spring.stroke })
      expect(Math.abs(pressure - (unit.pressure ?? 0))).toBeLessThan(psi)
    },
  )

  it('takes other spacers and other oil than the sheet’s', () => {
    const sheet = sheetOfDemo('U01')
    expect(springOf(sheet, { spacers: 3 })).toMatchObject({ spacers: 3, bore: 0.032 })
    expect(springOf(sheet, { oil: { left: 62e-6, right: 14e-6 } }).lower?.legs).toEqual([
      { oil: 62e-6 },
      { oil: 14e-6 },
    ])
    expect(() => springOf(sheet, { spacers: 1.5 })).toThrow(Refusal)
  })

  it('names the value that the sheet does not give', () => {
    const sheet = sheetOfDemo('U01')
    const { bore: _, ...spring } = sheet.spring
    expect(() => springOf({ ...sheet, spring })).toThrow(/spring\.bore is missing/)
  })

  it('makes a coil with its preload', () => {
    expect(springOf(sheetOfDemo('U08'))).toMatchObject({ kind: 'coil', rate: 9500, preload: 0.002 }) // demo-units.json, U08
  })

  it('with the rider’s load gives the demo’s 88 psi', () => {
    // Origin: demo-units.json, U01: 82 kg, share 0.42, 5.05 kg, 65°.
    const { load } = forkLoad({ riderMass: 82, frontShare: 0.42, bikeFrontMass: 5.05, headAngle: 65 })
    const spring = springOf(sheetOfDemo('U01'))
    if (spring.kind !== 'air') throw new Error('an air unit')
    expect(Math.round(pressureForSag(spring, { load, sag: 0.2 }).pressure / psi)).toBe(88)
  })
})
