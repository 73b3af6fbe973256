import { runCalculation } from '@legwork/contract/calculations/index.ts'
import { demoSheet, demoUnits } from '@legwork/trade'
import { expect, test } from 'vitest'
import { leakOf, leakQuestion } from './leak-reading.ts'
import { leakWorkings } from './leak-workings.tsx'

const unit = demoUnits.find(({ key }) => key === 'U01')
if (!unit) throw new Error('no U01')
const sheet = demoSheet(unit, '01900000-0000-7000-8000-000000000001')
const pump = {
  id: 'P1',
  name: 'P1',
  note: null,
  kind: 'pump',
  hoseVolume: 5e-6,
  offset: 0.04,
  resolution: 6894.757293168,
} as const

// The panel's own question, put to the calculation it names, gives the number that stands on the page.
test('the panel of the expected reading repeats it', () => {
  const asked = {
    sheet,
    spacers: 1,
    pump,
    start: 624_000,
    startTemperature: 293.15,
    endTemperature: 283.15,
    minutes: 10,
  }
  const put = leakQuestion(asked)
  if (!put) throw new Error('the demo’s sheet gives its chamber')
  const { calculation, input, path, times } = leakWorkings(put, pump).asked
  const answer = runCalculation(calculation, input)
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors))
  expect(Number(answer.output[path]) * (times?.by ?? 1)).toBeCloseTo(leakOf(asked)?.expectedReading ?? Number.NaN, 6)
})
