import { describe, expect, it } from 'vitest'
import { pressureTrouble, temperatureTrouble } from './reading-range.ts'

const text = (value: number, measure: string) => `${value} ${measure}`

describe('what a gauge can show', () => {
  it('is more than nothing, unless all of it may be lost', () => {
    expect(pressureTrouble(0, text)).toContain('Fill it first')
    expect(pressureTrouble(0, text, { empty: true })).toBeNull()
    expect(pressureTrouble(-34_474, text, { empty: true })).toContain('less than 0')
    expect(pressureTrouble(606_739, text)).toBeNull()
  })

  it('is no more than the sheet allows, nor than any gauge reaches', () => {
    // 880 psi typed for 88: 6.07 MPa on a sheet of 120 psi.
    expect(pressureTrouble(6_067_387, text, { maximum: 827_371 })).toContain('827371 Pa')
    expect(pressureTrouble(6_067_387, text)).toBeNull()
    expect(pressureTrouble(2.5e7, text)).toContain('20000000 Pa')
  })
})

it('293 in a field of °C is no air that anybody works in', () => {
  expect(temperatureTrouble(293 + 273.15, text)).toContain('220 K')
  expect(temperatureTrouble(293.15, text)).toBeNull()
})
