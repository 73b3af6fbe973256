import { expect, test } from 'vitest'
import { measureFor, shown } from './shown.ts'

const psi = 6894.757293168361

// By hand: 88 psi is itself; 6 bar is 600 000 Pa; 5.5 N·m ÷ 0.1129848 N·m/(in·lbf) = 48.7; 0 °C is 273.15 K
test.each([
  [88 * psi, 'psi', '88', 'psi'],
  [600_000, 'bar', '6.0', 'bar'],
  [5.5, 'N·m', '5.5', 'N·m'],
  [5.5, 'in·lbf', '49', 'in·lbf'],
  [268.15, '°C', '−5', '°C'],
  [65, '°', '65.0', '°'],
  [12_500, 'N', '12\u2009500', 'N'],
] as const)('%d in %s reads %s', (value, measure, number, unit) => {
  expect(shown(value, measure)).toEqual({ number, unit })
})

test('a bare number has no unit, and no number is an en dash', () => {
  expect(shown(8, null)).toEqual({ number: '8', unit: '' })
  expect(shown(Number.NaN, null).number).toBe('–')
})

test('each reads in their own measures', () => {
  const person = { pressure: 'bar', torque: 'in·lbf', temperature: '°F', length: 'in' } as const
  expect(
    (['pressure', 'torque', 'temperature', 'length', 'volume'] as const).map((kind) => measureFor(kind, person)),
  ).toEqual(['bar', 'in·lbf', '°F', 'in', 'ml'])
})
