import { demoSheet, demoUnits } from '@legwork/trade'
import { expect, test } from 'vitest'
import { leakOf, leakShare } from './leak-reading.ts'

const unit = demoUnits.find(({ key }) => key === 'U01')
if (!unit) throw new Error('no U01')
const sheet = demoSheet(unit, '01900000-0000-7000-8000-000000000001')
const pump = {
  id: 'P1',
  name: 'P1',
  note: null,
  kind: 'pump',
  hoseVolume: 5e-6,
  offset: 0,
  resolution: 6894.757293168,
} as const

// By hand, ideal gas: 600,000 Pa gauge left at 20 °C, read at 10 °C through a hose of 5 ml that holds air of the room:
// ((600,000 + 101,325) · 283.15/293.15 − 101,325) · 187/(187 + 5); U01's chamber of 197 ml less 10 ml of spacer.
test.each([
  [293.15, 600_000 * (187 / 192)],
  [283.15, ((600_000 + 101_325) * (283.15 / 293.15) - 101_325) * (187 / 192)],
])('without a leak the gauge shows at %f K', (endTemperature, shows) => {
  const asked = { sheet, spacers: 1, pump, start: 600_000, startTemperature: 293.15, endTemperature, minutes: 10 }
  expect(leakOf(asked)?.expectedReading).toBeCloseTo(shows, 3)
})

test('a pump that reads 4 % high shows 4 % more, and nothing is lost by that', () => {
  const high = { ...pump, offset: 0.04 }
  const found = leakOf({
    sheet,
    spacers: 1,
    pump: high,
    start: 624_000,
    end: 1.04 * 600_000 * (187 / 192),
    minutes: 10,
  })
  expect(found?.expectedReading).toBeCloseTo(1.04 * 600_000 * (187 / 192), 3)
  expect(Math.abs(found?.leak ?? Number.NaN)).toBeLessThan(1e-6)
})

// By hand: 600,000 Pa left, 594,000 Pa found = 1 % lost; one psi of step: 1.645·√2·6,895/√12/600,000 = 0.77 %.
test('the share lost is told with what the gauge leaves open, by the limit of such a rest', () => {
  const found = leakOf({ sheet, spacers: 1, pump, start: 600_000, end: 594_000 * (187 / 192), minutes: 10 })
  const lost = found && leakShare(found, 10, pump)
  expect(lost?.what).toBe('leak-10-min')
  expect(lost?.share).toBeCloseTo(0.01, 6)
  expect(lost?.halfWidth).toBeCloseTo(0.0077, 4)
  expect(found && leakShare(found, 24 * 60, pump)?.what).toBe('leak-24-h')
  // Neither limit is made for three hours.
  expect(found && leakShare(found, 180, pump)).toBeNull()
})

test.each([
  ['an empty chamber at the start', { start: 0 }],
  ['air of 293 °C', { start: 600_000, endTemperature: 293 + 273.15 }],
  ['less than nothing at the end', { start: 600_000, end: -20_000 }],
])('readings that can’t be give nothing, and break nothing: %s', (_, readings) => {
  expect(leakOf({ sheet, spacers: 1, pump, minutes: 10, ...readings })).toBeNull()
})

test('a chamber found empty has lost everything', () => {
  const found = leakOf({ sheet, spacers: 1, pump, start: 600_000, end: 0, minutes: 10 })
  expect(found?.pressureEnd).toBeCloseTo(0, 6)
  expect(found && leakShare(found, 10, pump)?.share).toBeCloseTo(1, 9)
})
