/**
 * Usual ranges: plausibility from common practice, no source. They warn of a slip of the pen; they never fill a field.
 */
import { toSI } from '@legwork/engine'
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

const mm = { measure: 'mm', per: 1e3 }
const psi = { measure: 'psi', per: 1 / toSI(1, 'psi') }

/** Fields whose usual range hangs on nothing but the kind of unit. */
const plain: Readonly<Record<string, UsualRange>> = {
  bathOilViscosity: { low: 30e-6, high: 75e-6, measure: 'mm²/s', per: 1e6 },
  chamberOil: { low: 0, high: 5e-6, ...ml },
  freeLength: { low: 0.08, high: 0.24, ...mm },
  maxPressure: { low: toSI(100, 'psi'), high: toSI(350, 'psi'), ...psi },
  stanchion: { low: 0.028, high: 0.04, ...mm },
  axle: { low: 9, high: 15, ...newtonMetre },
  caliper: { low: 6, high: 10, ...newtonMetre },
  lowerClamp: { low: 5, high: 8, ...newtonMetre },
  upperClamp: { low: 5, high: 8, ...newtonMetre },
}

/**
 * What is usual for a field of a sheet [SI], by common practice; some hang on kind, damper or fixing.
 *
 * @returns null where practice has no range: then nothing is said
 * @example usualRange('footTorque', null)?.high // 10
 */
export function usualRange(field: string, sheet: Sheet | null, leg: LegSheet | null = null): UsualRange | null {
  const fork = sheet?.kind.startsWith('fork') ?? true
  switch (field) {
    case 'bathOil':
      return sheet?.damper === 'open-bath' ? { low: 10e-6, high: 250e-6, ...ml } : { low: 5e-6, high: 20e-6, ...ml }
    case 'footTorque':
      return leg?.fixing === 'nut-on-shaft' ? { low: 5, high: 8, ...newtonMetre } : { low: 5, high: 10, ...newtonMetre }
    case 'capTorque':
      return sheet?.kind === 'fork-coil' ? { low: 15, high: 25, ...newtonMetre } : { low: 20, high: 30, ...newtonMetre }
    case 'stroke':
      return fork ? { low: 0.08, high: 0.203, ...mm } : { low: 0.038, high: 0.075, ...mm }
    default:
      return (Object.hasOwn(plain, field) ? plain[field] : null) ?? null
  }
}

const shown = (value: number): string => String(Number(value.toPrecision(3))).replace('-', '−')

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
