import { prepareSpring } from '@legwork/engine'
import { demoSheet, demoUnits, type LegRole, type Sheet, springOf } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { drawnOtherwise, forkAt, forkTableOf, springLegOf } from './fork-of-sheet.ts'

function sheetWith(roles: readonly [LegRole, LegRole], oil: readonly [number, number], key = 'U01'): Sheet {
  const unit = demoUnits.find((one) => one.key === key)
  const sheet = unit && demoSheet(unit, 'sheet')
  if (!sheet?.legs) throw new Error(`the demo has no fork ${key}`)
  const [left, right] = (['left', 'right'] as const).map((leg, index) => {
    const before = sheet.legs?.[leg]
    if (!before?.bathOil) throw new Error('the demo’s legs have oil')
    return { ...before, role: roles[index] ?? 'spring', bathOil: { ...before.bathOil, value: oil[index] ?? 0 } }
  })
  return left && right ? { ...sheet, legs: { left, right } } : sheet
}

describe('legs of a drawn fork', () => {
  it('the spring’s is drawn below, and keeps the name it has on the fork', () => {
    const usual = sheetWith(['spring', 'damper'], [10e-6, 20e-6])
    const swapped = sheetWith(['damper', 'spring'], [10e-6, 20e-6])
    expect([springLegOf(usual), springLegOf(swapped)]).toEqual(['left', 'right'])
    const [one, other] = [usual, swapped].map((sheet) => forkTableOf(sheet, springOf(sheet)))
    expect([one?.legs.left.oil, one?.legs.right.oil, one?.springLeg]).toEqual([10e-6, 20e-6, 'left'])
    expect([other?.legs.left.oil, other?.legs.right.oil, other?.springLeg]).toEqual([20e-6, 10e-6, 'right'])
  })

  it('the air closed in a leg goes with its own oil', () => {
    const sheet = sheetWith(['damper', 'spring'], [5e-6, 40e-6])
    const spring = springOf(sheet)
    const table = forkTableOf(sheet, spring)
    const { pressures } = forkAt(table ?? expect.fail('nothing drawn'), prepareSpring(spring, 6e5), 0.1)
    // More oil, less room: the fuller leg, drawn below, has the higher pressure.
    expect(pressures.left).toBeGreaterThan(pressures.right)
  })

  it('two crowns are drawn where the sheet has two', () => {
    const [one, two] = [
      sheetWith(['spring', 'damper'], [1e-5, 1e-5]),
      sheetWith(['spring', 'damper'], [1e-5, 1e-5], 'U07'),
    ]
    expect(forkTableOf(one, springOf(one))?.crowns).toBe(1)
    expect(forkTableOf(two, springOf(two))?.crowns).toBe(2)
  })
})

it('says what it draws otherwise than it is', () => {
  const sheet = sheetWith(['spring', 'damper'], [1e-5, 1e-5])
  expect(drawnOtherwise(sheet)).toBeNull()
  expect(drawnOtherwise({ ...sheet, damper: 'open-bath' })).toBe('open-bath')
  expect(drawnOtherwise(sheetWith(['both', 'damper'], [1e-5, 1e-5]))).toBe('one-leg')
})
