import { expect, it } from 'vitest'
import { hoseRatio } from './hose-ratio.ts'

const psi = 6894.757

// Three readings of one chamber: ratios 162/171 = 0.94737 and 154/162 = 0.95062, mean 0.94899; 95 ml·(1/0.94899 − 1) = 5.106 ml.
it('171, 162, 154 psi: 0.949 of the pressure stays, 5.1 ml of hose on 95 ml', () => {
  const worked = hoseRatio({ readings: [171 * psi, 162 * psi, 154 * psi], volume: 95e-6 })
  expect(worked.ratio).toBeCloseTo((162 / 171 + 154 / 162) / 2, 12)
  expect((worked.hoseVolume ?? 0) * 1e6).toBeCloseTo(5.106, 2)
})

// By hand, JCGM 100:2008 5.1.2: d/dr₁ = −r₂/r₁²/2, d/dr₂ = (1/r₁ − r₃/r₂²)/2, d/dr₃ = 1/r₂/2, u = 1 psi/√12 each.
it('its band follows from the readings’ resolution', () => {
  const slopes = [-162 / 171 ** 2 / 2, (1 / 171 - 154 / 162 ** 2) / 2, 1 / 162 / 2]
  const half = (1.645 * Math.hypot(...slopes)) / Math.sqrt(12)
  const { ratio, band } = hoseRatio({ readings: [171 * psi, 162 * psi, 154 * psi] })
  expect((band[1] - ratio) / half).toBeCloseTo(1, 9)
  expect((ratio - band[0]) / half).toBeCloseTo(1, 9)
})

it('names the reading that rose: somebody pumped', () => {
  expect(() => hoseRatio({ readings: [171 * psi, 160 * psi, 165 * psi] })).toThrow(
    /readings\[2\] is 11.38 bar; it must be at most/,
  )
})
