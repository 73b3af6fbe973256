import { demoSheet, demoUnits, type Instrument, type Sheet } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { fieldErrors } from './field-errors.ts'
import { registerBodies } from './registers.ts'

const id = '0190b5a0-0000-7000-8000-00000000000a'
const sheetOf = (key: string): Sheet => {
  const unit = demoUnits.find((one) => one.key === key)
  if (!unit) throw new Error(key)
  return demoSheet(unit, id)
}
function errorsOf(register: 'sheets' | 'instruments', body: unknown) {
  const checked = registerBodies[register].safeParse(body)
  return checked.success ? [] : fieldErrors(checked.error, body, register)
}

describe('a sheet as a register takes it', () => {
  it.each(demoUnits.map(({ key }) => key))('takes the demo sheet of %s', (key) => {
    expect(errorsOf('sheets', sheetOf(key))).toEqual([])
  })

  const sheet = sheetOf('U01')
  const { source } = sheet.stroke
  it.each([
    [{ ...sheet, colour: 'red' }, 'sheets.colour', 'schema.unrecognized-keys'],
    [{ ...sheet, stroke: { value: '150 mm', source } }, 'sheets.stroke.value', 'schema.invalid-type'],
    [{ ...sheet, stroke: { value: 0.4, source } }, 'sheets.stroke.value', 'sheet.number'],
    [{ ...sheet, kind: 'fork-coil' }, 'sheets.springKind', 'sheet.spring-kind'],
    [
      { ...sheet, spring: { ...sheet.spring, bore: { value: 0.036, source } } },
      'sheets.spring.bore.value',
      'sheet.bore-over-stanchion',
    ],
    [
      { ...sheet, spring: { ...sheet.spring, positiveVolume: { value: 1.1e-4, source } } },
      'sheets.spring.positiveVolume.value',
      'sheet.chamber-too-short',
    ],
    [
      { ...sheet, spring: { ...sheet.spring, flavour: { value: 1, source } } },
      'sheets.spring.flavour',
      'sheet.unknown-field',
    ],
    [
      { ...sheet, limits: { clearance: { watch: 2, fail: 1, source } } },
      'sheets.limits.clearance.fail',
      'sheet.limit-order',
    ],
    [{ ...sheet, legs: null }, 'sheets.legs', 'sheet.legs-missing'],
  ])('refuses a wrong one by field (%#)', (body, field, code) => {
    const error = errorsOf('sheets', body).find((one) => one.field === field)
    expect(error).toMatchObject({ code })
    expect([error?.came, error?.allowed, error?.next].every(Boolean)).toBe(true)
  })
})

describe('an instrument as a register takes it', () => {
  const pump: Instrument = { id, name: 'P1', note: null, kind: 'pump', hoseVolume: 5e-6, offset: 0, resolution: 6895 }
  const hose = { readings: [1179000, 1116976, 1061817], volume: 95e-6, unit: null, band: [4.9e-6, 5.3e-6], person: id }
  const measured = { ...pump, hose: { ...hose, at: '2026-06-03T10:00:00.000Z' } }

  it('with the measuring of its hose, and without', () => {
    for (const body of [pump, measured, { ...pump, kind: 'gauge' }, { ...pump, putAway: true }])
      expect(errorsOf('instruments', body)).toEqual([])
  })

  it.each([
    [{ ...pump, hoseVolume: -1e-6 }, 'instruments.hoseVolume'],
    [{ ...pump, offset: 4 }, 'instruments.offset'],
    [{ ...measured, hose: { ...measured.hose, readings: [1e6] } }, 'instruments.hose.readings'],
    [{ ...measured, hose: { ...measured.hose, at: 'yesterday' } }, 'instruments.hose.at'],
    [{ ...pump, kind: 'wand' }, 'instruments.kind'],
    [{ ...pump, putAway: false }, 'instruments.putAway'],
  ])('refuses a wrong one by field (%#)', (body, field) => {
    expect(errorsOf('instruments', body).map((error) => error.field)).toContain(field)
  })
})
