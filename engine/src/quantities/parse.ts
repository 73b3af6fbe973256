/** Reads a quantity as people write it: a number with a measure. */
import type { RefusalCode } from '../refusal/codes.ts'
import type { RefusedValue } from '../refusal/refusal.ts'
import { type KindName, kinds } from './kinds.ts'
import { type Dimension, type MeasureName, measures, toSI } from './measures.ts'

export type Parsed =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly error: RefusedValue }

const spellings = new Map<Dimension, Map<string, MeasureName>>()
for (const [name, measure] of Object.entries(measures)) {
  const ofDimension = spellings.get(measure.dimension) ?? new Map<string, MeasureName>()
  // Object.entries widens the keys of a constant table to string.
  for (const spelling of measure.spellings) ofDimension.set(spelling, name as MeasureName)
  spellings.set(measure.dimension, ofDimension)
}

const decimal = /^[+-]?\d+(?:[.,]\d+)?(?:[eE][+-]?\d{1,3})?/
const ambiguousComma = /^([+-]?\d{1,3}),(\d{3})(?![\d.,])/
const fraction = /^([+-]?)(?:(\d+) )?(\d+)\/(\d+)/
const clock = /^(\d{1,4}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?$/

function refused(code: RefusalCode, text: string, allowed: string, next: string): Parsed {
  return { ok: false, error: { code, came: `"${text.slice(0, 60)}"`, allowed, next } }
}

function allowedMeasures(dimension: Dimension): string {
  const labels = Object.values(measures).filter((measure) => measure.dimension === dimension)
  return labels.map((measure) => measure.label).join(', ')
}

function parseClock(text: string): Parsed | null {
  const match = clock.exec(text)
  if (!match) return null
  const [, first = '', second = '', third] = match
  if (third === undefined) {
    const readings = `"${first}:${second}:00" (hours) or "0:${first.padStart(2, '0')}:${second}" (minutes)`
    return refused('ambiguous-number', text, 'a time as hours:minutes:seconds', `Write ${readings}.`)
  }
  const minutes = Number(second)
  const seconds = Number(third.replace(',', '.'))
  if (minutes >= 60 || seconds >= 60) {
    return refused('not-a-number', text, 'a time with minutes and seconds below 60', 'Write it like "1:25:30".')
  }
  return { ok: true, value: Number(first) * 3600 + minutes * 60 + seconds }
}

/** The number at the beginning of a text and what follows it; null where there is none. */
function leadingNumber(text: string): { number: number; rest: string } | null {
  const parts = fraction.exec(text)
  if (parts) {
    const [all, sign = '', whole = '0', above = '', below = ''] = parts
    const number = (Number(whole) + Number(above) / Number(below)) * (sign === '-' ? -1 : 1)
    return { number, rest: text.slice(all.length) }
  }
  const found = decimal.exec(text)
  if (!found) return null
  return { number: Number(found[0].replace(',', '.')), rest: text.slice(found[0].length) }
}

/**
 * A quantity in a text.
 *
 * A decimal point or comma, a fraction (`1/2`, `1 1/2`), a time as `h:min:s`. A comma before exactly three digits is
 * ambiguous and refused with both readings. A bare number is refused where the kind has a measure, unless `shown` says
 * which measure stands beside the field.
 *
 * @param text   what was written
 * @param kind   what the field holds
 * @param shown  the measure a bare number takes: the one a form shows beside its field
 * @returns the value in SI, or why not: `ambiguous-number`, `needs-measure`, `unknown-measure`, `wrong-measure`, `not-a-number`
 * @example parseQuantity("5,5 bar", 'pressure') // {"ok":true,"value":550000}
 */
export function parseQuantity(text: string, kind: KindName, shown?: MeasureName): Parsed {
  const clean = text
    .replace(/[\u00a0\u202f\u2009\s]+/g, ' ')
    .replace(/\u2212/g, '-')
    .trim()
  const { dimension, example } = kinds[kind]
  const own = spellings.get(dimension) ?? new Map<string, MeasureName>()

  if (dimension === 'duration') {
    const time = parseClock(clean)
    if (time) return time
  }
  const comma = ambiguousComma.exec(clean)
  if (comma) {
    const [all, whole = '', after = ''] = comma
    const rest = clean.slice(all.length)
    const readings = `"${whole}${after}${rest}" or "${whole}.${after}${rest}"`
    return refused('ambiguous-number', clean, 'a number without a thousands comma', `Write ${readings}.`)
  }
  const read = leadingNumber(clean)
  if (!read || !Number.isFinite(read.number) || /^[.,:\d]/.test(read.rest)) {
    return refused('not-a-number', clean, `a number with a measure, like ${example}`, `Write it like ${example}.`)
  }
  const written = read.rest.trim()
  if (written === '') {
    if (shown && measures[shown].dimension === dimension) return { ok: true, value: toSI(read.number, shown) }
    if (dimension === 'number') return { ok: true, value: read.number }
    const usual = /"[\d/.]+ ?(.+)"/.exec(example)?.[1] ?? ''
    const next = `Write "${clean} ${usual}" if that is the measure.`
    return refused('needs-measure', clean, `a number with a measure: ${allowedMeasures(dimension)}`, next)
  }
  const name = own.get(written)
  if (name) {
    const value = toSI(read.number, name)
    if (Number.isFinite(value)) return { ok: true, value }
    return refused('not-a-number', clean, `a number with a measure, like ${example}`, `Write it like ${example}.`)
  }
  const elsewhere = [...spellings.values()].some((names) => names.has(written))
  return refused(
    elsewhere ? 'wrong-measure' : 'unknown-measure',
    clean,
    dimension === 'number' ? 'a number' : `a measure of ${dimension.replace('-', ' ')}: ${allowedMeasures(dimension)}`,
    `Write it like ${example}.`,
  )
}
