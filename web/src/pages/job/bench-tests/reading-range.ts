/** What gauge and thermometer of a bench can show: outside it a number was mistyped, and nothing can be worked out of it. */
import { type Reading, say } from '@legwork/trade'
import './bench-test-words.ts'

type Text = (value: number, measure: Reading['measure']) => string

/** The engine's own limits: a gauge up to 200 bar, air that somebody works in [K]. */
const mostPressure = 2e7
const air = [220, 340] as const

export function temperatureTrouble(kelvin: number, text: Text): string | null {
  const [low, high] = air
  return kelvin < low || kelvin > high
    ? say('bench-test.temperature-range', { low: text(low, 'K'), high: text(high, 'K') })
    : null
}

interface PressureAllowed {
  /** A chamber that has lost everything is a reading too. */
  empty?: boolean
  /** By the sheet [Pa]. */
  maximum?: number | null | undefined
}

export function pressureTrouble(pascal: number, text: Text, { empty = false, maximum = null }: PressureAllowed = {}) {
  if (pascal < 0) return say('bench-test.pressure-below')
  // The least that a gauge is taken for is 1 Pa: no gauge has such a step.
  if (!empty && pascal < 1) return say('bench-test.pressure-none')
  if (maximum !== null && pascal > maximum) return say('bench-test.pressure-over-sheet', { most: text(maximum, 'Pa') })
  return pascal > mostPressure ? say('bench-test.pressure-over', { most: text(mostPressure, 'Pa') }) : null
}
