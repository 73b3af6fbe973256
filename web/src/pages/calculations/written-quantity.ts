/** A quantity as it stands in a form: a text with its measure, exactly as it was written. */
import { fromSI, type KindName, kinds, type MeasureName, measures, parseQuantity } from '@legwork/engine'
import type { Measures } from '@legwork/trade'
import { measureFor } from '../../figures/shown.ts'

export interface InField {
  text: string
  /** Stands beside the field; a bare number takes it. Null where there is none, or where the text can't be read. */
  measure: MeasureName | null
}

const leading = /^[\s+\-−]*(?:\d+ )?[\d.,/]+(?:[eE][+-]?\d+)?/
/** Of these a person chooses the measure; any other quantity stays in the measure it was written in. */
const chosen: readonly KindName[] = ['pressure', 'torque', 'temperature', 'length']

/** Number and measure of a text; null where they can't be told apart. */
function parts(text: string, kind: KindName): { number: string; measure: MeasureName | null } | null {
  const number = leading.exec(text)?.[0]
  if (number === undefined) return null
  const after = text.slice(number.length).trim()
  if (after === '') return { number, measure: null }
  const { dimension } = kinds[kind]
  // Object.keys widens the names of a constant table to string.
  const names = Object.keys(measures) as MeasureName[]
  const measure = names.find((name) => measures[name].dimension === dimension && spells(name, after))
  return measure ? { number: number.trim(), measure } : null
}

function spells(name: MeasureName, after: string): boolean {
  const { spellings }: { spellings: readonly string[] } = measures[name]
  return spellings.includes(after)
}

/** Five digits, no more than a hand would write. */
function rounded(value: number): string {
  return String(Number(value.toPrecision(5)))
}

/**
 * What a field shows of what stands in the draft.
 *
 * @param value  a text with a measure, or a number in SI
 * @example shownInField('5,5 bar', 'pressure', { pressure: 'psi', … }) // { text: '79.771', measure: 'psi' }
 */
export function shownInField(value: unknown, kind: KindName, person: Measures): InField {
  const own = measureFor(kind, person)
  if (typeof value === 'number') return { text: rounded(own ? fromSI(value, own) : value), measure: own }
  if (typeof value !== 'string' || value.trim() === '') return { text: '', measure: own }
  const written = parts(value, kind)
  if (!written) return { text: value, measure: null }
  if (written.measure === null || written.measure === own || !chosen.includes(kind) || own === null)
    return { text: written.number, measure: written.measure }
  const parsed = parseQuantity(value, kind)
  return parsed.ok ? { text: rounded(fromSI(parsed.value, own)), measure: own } : { text: value, measure: null }
}

/**
 * What goes into the draft of what was typed: a bare number takes the measure beside the field.
 *
 * @param beside  that measure
 * @returns undefined for nothing
 * @example typedQuantity('5,5', 'pressure', 'bar') // '5,5 bar'
 */
export function typedQuantity(typed: string, kind: KindName, beside: MeasureName | null): string | number | undefined {
  const text = typed.trim()
  if (text === '') return undefined
  if (parts(text, kind)?.measure !== null) return text
  if (beside !== null) return `${text} ${measures[beside].label}`
  return typedNumber(text)
}

/** A count or a bare number; what can't be read stays a text, and is refused by name. */
export function typedNumber(typed: string): string | number | undefined {
  const text = typed.trim()
  if (text === '') return undefined
  const parsed = parseQuantity(text, 'number')
  return parsed.ok ? parsed.value : text
}
