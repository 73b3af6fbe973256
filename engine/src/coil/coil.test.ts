import reference from '@legwork/engine/reference/demo-units.json' with { type: 'json' }
import { expect, it } from 'vitest'
import type { Spring } from '../spring/spring.ts'
import { coilRate } from './coil-rate.ts'
import { wireRate } from './wire-rate.ts'

// Barton & Fieldhouse, Automotive Chassis Engineering (Springer 2018), p. 213: G 79.3 GPa, wire 12.7 mm.
it.each([
  [0.12, 19_300, 7.73],
  [0.1, 42_300, 6.1],
])('mean diameter %f m, %i N/m: %f turns as printed', (coil, rate, turns) => {
  const one = wireRate({ wire: 0.0127, coil, turns: 1 }).rate
  expect(Math.abs(one / rate - turns)).toBeLessThanOrEqual(0.005)
})
// A university's spring sheet by Shigley's method: Do 24.75, D 22.25, d 2.5 mm, 16 turns: 2197 N/m.
it('2197 N/m', () => {
  expect(Math.abs(wireRate({ wire: 0.0025, coil: 0.02225, turns: 16 }).rate - 2197)).toBeLessThanOrEqual(0.5)
})
// Shigley example 10-1 (from memory): wire 0.037 in, D 0.400 in, 10.5 turns, G 11.85 Mpsi: 4.13 lbf/in.
it('4.13 lbf/in', () => {
  const [inch, poundForce] = [0.0254, 4.4482216152605]
  const shearModulus = (11.85e6 * poundForce) / inch ** 2
  const { rate } = wireRate({ wire: 0.037 * inch, coil: 0.4 * inch, turns: 10.5, shearModulus })
  expect(Math.abs((rate * inch) / poundForce - 4.13)).toBeLessThanOrEqual(0.005)
})

// The demonstration coils (invented); their rates were worked out outside this project.
const coils = reference.units.filter(({ spring }) => spring.kind === 'coil')
it.each(coils)('$unit needs its rate within 1 %', ({ load, sag, spring: given }) => {
  // JSON widens the kinds to string; the checks of the engine look at every field.
  const spring = given as Spring
  if (spring.kind !== 'coil') throw new Error('not a coil')
  const { lower, damperGas, preload = 0, rate } = spring
  const question = { load, sag, preload, ...(lower ? { lower } : {}), ...(damperGas ? { damperGas } : {}) }
  expect(Math.abs(coilRate(question).rate / rate - 1)).toBeLessThanOrEqual(0.01)
})
