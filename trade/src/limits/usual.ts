/**
 * Usual ranges: plausibility from common practice, no source. They warn of a slip of the pen; they never fill a field.
 */
import type { LegSheet, Sheet } from '../sheets/sheet.ts'
import { type Message, message } from '../words/words.ts'

export interface UsualRange {
  low: number
  high: number
  /** What it is read in; value × per = the number that is shown. */
  measure: string
  per: number
}

const ml = { measure: 'ml', per: 1e6 }
const newtonMetre = { measure: 'N·m', per: 1 }

export type UsualField = 'bathOil' | 'bathOilViscosity' | 'footTorque' | 'capTorque' | 'freeLength' | 'maxPressure'

/** What is usual for a field of a sheet [SI]; some hang on the damper or the fixing. */
export function usualRange(field: UsualField, sheet: Sheet | null, leg: LegSheet | null = null): UsualRange {
  switch (field) {
    case 'bathOil':
      return sheet?.damper === 'open-bath' ? { low: 10e-6, high: 250e-6, ...ml } : { low: 5e-6, high: 20e-6, ...ml }
    case 'bathOilViscosity':
      return { low: 30e-6, high: 75e-6, measure: 'mm²/s', per: 1e6 }
    case 'footTorque':
      return leg?.fixing === 'nut-on-shaft' ? { low: 5, high: 8, ...newtonMetre } : { low: 5, high: 10, ...newtonMetre }
    case 'capTorque':
      return { low: 20, high: 30, ...newtonMetre }
    case 'freeLength':
      return { low: 0.08, high: 0.24, measure: 'mm', per: 1e3 }
    case 'maxPressure':
      return { low: 100 * 6894.757293168, high: 350 * 6894.757293168, measure: 'psi', per: 1 / 6894.757293168 }
  }
}

const shown = (value: number): string => String(Number(value.toPrecision(3)))

/**
 * The warning for a value outside what is usual, or null inside it.
 *
 * @param value  [SI]
 * @example usualWarning(55e-6, { low: 5e-6, high: 20e-6, measure: 'ml', per: 1e6 }) // You typed 55 ml. Usual is 5 to 20. …
 */
export function usualWarning(value: number, range: UsualRange): Message | null {
  const { low, high, per, measure } = range
  if (value >= low * (1 - 1e-9) && value <= high * (1 + 1e-9)) return null
  return message('usual.warning', { came: shown(value * per), measure, low: shown(low * per), high: shown(high * per) })
}

/** The range as it stands beside an empty field. */
export function usualBeside(range: UsualRange): Message {
  const { low, high, per, measure } = range
  return message('usual.beside', { low: shown(low * per), high: shown(high * per), measure })
}
