/** Checks that every calculation shares. */
import { describe, expect, it } from 'vitest'
import { pairWithin, temperatureWithin, withinOf } from './found.ts'

describe('a temperature outside 200–420 K', () => {
  const sentence = (kelvin: number) => temperatureWithin(null, '', 'temperature', kelvin)?.[0]
  it.each([
    [20, 'did you mean "20 °C"?'],
    [-10, 'did you mean "-10 °C"?'],
    [180, 'did you mean "180 °F"?'],
  ])('%f: %s', (kelvin, says) => {
    expect(sentence(kelvin)).toMatchObject({ code: 'unlikely-temperature', next: expect.stringContaining(says) })
  })
  // Not written in degrees by any guess: 150 °C was asked for in so many words.
  it.each([423.15, 1000, -200, Number.NaN])('%f is far from any of them', (kelvin) => {
    expect(sentence(kelvin)?.next).toBe('Give a temperature like "20 °C".')
  })
})

describe('an end that another field sets', () => {
  it('is not held against a field where the other was refused', () => {
    expect(withinOf(null, '', 'rod', 0.01, 'length', 0, Number.NaN, 'Measure it.')).toBeNull()
    expect(withinOf(null, '', 'rod', 0.01, 'length', 0, 0.008, 'Measure it.')).toMatchObject([{ field: 'rod' }])
  })
  it('names the upper end of a range that falls', () => {
    const names = ['mu[0]', 'mu[1]'] as const
    const found = pairWithin(null, '', names, [0.2, 0.1], 'number', 0, 1, 'Give both.')
    expect(found).toMatchObject([{ field: 'mu[1]', code: 'does-not-fit', allowed: 'at least mu[0] (0.2)' }])
    expect(pairWithin(null, '', names, [Number.NaN, 0.1], 'number', 0, 1, 'Give both.')).toHaveLength(1)
  })
})
