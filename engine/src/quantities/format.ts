import { fromSI, type MeasureName, measures } from './measures.ts'

/** Digits after the point that a workshop reads in each measure; the rest are shown with three significant digits. */
const digits: Partial<Record<MeasureName, number>> = {
  psi: 0,
  bar: 1,
  mm: 0,
  ml: 0,
  kg: 1,
  lb: 0,
  N: 0,
  '°C': 0,
  '°F': 0,
  N·m: 1,
  in·lbf: 0,
  'N/mm': 1,
  'lb/in': 0,
  '%': 0,
  '°': 1,
}

export interface FormatOptions {
  /** Digits after the point, instead of the measure's own. */
  readonly digits?: number
  /** `.` or `,`. */
  readonly decimalMark?: '.' | ','
}

/**
 * An SI value written in a measure.
 *
 * @param value    SI
 * @param measure  a name of the table
 * @returns e.g. `80 psi`; a minus is the true minus sign, never −0
 * @throws Refusal `not-a-number` is not thrown here: a value that is not finite is written as an en dash
 * @example formatQuantity(551580.583, 'psi') // "80 psi"
 */
export function formatQuantity(value: number, measure: MeasureName, options: FormatOptions = {}): string {
  const { label } = measures[measure]
  const space = label === '°' ? '' : '\u00a0'
  if (!Number.isFinite(value)) return `–${space}${label}`
  const number = fromSI(value, measure)
  const places = options.digits ?? digits[measure]
  let text = places === undefined ? String(Number(number.toPrecision(3))) : number.toFixed(places)
  if (Number(text) === 0) text = text.replace('-', '')
  text = text.replace('-', '\u2212').replace('.', options.decimalMark ?? '.')
  return `${text}${space}${label}`
}
