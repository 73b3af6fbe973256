import type { Unit } from '@legwork/trade'
import { expect, test } from 'vitest'
import { unitInCode, unitOfLabel } from './unit-in-code.ts'

const id = '0196c000-0000-7000-8000-00000000000a'
const unit: Unit = {
  id,
  label: 'U01',
  kind: 'fork-air',
  description: '35 mm air fork, 150 mm',
  serial: null,
  rider: null,
  bike: null,
  sheet: 's',
}

// The label's code is the address of the unit's card.
test('a label’s code names its unit, and nothing else does', () => {
  expect(unitInCode(`http://127.0.0.1:4720/units/${id}`, [unit])).toBe(unit)
  expect(unitInCode(`http://127.0.0.1:4720/units/${id.replace('a', 'b')}`, [unit])).toBeNull()
  expect(unitInCode('U01', [unit])).toBeNull()
})

test('what stands on a label names its unit, however it is typed, unless two have it', () => {
  expect(unitOfLabel(' u 01', [unit])).toBe(unit)
  expect(unitOfLabel('U1', [unit])).toBeNull()
  expect(unitOfLabel('', [unit])).toBeNull()
  expect(unitOfLabel('u01', [unit, { ...unit, id: 'other' }])).toBeNull()
})
