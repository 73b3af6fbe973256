/** Sheets from outside: every wrong value is refused by its field, nothing is repaired. */
import { legs } from '../journal/entry.ts'
import { FieldCheck, type FieldProblem } from './field-check.ts'
import type { Body, DamperKind, FootFixing, LegRole, Sheet, SourceKind, UnitKind } from './sheet.ts'

export type SheetCheck = { ok: true; sheet: Sheet } | { ok: false; errors: readonly FieldProblem[] }

const kinds: readonly UnitKind[] = ['fork-air', 'fork-coil', 'shock-air', 'shock-coil']
const bodies: readonly Body[] = ['single-crown', 'dual-crown', 'in-line', 'piggyback']
const dampers: readonly DamperKind[] = [
  'open-bath',
  'sealed-cartridge',
  'bladder-cartridge',
  'in-line-ifp',
  'piggyback-ifp',
]
const roles: readonly LegRole[] = ['spring', 'damper', 'both']
const fixings: readonly FootFixing[] = ['hollow-bolt', 'nut-on-shaft', 'bolt-behind-knob', 'captive-bolt']
export const sourceKinds: readonly SourceKind[] = [
  'makers-sheet',
  'measured-here',
  'worked-out',
  'handbook',
  'common-practice',
  'rider-said',
]

/** What a field of the spring may be [SI]: wide enough for any fork or shock, narrow enough for a slip of a power of ten. */
export const springRanges: Readonly<Record<string, readonly [number, number, string]>> = {
  bore: [0.01, 0.08, 'm'],
  shaft: [0.004, 0.06, 'm'],
  positiveShaft: [0, 0.06, 'm'],
  positiveVolume: [5e-6, 2e-3, 'm³'],
  negativeVolume: [1e-6, 1e-3, 'm³'],
  equalisingStroke: [0, 0.05, 'm'],
  spacerVolume: [1e-6, 1e-4, 'm³'],
  chamberOil: [0, 5e-5, 'm³'],
  rate: [1_000, 300_000, 'N/m'],
  preload: [0, 0.05, 'm'],
  lowerRod: [0, 0.03, 'm'],
  damperGasPressure: [1e5, 4e6, 'Pa'],
  damperGasVolume: [1e-6, 2e-4, 'm³'],
  damperGasRod: [0.004, 0.03, 'm'],
  capTorque: [1, 60, 'N·m'],
}

const names = [
  'id',
  'name',
  'revision',
  'generic',
  'kind',
  'body',
  'damper',
  'stanchion',
  'stroke',
  'spring',
  'springKind',
  'spacers',
  'lowerVolume',
  'maxPressure',
  'freeLength',
  'bushings',
  'clicks',
  'legs',
  'limits',
]
const sourceNames = ['kind', 'document', 'revision', 'page', 'person', 'at', 'instrument']

function source(check: FieldCheck, value: unknown, field: string): void {
  const found = check.fields(value, field, sourceNames)
  if (!found) return
  check.oneOf(found.kind, `${field}.kind`, sourceKinds)
  for (const name of sourceNames.slice(1)) check.textOrNull(found[name], `${field}.${name}`)
  if (found.kind === 'makers-sheet' && found.document === null)
    check.refuse(`${field}.document`, 'source-document', null, 'the name of the maker’s document')
  if (found.kind === 'measured-here' && (found.person === null || found.at === null))
    check.refuse(`${field}.person`, 'source-person', null, 'who measured it, and when')
}

function sourced(
  check: FieldCheck,
  value: unknown,
  field: string,
  range: readonly [number, number, string],
): number | null {
  const found = check.fields(value, field, ['value', 'source'])
  if (!found) return null
  source(check, found.source, `${field}.source`)
  return check.number(found.value, `${field}.value`, ...range)
}

/** Empty is allowed: it stays empty and is asked for when it is needed. */
function sourcedOrNull(check: FieldCheck, value: unknown, field: string, range: readonly [number, number, string]) {
  return value === null ? null : sourced(check, value, field, range)
}

function leg(check: FieldCheck, value: unknown, field: string): void {
  const found = check.fields(value, field, ['role', 'fixing', 'bathOil', 'bathOilViscosity', 'washer', 'footTorque'])
  if (!found) return
  check.oneOf(found.role, `${field}.role`, roles)
  if (found.fixing !== null) check.oneOf(found.fixing, `${field}.fixing`, fixings)
  sourcedOrNull(check, found.bathOil, `${field}.bathOil`, [0, 5e-4, 'm³'])
  sourcedOrNull(check, found.bathOilViscosity, `${field}.bathOilViscosity`, [1e-6, 1e-3, 'm²/s'])
  sourcedOrNull(check, found.footTorque, `${field}.footTorque`, [0.5, 30, 'N·m'])
  const washer = found.washer === null ? null : check.fields(found.washer, `${field}.washer`, ['value', 'source'])
  if (!washer) return
  check.text(washer.value, `${field}.washer.value`)
  source(check, washer.source, `${field}.washer.source`)
}

function limits(check: FieldCheck, value: unknown): void {
  for (const [what, one] of Object.entries(check.fields(value, 'limits', null) ?? {})) {
    const field = `limits.${what}`
    const found = check.fields(one, field, ['watch', 'fail', 'source'])
    if (!found) continue
    const watch = check.number(found.watch, `${field}.watch`, 0, 1e9, '')
    const fail = check.number(found.fail, `${field}.fail`, 0, 1e9, '')
    if (watch !== null && fail !== null && watch > fail)
      check.refuse(`${field}.fail`, 'limit-order', fail, `no less than watch, ${watch}: larger is worse`)
    source(check, found.source, `${field}.source`)
  }
}

/** Dimensions that can't be together. */
function geometry(
  check: FieldCheck,
  spring: Readonly<Record<string, number | null>>,
  stroke: number | null,
  stanchion: number | null,
): void {
  const { bore, shaft, positiveShaft, positiveVolume } = spring
  if (bore && shaft && shaft >= bore)
    check.refuse('spring.shaft.value', 'shaft-over-bore', shaft, `smaller than spring.bore (${bore} m)`)
  if (bore && stanchion && bore >= stanchion)
    check.refuse('spring.bore.value', 'bore-over-stanchion', bore, `smaller than stanchion (${stanchion} m)`)
  if (!bore || !positiveVolume || !stroke) return
  const area = (Math.PI / 4) * (bore ** 2 - (positiveShaft ?? 0) ** 2)
  if (positiveVolume <= area * stroke)
    check.refuse(
      'spring.positiveVolume.value',
      'chamber-too-short',
      positiveVolume,
      `more than bore area × stroke, ${(area * stroke).toPrecision(4)} m³`,
    )
}

function spring(check: FieldCheck, value: unknown): Readonly<Record<string, number | null>> {
  const found = check.fields(value, 'spring', Object.keys(springRanges)) ?? {}
  return Object.fromEntries(
    Object.entries(springRanges).map(([name, range]) => [
      name,
      found[name] === undefined ? null : sourced(check, found[name], `spring.${name}`, range),
    ]),
  )
}

/**
 * Whether unknown data is a sheet. All wrong fields are named at once; a field that is not known is refused.
 *
 * @example checkSheet({}).ok // false
 */
export function checkSheet(value: unknown): SheetCheck {
  const check = new FieldCheck()
  const found = check.fields(value, '', names)
  if (!found) return { ok: false, errors: check.problems }
  for (const name of ['id', 'name', 'revision']) check.text(found[name], name)
  check.flag(found.generic, 'generic')
  check.oneOf(found.kind, 'kind', kinds)
  check.oneOf(found.body, 'body', bodies)
  check.oneOf(found.damper, 'damper', dampers)
  check.oneOf(found.springKind, 'springKind', ['air', 'coil'])
  const fork = found.kind === 'fork-air' || found.kind === 'fork-coil'
  if (typeof found.kind === 'string' && kinds.some((kind) => kind === found.kind)) {
    if (!found.kind.endsWith(String(found.springKind)))
      check.refuse('springKind', 'spring-kind', found.springKind, `what kind says: ${found.kind}`)
    if (fork !== (found.body === 'single-crown' || found.body === 'dual-crown'))
      check.refuse('body', 'body-kind', found.body, fork ? 'single-crown, dual-crown' : 'in-line, piggyback')
  }
  const stanchion = sourcedOrNull(check, found.stanchion, 'stanchion', [0.02, 0.06, 'm'])
  const stroke = sourced(check, found.stroke, 'stroke', [0.02, 0.3, 'm'])
  geometry(check, spring(check, found.spring), stroke, stanchion)
  const spacers = sourcedOrNull(check, found.spacers, 'spacers', [0, 20, ''])
  if (spacers !== null && !Number.isInteger(spacers))
    check.refuse('spacers.value', 'whole-number', spacers, 'a whole number from 0 to 20')
  sourcedOrNull(check, found.lowerVolume, 'lowerVolume', [1e-5, 2e-3, 'm³'])
  sourcedOrNull(check, found.maxPressure, 'maxPressure', [2e5, 4e6, 'Pa'])
  sourcedOrNull(check, found.freeLength, 'freeLength', [0.02, 0.4, 'm'])
  const bushings = found.bushings === null ? null : check.fields(found.bushings, 'bushings', ['a', 'b'])
  if (bushings)
    for (const one of ['a', 'b'] as const) sourced(check, bushings[one], `bushings.${one}`, [0.01, 0.6, 'm'])
  const clicks = check.fields(found.clicks, 'clicks', ['rebound', 'compression'])
  if (clicks)
    for (const one of ['rebound', 'compression'] as const)
      sourcedOrNull(check, clicks[one], `clicks.${one}`, [1, 60, 'clicks'])
  if (found.legs !== null) {
    const both = check.fields(found.legs, 'legs', legs)
    if (both) for (const side of legs) leg(check, both[side], `legs.${side}`)
  } else if (fork) check.refuse('legs', 'legs-missing', null, 'both legs of a fork, left and right')
  limits(check, found.limits)
  // Every field of a sheet has been checked above.
  return check.problems.length === 0 ? { ok: true, sheet: value as Sheet } : { ok: false, errors: check.problems }
}

/** The line on which a field of a JSON text begins, as far as its names can be followed; 1 where they can't. */
function lineOf(text: string, field: string): number {
  let at = 0
  for (const name of field.split('.')) {
    const found = text.indexOf(`"${name}"`, at)
    if (found === -1) break
    at = found
  }
  return text.slice(0, at).split('\n').length
}

/**
 * A sheet out of a JSON text; refusals name line and field.
 *
 * @example readSheet('{') // { ok: false, errors: [{ code: 'sheet.not-json', … }] }
 */
export function readSheet(text: string): SheetCheck & { lines?: readonly number[] } {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch (problem) {
    const why = problem instanceof Error ? problem.message : 'not JSON'
    const error = { field: '', code: 'sheet.not-json', came: why, allowed: 'JSON (RFC 8259)', next: 'Export it anew.' }
    return { ok: false, errors: [error], lines: [1] }
  }
  const check = checkSheet(value)
  return check.ok ? check : { ...check, lines: check.errors.map((error) => lineOf(text, error.field)) }
}
