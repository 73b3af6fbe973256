import { describe, expect, it } from 'vitest'
import { leakDown } from './leak-down.ts'

const psi = 6894.757
const room = 293.15

// 40 CFR 1065.644: 2 l, 25.3 to 50.6 kPa absolute in 70 s at 293.15 K; by its equation 2.9657046846e-4 mol/s (printed 0.00030).
it('40 CFR 1065.644: rise in a vacuum side check, in moles', () => {
  const ambient = 25_300
  const start = { reading: 1, temperature: room }
  const worked = leakDown({ volume: 0.002, start, end: { reading: 25_301, temperature: room }, duration: 70, ambient })
  expect(-worked.leak / (8.314472 * room)).toBeCloseTo(2.9657046846e-4, 12)
})

describe('three cases of a workshop (invented), by their arithmetic', () => {
  it('68 psi to 55 in 24 h at 20 °C loses 19 %', () => {
    const volume = 187e-6
    const end = { reading: 55 * psi, temperature: room, how: 'left' as const }
    const worked = leakDown({ volume, start: { reading: 68 * psi, temperature: room }, end, duration: 86_400 })
    expect(1 - worked.pressureEnd / worked.pressureStart).toBeCloseTo(0.19, 2)
    expect(worked.significant).toBe(true)
  })
  it('180 psi read again as 171 through a hose of 5 % is no leak', () => {
    const question = {
      volume: 95e-6,
      hoseVolume: 5e-6,
      start: { reading: 180 * psi, temperature: room },
      end: { reading: 171 * psi, temperature: room },
      duration: 60,
    }
    const worked = leakDown(question)
    expect(worked.significant).toBe(false)
    expect(worked.halfLife).toBeNull()
    expect(worked.expectedReading / psi).toBeCloseTo(171, 6)
  })
  // (76 + 14.696)·276.15/294.15 − 14.696 = 70.45 psi; through 174 ml and 5 ml of hose 68.5.
  it('76 psi at 21 °C read as 68 at 3 °C is the cold and the hose', () => {
    const question = {
      volume: 174e-6,
      hoseVolume: 5e-6,
      start: { reading: 76 * psi, temperature: 294.15 },
      end: { reading: 68 * psi, temperature: 276.15 },
      duration: 43_200,
    }
    const worked = leakDown(question)
    expect(worked.expectedReading / psi).toBeCloseTo(68.48, 1)
    expect(worked.significant).toBe(false)
  })
})
