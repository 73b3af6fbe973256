import type { Measures } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { shownInField, typedNumber, typedQuantity } from './written-quantity.ts'

const metric: Measures = { pressure: 'bar', torque: 'N·m', temperature: '°C', length: 'mm' }
const imperial: Measures = { pressure: 'psi', torque: 'in·lbf', temperature: '°F', length: 'in' }

describe('a quantity in a form', () => {
  // 1 in = 25.4 mm; 1 psi = 6894.757 Pa; °F = °C·9/5 + 32: exact by definition.
  it.each([
    ['30 mm', 'length', metric, '30', 'mm'],
    ['30 mm', 'length', imperial, '1.1811', 'in'],
    ['88psi', 'pressure', imperial, '88', 'psi'],
    ['88 psi', 'pressure', metric, '6.0674', 'bar'],
    ['20 °C', 'temperature', imperial, '68', '°F'],
    [293.15, 'temperature', metric, '20', '°C'],
    [0.42, 'fraction', metric, '42', '%'],
    ['24 h', 'duration', metric, '24', 'h'],
    ['1:25:30', 'duration', metric, '1:25:30', null],
    ['20 ml', 'volume', imperial, '20', 'ml'],
    ['1/2 turn', 'turns', metric, '1/2', 'turns'],
    ['about 5', 'length', metric, 'about 5', null],
    ['5 cats', 'length', metric, '5 cats', null],
    [undefined, 'pressure', metric, '', 'bar'],
  ] as const)('%s of a %s is shown as it was meant', (value, kind, person, text, measure) => {
    expect(shownInField(value, kind, person)).toEqual({ text, measure })
  })

  it.each([
    ['80', 'pressure', 'psi', '80 psi'],
    ['80psi', 'pressure', 'bar', '80psi'],
    ['5,5', 'pressure', 'bar', '5,5 bar'],
    ['1,500', 'force', 'N', '1,500 N'],
    ['−5', 'temperature', '°C', '−5 °C'],
    ['1/2', 'turns', 'turns', '1/2 turns'],
    ['20', 'fraction', '%', '20 %'],
    ['1:25:30', 'duration', 'min', '1:25:30'],
    ['cats', 'length', 'mm', 'cats'],
    ['2', 'number', null, 2],
    ['', 'length', 'mm', undefined],
  ] as const)('%s in a %s field beside %s is taken for %s', (typed, kind, beside, taken) => {
    expect(typedQuantity(typed, kind, beside)).toBe(taken)
  })

  it.each([
    ['1,3', 1.3],
    ['7', 7],
    ['seven', 'seven'],
    [' ', undefined],
  ])('counts %s', (typed, taken) => {
    expect(typedNumber(typed)).toBe(taken)
  })
})
