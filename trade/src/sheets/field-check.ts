/** Checking data from outside, field by field: every refusal names its field, what came, what is allowed. */
import { figure, type KindName } from '@legwork/engine'

export interface FieldProblem {
  field: string
  code: string
  came: string
  allowed: string
  next: string
}

export type Fields = Readonly<Record<string, unknown>>

const longest = 60
/** What came, short enough to stand in a sentence. */
export function cameAs(value: unknown): string {
  if (value === undefined) return 'nothing'
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? typeof value)
  return text.length > longest ? `${text.slice(0, longest)}…` : text
}

/** Collects refusals while an unknown value is read. */
export class FieldCheck {
  readonly problems: FieldProblem[] = []
  readonly #of: string

  /** @param of  what is checked: the first word of every code */
  constructor(of = 'sheet') {
    this.#of = of
  }

  refuse(field: string, code: string, value: unknown, allowed: string, next = 'Correct it.'): void {
    this.problems.push({ field, code: `${this.#of}.${code}`, came: cameAs(value), allowed, next })
  }

  /** An object with exactly these names; what is unknown is refused by name. */
  fields(value: unknown, field: string, names: readonly string[] | null): Fields | null {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      this.refuse(field, 'not-an-object', value, 'an object with named values')
      return null
    }
    const found = value as Fields // an object that is neither null nor a list has named fields
    if (!names) return found
    for (const name of Object.keys(found))
      if (!names.includes(name))
        this.refuse(field ? `${field}.${name}` : name, 'unknown-field', found[name], names.join(', '), 'Take it out.')
    return found
  }

  text(value: unknown, field: string, longest = 200, orNull = false): void {
    if (typeof value !== 'string' || value.trim() === '' || value.length > longest)
      this.refuse(field, 'text', value, `a text of 1 to ${longest} characters${orNull ? ', or null' : ''}`)
  }

  textOrNull(value: unknown, field: string): void {
    if (value !== null) this.text(value, field, 200, true)
  }

  instant(value: string, field: string): void {
    const time = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/.test(value) ? Date.parse(value) : Number.NaN
    if (Number.isNaN(time) || new Date(time).toISOString() !== value)
      this.refuse(field, 'instant', value, 'a moment as 2026-05-02T09:00:00.000Z (ISO 8601, UTC)')
  }

  oneOf(value: unknown, field: string, allowed: readonly string[]): void {
    if (typeof value !== 'string' || !allowed.includes(value)) this.refuse(field, 'choice', value, allowed.join(', '))
  }

  flag(value: unknown, field: string): void {
    if (typeof value !== 'boolean') this.refuse(field, 'flag', value, 'true or false')
  }

  /** A number from low to high [SI]; returns it where it is one. */
  number(value: unknown, field: string, low: number, high: number, kind: KindName): number | null {
    if (typeof value === 'number' && Number.isFinite(value) && value >= low && value <= high) return value
    this.refuse(field, 'number', value, `${figure(low, kind)} to ${figure(high, kind)}, as a number in SI`)
    return null
  }
}
