import { cardRows, demoSheet, demoUnits, usualBike } from '@legwork/trade'
import { expect, it } from 'vitest'
import { cardBikeJudges, heldBike } from './card-bike.ts'

const unit = demoUnits.find((one) => one.key === 'U01')
if (!unit) throw new Error('the demo has no U01')
/** A demo fork, its dimensions invented. */
const sheet = demoSheet(unit, '01900000-0000-7000-8000-000000000001')
const usual = { ...usualBike, sag: 0.2 }
const rowsOf = (bike: NonNullable<ReturnType<typeof heldBike>>) =>
  cardRows({ ...bike, sheet, spacers: 1, frontShare: 0.415, ambient: 101_325 })

it.each([
  { headAngle: 6 },
  { headAngle: 44.9 },
  { headAngle: 655 },
  { headAngle: null },
  { frontMass: 55 },
  { frontMass: -1 },
  { frontMass: null },
  { sag: 0.02 },
  { sag: 2 },
  { sag: null },
])('draws no card for %o, as it stands halfway through typing', (typed) => {
  expect(heldBike({ ...usual, ...typed })).toBeNull()
})

// What the card's arithmetic refuses (head angles under 45°, more than 50 kg) lies outside of what is held.
it('works out a card at every end of what it holds', () => {
  expect(() => rowsOf({ ...usual, headAngle: 44.9 })).toThrow()
  for (const headAngle of [45, 85])
    for (const frontMass of [0, 40])
      for (const sag of [0.05, 0.5]) {
        const bike = heldBike({ headAngle, frontMass, sag })
        expect(bike).toEqual({ headAngle, frontMass, sag })
        expect(bike && rowsOf(bike).length).toBeGreaterThan(10)
      }
})

it('answers a value out of range with its range', () => {
  expect(cardBikeJudges.headAngle(44)).toBe('From 45° to 85°.')
  expect(cardBikeJudges.headAngle(45)).toBeNull()
})
