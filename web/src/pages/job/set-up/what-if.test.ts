import { ambientShift, Refusal, sag } from '@legwork/engine'
import { demoSheet, demoUnits } from '@legwork/trade'
import { expect, it } from 'vitest'
import { airSpringOf } from '../start-pressure.ts'
import { answered, bench, outcomeOf, sagOf, standing } from './what-if.ts'

const psi = 6894.757293168
const unit = demoUnits.find((one) => one.key === 'U01')
if (!unit) throw new Error('the demo has no U01')
/** A demo fork, its dimensions invented. */
const sheet = demoSheet(unit, '01900000-0000-7000-8000-000000000001')
const asItIs = { spacers: 1, oilMore: 0, there: bench }
const load = 351

it('with nothing changed it is the setting itself', () => {
  const { spring, pressure } = standing(sheet, 88 * psi, asItIs)
  expect(spring).toEqual(airSpringOf(sheet, 1))
  expect(pressure).toBe(88 * psi)
})

// The engine's own `ambient-shift`, held by a published table and an independent program, asks the same question.
it('carried to a place it rests where ambient-shift says', () => {
  const there = { altitude: 1650, temperature: 285.15 }
  const here = standing(sheet, 88 * psi, { ...asItIs, there })
  const shift = ambientShift(airSpringOf(sheet, 1), { pressure: 88 * psi, load, from: bench, to: there })
  expect(here.pressure).toBeCloseTo(shift.pressure ?? 0, 6)
  expect(outcomeOf(here, load).sag.stroke).toBeCloseTo(shift.strokeThere ?? 0, 9)
})

it('a spacer more leaves the sag nearly and raises the end', () => {
  const [one, two] = [1, 2].map((spacers) => outcomeOf(standing(sheet, 88 * psi, { ...asItIs, spacers }), load))
  if (!one || !two) throw new Error('two were asked')
  expect(two.endForce / one.endForce).toBeGreaterThan(1.04)
  expect(Math.abs(two.sag.stroke - one.sag.stroke)).toBeLessThan(0.003)
})

// By hand: 0.999·(205 − 80) ml over the ring between a 35 mm stanchion and a 10 mm rod.
it('too much bath oil takes stroke', () => {
  const more = outcomeOf(standing(sheet, 88 * psi, { ...asItIs, oilMore: 70e-6 }), load)
  const area = (Math.PI / 4) * (0.035 ** 2 - 0.01 ** 2)
  expect(more.fullStroke).toBeCloseTo((0.999 * (205e-6 - 80e-6)) / area, 4)
  expect(more.fullStroke).toBeLessThan(0.15)
})

it('the sag is the engine’s', () => {
  const { spring, pressure, ambient } = standing(sheet, 88 * psi, asItIs)
  expect(outcomeOf({ spring, pressure, ambient }, load).sag).toEqual(sag(spring, { pressure, load, ambient }))
})

it('answers what is asked as each part does alone', () => {
  const asked = { ...asItIs, spacers: 2 }
  const then = standing(sheet, 88 * psi, asked)
  expect(answered(sheet, 88 * psi, asked, { load, friction: 40 })).toEqual({
    standing: then,
    outcome: outcomeOf(then, load),
    sag: sagOf(then, load, 40),
  })
})

// The invented chamber: eight spacers leave it 145.5 mm long, under a fork of 150 mm stroke.
it('says why a fork has no room for so many spacers', () => {
  const answers = [7, 8, 30].map((spacers) => answered(sheet, 88 * psi, { ...asItIs, spacers }, { load, friction: 40 }))
  expect(answers.map((answer) => answer instanceof Refusal)).toEqual([false, true, true])
  expect(String(answers[1])).toMatch(/150 mm; it must be shorter than the positive chamber is long \(145\.5 mm\)/)
})
