import { answerSchema, calculations, runCalculation } from '@legwork/contract/calculations/index.ts'
import type { Measures } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { linesOf } from './answer-lines.ts'
import { readIn, writtenNumber } from './answer-number.tsx'

function linesFor(name: string) {
  const one = calculations[name]
  if (!one) throw new Error(`no calculation ${name}`)
  const answer = runCalculation(name, one.example)
  if (!answer.ok) throw new Error('the example is refused')
  const { units: _units, assumptions: _assumptions, ...output } = answer.output
  return linesOf(output, answerSchema(one))
}

describe('the lines of an answer', () => {
  it('makes one range of low and high, and of a pair', () => {
    expect(linesFor('sag').map(({ is, path }) => [is, path.join('.')])).toEqual([
      ['number', 'stroke'],
      ['number', 'fraction'],
      ['number', 'rate'],
      ['range', 'low-high'],
      ['none', 'limit'],
    ])
    expect(linesFor('side-friction')).toMatchObject([{ is: 'range', of: { kind: 'force' } }])
  })

  it('knows kinds from the schema, and a unit that stands beside its number', () => {
    // Pa is a gauge pressure in most answers; here it is the air around.
    expect(linesFor('air-pressure')[0]).toMatchObject({ of: { kind: 'absolutePressure' } })
    expect(linesFor('calibrate')[0]).toMatchObject({ of: { kind: 'volume' } })
    expect(linesFor('leak-down').find(({ path }) => path[0] === 'leak')).toMatchObject({
      of: { kind: null, unit: 'Pa·m³/s' },
    })
  })

  it("reads Saybolt's seconds as seconds, however many", () => {
    const person: Measures = { pressure: 'bar', torque: 'N·m', temperature: '°C', length: 'mm' }
    const [line] = linesFor('saybolt')
    expect(line?.is === 'number' && readIn(line.of, person, line.value).unit).toBe('s')
  })

  it('makes a table of a list of objects', () => {
    const table = linesFor('spring-curve').find(({ is }) => is === 'table')
    expect(table?.is === 'table' && table.rows.length).toBe(4)
  })
})

describe('a number of an answer', () => {
  it.each([
    [0, undefined, '0'],
    [30.0012, undefined, '30'],
    [0.202812, undefined, '0.2028'],
    [1854.7, undefined, '1855'],
    [101_325, undefined, '101\u2009325'],
    [-32.334, undefined, '−32.33'],
    [0.00001874, undefined, '1.874·10⁻⁵'],
    [23_500_000, undefined, '2.35·10⁷'],
    [28.3, 31.72, '28.30'],
    [8.0631, 27.99, '8.06'],
  ])('%d beside %s is written %s', (value, beside, written) => {
    expect(writtenNumber(value, beside)).toBe(written)
  })

  it('is read in the measures of the person, long times in larger ones', () => {
    const person: Measures = { pressure: 'bar', torque: 'N·m', temperature: '°C', length: 'in' }
    expect(readIn({ kind: 'pressure', unit: 'Pa' }, person, 1e5).of(550_000)).toBeCloseTo(5.5, 12)
    // 1 in = 25.4 mm, exact.
    expect(readIn({ kind: 'length', unit: 'm' }, person, 0.1).of(0.0254)).toBeCloseTo(1, 12)
    expect(readIn({ kind: 'duration', unit: 's' }, person, 86_400 * 3).unit).toBe('d')
    expect(readIn({ kind: null, unit: 'm²' }, person, 1).of(2e-6)).toBeCloseTo(2, 12)
  })
})
