import { Refusal } from '@legwork/engine'
import { demoDimensions, demoRiders, demoSheet, demoUnits } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import {
  beforePump,
  bushingFriction,
  correctedBySag,
  loadDoubt,
  offsetAgainst,
  pumpShows,
  type StartInputs,
  startPressure,
  workedOut,
} from './start-pressure.ts'

const psi = 6894.757293168

/** Inputs of a demo fork (invented dimensions) under its own rider. */
function inputsOf(key: string): StartInputs {
  const unit = demoUnits.find((one) => one.key === key)
  const rider = demoRiders.find((one) => one.key === unit?.rider)
  if (!unit || rider?.frontShare == null) throw new Error(`no fork ${key}`)
  const { sag, headAngle = 0, bikeFrontMass = 0 } = demoDimensions(key)
  const sheet = demoSheet(unit, '01900000-0000-7000-8000-000000000001')
  return {
    sheet,
    spacers: sheet.spacers?.value ?? 0,
    riderMass: rider.mass,
    frontShare: rider.frontShare,
    frontMass: bikeFrontMass,
    headAngle,
    sag: sag / sheet.stroke.value,
    ambient: 101_325,
  }
}

describe('start pressure', () => {
  it.each(['U01', 'U02', 'U03', 'U04', 'U05', 'U06', 'U09'])('of %s is the demo’s own within 1 psi', (key) => {
    const { pressure } = startPressure(inputsOf(key))
    expect(Math.abs(pressure - (demoDimensions(key).pressure ?? 0))).toBeLessThan(psi)
  })

  it('has a band that holds it, and most of it hangs on the share', () => {
    const { pressure, band, doubtOf } = startPressure(inputsOf('U01'))
    expect(band[0]).toBeLessThan(pressure)
    expect(band[1]).toBeGreaterThan(pressure)
    expect(doubtOf[0]?.input).toBe('share')
    expect(doubtOf.reduce((sum, part) => sum + part.share, 0)).toBeCloseTo(1, 12)
  })

  it('is worked out, or answered by why it can’t be', () => {
    const inputs = inputsOf('U01')
    expect(workedOut(inputs)).toEqual(startPressure(inputs))
    expect(workedOut({ ...inputs, spacers: 30 })).toBeInstanceOf(Refusal)
    expect(workedOut({ ...inputs, riderMass: 45, frontMass: 0, headAngle: 45, sag: 0.5 })).toBeInstanceOf(Refusal)
  })

  // By hand: u² = (82·0.02)² + (0.42·1)², times g·sin 65° = 8.888 N/kg, times 1.645: 24.7 N.
  it('doubts the load by what share and mass leave', () => {
    expect(loadDoubt(inputsOf('U01'))).toBeCloseTo(
      1.645 * 9.80665 * Math.sin((65 * Math.PI) / 180) * Math.hypot(1.64, 0.42),
      6,
    )
  })
})

it('shows less on the pump than there was, and undoes it', () => {
  const { sheet, spacers } = inputsOf('U01')
  const pump = { id: '', name: 'P1', note: null, kind: 'pump', hoseVolume: 5e-6, offset: 0, resolution: psi } as const
  // By hand: 88·187/(187 + 5) = 85.7 psi.
  const shown = pumpShows(sheet, spacers, 88 * psi, pump)
  expect(shown / psi).toBeCloseTo((88 * 187) / 192, 6)
  expect(beforePump(sheet, spacers, shown, pump) / psi).toBeCloseTo(88, 9)
})

// By hand: P1 reads true and leaves 88 psi; a hose of 5 ml takes them to 88·187/192 = 85.71; 90 shown are 5.0 % too many.
it('holds the rider’s pump against ours', () => {
  const { sheet, spacers } = inputsOf('U01')
  const ours = { hoseVolume: 5e-6, offset: 0 }
  const read = { ours: 88 * psi, theirs: 90 * psi }
  expect(offsetAgainst(sheet, spacers, read, ours)).toBeCloseTo(90 / ((88 * 187) / 192) - 1, 9)
  // The same with a pump of ours that reads 4 % high: it left less than it showed.
  const high = offsetAgainst(sheet, spacers, read, { hoseVolume: 5e-6, offset: 0.04 })
  expect(high).toBeCloseTo((90 / ((88 * 187) / 192)) * 1.04 - 1, 9)
})

// By hand: 160 N across, 0.23 m over 0.115 m: 160·5 = 800 N on the bushings, times 0.04 and 0.10.
it('makes friction of the side load', () => {
  const { sheet } = inputsOf('U01')
  expect(bushingFriction(sheet, 160)).toEqual([32, 80])
  expect(bushingFriction({ ...sheet, bushings: null }, 160)).toBeNull()
})

it('leaves the pressure where the measured sag is the wanted one', () => {
  const { sheet, spacers, sag, ambient } = inputsOf('U01')
  const { pressure } = startPressure(inputsOf('U01'))
  const corrected = correctedBySag(sheet, { fromAbove: 0.027, fromBelow: 0.033, pressure, spacers, sag, ambient })
  expect(corrected.mean).toBeCloseTo(0.03, 12)
  expect(corrected.pressure).toBeCloseTo(pressure, 0)
  expect(corrected.friction).toBeGreaterThan(0)
})
