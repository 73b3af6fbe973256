import reference from '@legwork/engine/reference/oil.json' with { type: 'json' }
import { describe, expect, it } from 'vitest'
import { Refusal } from '../refusal/refusal.ts'
import { blend, refutasNumber, residualOil } from './blend.ts'
import { saybolt } from './saybolt.ts'
import { viscosity } from './viscosity.ts'
import { viscosityGrade, viscosityIndex } from './viscosity-index.ts'
import { viscosityBetween } from './viscosity-temperature.ts'

const at100F = (100 - 32) / 1.8 + 273.15

// ASTM D341, a worked line: 32 mm²/s at 40 °C and 5.4 at 100 °C give 8.5 at 80 °C as printed; 8.533215 with 273.15 K.
it('D341: 8.5 mm²/s at 80 °C', () => {
  const [one, other] = [
    { temperature: 313.15, viscosity: 32e-6 },
    { temperature: 373.15, viscosity: 5.4e-6 },
  ]
  const worked = viscosityBetween(one, other, 353.15)
  expect(Math.abs((worked ?? 0) * 1e6 - 8.5)).toBeLessThanOrEqual(0.05)
  expect(Math.abs((worked ?? 0) * 1e6 - 8.533215)).toBeLessThanOrEqual(2e-5)
})

it.each(reference.index.rows)('D2270: %f and %f mm²/s have index %i', (at40 = 0, at100 = 0, index = 0) => {
  expect(Math.round(viscosityIndex(at40 * 1e-6, at100 * 1e-6) ?? 0)).toBe(index)
})
// At U = L the index is 0, at U = H it is 100: so both are read off the index; log H over log Y comes in above 100 only.
it.each(reference.indexTable.rows)(
  'D2270: at %f mm²/s L is %f and H %f as the table prints',
  (at100 = 0, l = 0, h = 0) => {
    const share = reference.indexTable.share
    const [zero, hundred] = [viscosityIndex(l * 1e-6, at100 * 1e-6), viscosityIndex(h * 1e-6, at100 * 1e-6)]
    // One hundred points of the index lie between L and H.
    const points = (of: number) => (100 * share * of) / (l - h)
    expect(Math.abs(zero ?? Number.NaN)).toBeLessThanOrEqual(points(l))
    expect(Math.abs((hundred ?? Number.NaN) - 100)).toBeLessThanOrEqual(points(h))
  },
)
// Whole numbers of which it is not said whether they were cut or rounded: within one.
it.each(reference.indexOfOils.rows)('D2270: %f and %f mm²/s, index %i', (at40 = 0, at100 = 0, index = 0) => {
  expect(Math.abs((viscosityIndex(at40 * 1e-6, at100 * 1e-6) ?? Number.NaN) - index)).toBeLessThanOrEqual(1)
})
// The branch above 70 mm²/s, recomputed by a public program from the same equations: 192.9975428.
it('D2270: 1000 and 100 mm²/s, 193.0', () => {
  expect(viscosityIndex(1000e-6, 100e-6) ?? 0).toBeCloseTo(192.9975428, 2)
})
// ASTM D2270 gives no index below 2 mm²/s at 100 °C.
it('D2270: none below 2 mm²/s', () => {
  expect(viscosityIndex(5e-6, 1.9e-6)).toBeNull()
})
// Back from the first example of the standard.
it('D2270 backwards: 73.30 mm²/s and index 92.43 has 8.86 at 100 °C', () => {
  const worked = viscosity({ viscosity40: 73.3e-6, viscosityIndex: 92.42964724534, temperature: 373.15 })
  expect(Math.abs(worked.viscosity * 1e6 - 8.86)).toBeLessThanOrEqual(0.005)
})

it.each(reference.grades.rows)('ISO 3448: %s from %f to %f', (grade, low, high) => {
  for (const edge of [Number(low), Number(high)]) expect(viscosityGrade(edge * 1e-6)).toBe(grade)
  expect(viscosityGrade(Number(low) * 0.99e-6)).not.toBe(grade)
  expect(viscosityGrade(Number(high) * 1.01e-6)).not.toBe(grade)
})

describe('Saybolt', () => {
  it.each(reference.saybolt.rows)('D2161: %f mm²/s is %f s at 100 °F', (mm2 = 0, printed = 0) => {
    const worked = saybolt({ viscosity: mm2 * 1e-6, temperature: at100F })
    expect(Math.abs(('seconds' in worked ? worked.seconds : 0) - printed)).toBeLessThanOrEqual(
      printed > 1000 ? 0.005 : 0.0005,
    )
  })
  // A practical table of three figures, rounded more coarsely at its upper end: within 2 %.
  it.each(reference.hydraulicInstitute.rows)('Hydraulic Institute: %f s is %f mm²/s', (seconds = 0, printed = 0) => {
    const worked = saybolt({ seconds, temperature: at100F })
    expect(Math.abs(('viscosity' in worked ? worked.viscosity * 1e6 : 0) / printed - 1)).toBeLessThanOrEqual(0.02)
  })
  // D2161: above 75 mm²/s seconds are viscosity times 4.632 at 100 °F and 4.664 at 210 °F; half of the last digit.
  it.each([
    [100, 4.632],
    [210, 4.664],
  ])('at %i °F: %f times the viscosity', (fahrenheit, factor) => {
    const worked = saybolt({ viscosity: 400e-6, temperature: (fahrenheit - 32) / 1.8 + 273.15 })
    expect(Math.abs(('seconds' in worked ? worked.seconds : 0) / 400 - factor)).toBeLessThanOrEqual(0.0006)
  })
  // 700 s by a public converter of the same standard.
  it('700 s is 151.089 mm²/s', () => {
    const worked = saybolt({ seconds: 700, temperature: at100F })
    expect('viscosity' in worked ? worked.viscosity * 1e6 : 0).toBeCloseTo(151.0891475, 3)
  })
})

describe('blends', () => {
  // Maples 2000: VBN = 14.534·ln ln(ν + 0.8) + 10.975; recomputed.
  it.each([
    [5, 19.173571],
    [20, 27.110588],
  ])('Refutas number of %f is %f', (mm2, printed) => {
    expect(Math.abs(refutasNumber(mm2 * 1e-6) - printed)).toBeLessThanOrEqual(5e-7)
  })
  it('Refutas: 40 % of 20 in 5 mm²/s is 8.108549', () => {
    expect(blend({ a: 5e-6, b: 20e-6, target: 8.108549e-6, method: 'Refutas' }).fractionOfB).toBeCloseTo(0.4, 6)
  })
  // Recomputed: grades 46 and 15 half and half.
  it('Refutas: half 46 and half 15 is 25.197936', () => {
    const half = { a: 46e-6, b: 15e-6, target: 25.197936e-6, method: 'Refutas' as const }
    expect(blend(half).fractionOfB).toBeCloseTo(0.5, 7)
  })
  // D7152 by its rule (the rule from memory): 8.081274 mm²/s.
  it('D7152: 40 % of 20 in 5 mm²/s is 8.081274', () => {
    expect(blend({ a: 5e-6, b: 20e-6, target: 8.081274e-6 }).fractionOfB).toBeCloseTo(0.4, 6)
    const worked = residualOil({ old: 20e-6, fresh: 5e-6, residualVolume: 4e-6, fillVolume: 6e-6 })
    expect(Math.abs(worked.viscosity * 1e6 - 8.081274)).toBeLessThanOrEqual(5e-7)
  })
  it('refuses a target outside both', () => {
    expect(() => blend({ a: 5e-6, b: 20e-6, target: 30e-6 })).toThrow(Refusal)
  })
})
