import { demoSheet, demoUnits, type Source } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { genericFor, sheetForNewUnit, sheetsLike } from './new-unit-sheet.ts'
import { blankUnit, type NewUnit } from './take-in-draft.ts'

const id = '01900000-0000-7000-8000-000000000001'
const measured: Source = {
  kind: 'measured-here',
  document: null,
  revision: null,
  page: null,
  person: id,
  at: '2026-06-03T10:00:00.000Z',
  instrument: null,
}
const fork: NewUnit = {
  ...blankUnit,
  label: 'F1',
  stanchion: 0.035,
  stroke: 0.15,
  sheetName: ' K35 ',
  sheetRevision: 'B',
}

describe('the sheet of a new unit', () => {
  it('carries what was measured, by whom, and leaves the maker’s to the maker', () => {
    const sheet = sheetForNewUnit({ ...fork, fixing: { left: 'nut-on-shaft', right: null } }, id, measured)
    expect(sheet).toMatchObject({
      name: 'K35',
      generic: false,
      stanchion: { value: 0.035, source: measured },
      stroke: { value: 0.15, source: measured },
      maxPressure: null,
      spring: {},
      legs: {
        left: { role: 'spring', fixing: 'nut-on-shaft', bathOil: null, footTorque: null, washer: null },
        right: { role: 'damper', fixing: null },
      },
    })
  })

  it('of assumed dimensions is marked so, and takes the measured travel and legs', () => {
    const [size] = genericFor(fork)
    const made: NewUnit = { ...fork, sheetWay: 'generic', sheetChosen: size?.key ?? null, springLeg: 'right' }
    const sheet = sheetForNewUnit(made, id, measured)
    expect(sheet).toMatchObject({
      generic: true,
      stroke: { value: 0.15, source: measured },
      legs: { right: { role: 'spring' } },
    })
    expect(sheet?.legs?.left.bathOil).toBeNull()
    expect(sheet?.maxPressure).toBeNull()
  })

  it('is none where one of the register is taken, or the travel was not measured', () => {
    expect(sheetForNewUnit({ ...fork, sheetWay: 'here', sheetChosen: id }, id, measured)).toBeNull()
    expect(sheetForNewUnit({ ...fork, stroke: null }, id, measured)).toBeNull()
  })

  it('a shock has no legs and no stanchion', () => {
    const shock: NewUnit = { ...fork, kind: 'shock-coil', body: 'piggyback', damper: 'piggyback-ifp' }
    expect(sheetForNewUnit(shock, id, measured)).toMatchObject({ springKind: 'coil', legs: null, stanchion: null })
  })
})

it('sheets of another stanchion, travel or kind are not offered', () => {
  const sheets = demoUnits.map((unit) => demoSheet(unit, unit.key))
  const like = sheetsLike(fork, sheets)
  expect(like.length).toBeGreaterThan(0)
  for (const sheet of like) {
    expect([sheet.kind, sheet.body]).toEqual(['fork-air', 'single-crown'])
    // 35 mm by caliper and 150 mm, each within its own measuring
    expect(Math.abs((sheet.stanchion?.value ?? 0.035) - 0.035)).toBeLessThanOrEqual(0.0006)
    expect(Math.abs(sheet.stroke.value - 0.15)).toBeLessThanOrEqual(0.002)
  }
})
