import { forkLoad, sag } from '@legwork/engine'
import { expect, it } from 'vitest'
import { demoSheet } from '../demo/sheets.ts'
import { demoUnits } from '../demo/units.ts'
import { springOf } from '../sheets/spring-of.ts'
import { cardRows } from './start-card-rows.ts'

const unit = demoUnits.find((one) => one.key === 'U01')
if (!unit) throw new Error('the demo has no U01')
/** A demo fork, its dimensions invented. */
const sheet = demoSheet(unit, '01900000-0000-7000-8000-000000000001')
const base = {
  sheet,
  spacers: 1,
  frontShare: 0.415,
  frontMass: 5,
  headAngle: 65,
  sag: 0.2,
  ambient: 101_325,
}

it('every row’s pressure gives the wanted sag under its own rider', () => {
  const rows = cardRows(base)
  expect(rows.map(({ riderMass }) => riderMass)).toEqual(
    [...rows.map(({ riderMass }) => riderMass)].sort((a, b) => a - b),
  )
  for (const { riderMass, pressure } of rows) {
    const { load } = forkLoad({ riderMass, frontShare: 0.415, bikeFrontMass: 5, headAngle: 65 })
    expect(sag(springOf(sheet, { spacers: 1 }), { pressure: pressure ?? 0, load }).fraction).toBeCloseTo(0.2, 9)
  }
})

it('says nothing where the maximum on the sheet does not carry the rider', () => {
  const { stroke } = sheet
  const weak = { ...sheet, maxPressure: { ...stroke, value: 500_000 } }
  const rows = cardRows({ ...base, sheet: weak })
  expect(rows[0]?.pressure).toBeLessThan(500_000)
  expect(rows.at(-1)?.pressure).toBeNull()
})
