/** What a plan uses up, added by hand from the two services' descriptions (common practice, no source) and the sheet. */
import { describe, expect, it } from 'vitest'
import { sheetOfDemo } from '../journal/written-job.ts'
import { procedureSteps } from '../procedures/procedures.ts'
import { supplyWords } from '../words/supplies.ts'
import { addWords, sayMessage } from '../words/words.ts'
import { planSteps } from './plan-steps.ts'
import { planSupplies, supplySays } from './plan-supplies.ts'

const sheet = sheetOfDemo('U01')
const of = (services: readonly string[], from = sheet) => planSupplies(planSteps(services, from), from)
const one = (services: readonly string[], what: string, from = sheet) =>
  of(services, from).find((supply) => supply.what === what)

describe('what a plan uses up', () => {
  it('of the lower legs: rings and wipers once, a washer and its own oil on each leg', () => {
    const bath = ['lower-legs']
    expect(one(bath, 'foam-ring')?.pieces).toBe(2)
    expect(one(bath, 'wiper')?.pieces).toBe(2)
    expect(one(bath, 'foot-washer')).toMatchObject({
      pieces: 2,
      perLeg: { left: { value: 'crush washer 8 mm' }, right: { value: 'crush washer 10 mm' } },
    })
    expect(one(bath, 'seal-grease')?.usual).toEqual({ low: 1, high: 2, measure: 'g' })
    // 10 ml and 10 ml
    expect(one(bath, 'bath-oil')?.volume).toBeCloseTo(20e-6, 12)
    expect(of(bath).map(({ what }) => what)).toEqual([
      'cloth',
      'foam-ring',
      'soaking-oil',
      'lint-free-cloth',
      'alcohol',
      'wiper',
      'seal-grease',
      'bath-oil',
      'foot-washer',
    ])
  })

  it('of both services together nothing twice: the legs come off once', () => {
    const both = ['lower-legs', 'air-spring']
    expect(one(both, 'foot-washer')?.pieces).toBe(2)
    expect(one(both, 'bath-oil')?.volume).toBeCloseTo(20e-6, 12)
    expect(one(both, 'air-seal-kit')?.pieces).toBe(1)
    expect(one(both, 'grease')?.usual).toEqual({ low: 3, high: 6, measure: 'g' })
    expect(new Set(of(both).map(({ what }) => what)).size).toBe(of(both).length)
  })

  it('adds unequal legs, and says nothing where the sheet is silent about one', () => {
    const { legs } = sheet
    if (!legs?.left.bathOil) throw new Error('the demo sheet says what goes in')
    const more = { ...legs.left, bathOil: { ...legs.left.bathOil, value: 15e-6 } }
    expect(one(['lower-legs'], 'bath-oil', { ...sheet, legs: { ...legs, left: more } })?.volume).toBeCloseTo(25e-6, 12)
    const silent = { ...sheet, legs: { ...legs, right: { ...legs.right, bathOil: null, washer: null } } }
    expect(one(['lower-legs'], 'bath-oil', silent)).toMatchObject({ volume: null, perLeg: { right: null } })
    expect(one(['lower-legs'], 'foot-washer', silent)).toMatchObject({ pieces: 2, perLeg: { right: null } })
  })

  it('no step uses nothing', () => expect(planSupplies([], sheet)).toEqual([]))
})

it('every supply of every step has its words', () => {
  addWords(supplyWords)
  const said = Object.values(procedureSteps).flatMap((step) =>
    step.consumables.map((one) => sayMessage(supplySays(one))),
  )
  expect(said).toContain('2 × wiper')
  expect(said).toContain('seal grease, 1 to 2 g')
  expect(said).toContain('bath oil, as the sheet says')
  expect(said.filter((text) => text.includes('supply.'))).toEqual([])
})
