/** What a sheet gives is what the calculations take. */
import { runCalculation } from '@legwork/contract/calculations/index.ts'
import { springOf } from '@legwork/trade'
import { demoSheet } from '@legwork/trade/demo/sheets.ts'
import { demoUnits } from '@legwork/trade/demo/units.ts'
import { expect, it } from 'vitest'

it.each(demoUnits.map((unit) => [unit.key, unit] as const))('the spring of %s', (_key, unit) => {
  const spring = springOf(demoSheet(unit, unit.key))
  const answer = runCalculation('spring-curve', { spring, ...(spring.kind === 'air' ? { pressure: '60 psi' } : {}) })
  expect(answer.ok ? [] : answer.errors).toEqual([])
})
