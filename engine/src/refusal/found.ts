/**
 * Checks that gather what is wrong, so that one answer names every field.
 *
 * A check hands back the list it was given while all is well, and allocates only when it refuses: sound input costs a
 * comparison.
 */
import { figure, type KindName } from '../quantities/kinds.ts'
import type { RefusalCode } from './codes.ts'
import { Refusal, type RefusedField } from './refusal.ts'

/** Null while nothing was found wrong. */
export type Found = readonly RefusedField[] | null

/** Adds one refused field. */
export function refuse(
  found: Found,
  field: string,
  code: RefusalCode,
  came: string,
  allowed: string,
  next: string,
): Found {
  const error: RefusedField = { field, code, came, allowed, next }
  return found ? [...found, error] : [error]
}

function shown(value: unknown, kind: KindName): string {
  if (typeof value === 'number') return figure(value, kind)
  return value === undefined ? 'missing' : typeof value
}

/**
 * Finite and low ≤ value ≤ high.
 *
 * @param at     path before the name, ending in a dot, or empty
 * @param next   what to do; a sentence
 */
export function within(
  found: Found,
  at: string,
  name: string,
  value: number | undefined,
  kind: KindName,
  low: number,
  high: number,
  next: string,
): Found {
  if (value !== undefined && value >= low && value <= high) return found
  const field = at + name
  const allowed = `from ${figure(low, kind)} to ${figure(high, kind)}`
  if (value === undefined) return refuse(found, field, 'missing', 'missing', allowed, next)
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return refuse(found, field, 'not-a-number', shown(value, kind), `a finite number, ${allowed}`, next)
  }
  return refuse(found, field, 'out-of-range', figure(value, kind), allowed, next)
}

/** As `within`, where the field may be left out. */
export function withinIfGiven(
  found: Found,
  at: string,
  name: string,
  value: number | undefined,
  kind: KindName,
  low: number,
  high: number,
  next: string,
): Found {
  return value === undefined ? found : within(found, at, name, value, kind, low, high, next)
}

/** As `within`, with an end that another field sets: not looked at where that one was refused, for its own refusal says it. */
export function withinOf(
  found: Found,
  at: string,
  name: string,
  value: number | undefined,
  kind: KindName,
  low: number,
  high: number,
  next: string,
): Found {
  return low <= high ? within(found, at, name, value, kind, low, high, next) : found
}

/** Lower and upper end of a range: each `within`, the upper not below the lower. `names` are their fields. */
export function pairWithin(
  found: Found,
  at: string,
  names: readonly [string, string],
  ends: readonly [number, number],
  kind: KindName,
  low: number,
  high: number,
  next: string,
): Found {
  const first = within(found, at, names[0], ends[0], kind, low, high, next)
  const both = within(first, at, names[1], ends[1], kind, low, high, next)
  if (both !== found || ends[0] <= ends[1]) return both
  const allowed = `at least ${at}${names[0]} (${figure(ends[0], kind)})`
  return refuse(found, at + names[1], 'does-not-fit', figure(ends[1], kind), allowed, next)
}

/** As `within`, and whole. */
export function whole(
  found: Found,
  at: string,
  name: string,
  value: number,
  low: number,
  high: number,
  next: string,
): Found {
  const checked = within(found, at, name, value, 'number', low, high, next)
  if (checked !== found || Number.isInteger(value)) return checked
  return refuse(found, at + name, 'not-whole', figure(value, 'number'), 'a whole number', next)
}

/** Air around us, absolute: 20–120 kPa. A value under 1 kPa is no absolute pressure. */
export function ambientWithin(found: Found, at: string, name: string, value: number): Found {
  if (value >= 0 && value < 1000) {
    const next = `It is an absolute pressure: did you mean "${Number(value.toPrecision(4))} hPa" or "1013 hPa"?`
    return refuse(found, at + name, 'unlikely-absolute-pressure', `${value} Pa`, 'from 200 hPa to 1200 hPa', next)
  }
  return within(
    found,
    at,
    name,
    value,
    'absolutePressure',
    20_000,
    120_000,
    'Give the air pressure around, absolute, like "1013 hPa".',
  )
}

/** A temperature point, 200–420 K. A number that is one as °C, or as °F, asks whether its measure was left out. */
export function temperatureWithin(found: Found, at: string, name: string, value: number): Found {
  if (value >= 200 && value <= 420) return found
  const measure = value >= -73 && value <= 147 ? '°C' : value > 147 && value < 200 ? '°F' : null
  if (measure === null)
    return within(found, at, name, value, 'temperature', 200, 420, 'Give a temperature like "20 °C".')
  const number = Number(value.toPrecision(4))
  const next = `A plain number is kelvin: did you mean "${number} ${measure}"?`
  return refuse(found, at + name, 'unlikely-temperature', `${number} K`, 'from -73.15 °C to 146.9 °C', next)
}

/** Throws where anything was found. */
export function stopAt(found: Found): void {
  if (found) throw new Refusal(found)
}

/** Throws one refused field. */
export function refuseOne(field: string, code: RefusalCode, came: string, allowed: string, next: string): never {
  throw new Refusal([{ field, code, came, allowed, next }])
}
