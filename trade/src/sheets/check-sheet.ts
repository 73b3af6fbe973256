/** Sheets from outside: every wrong value is refused by its field, nothing is repaired. */
import { legs } from '../journal/entry.ts'
import { checkLimits } from './check-limits.ts'
import { checkSource } from './check-source.ts'
import { FieldCheck, type FieldProblem } from './field-check.ts'
import type { Sheet } from './sheet.ts'
import { bodies, damperKinds, footFixings, legRoles, unitKinds } from './sheet-choices.ts'
import { quantityAt, springFieldNames } from './sheet-quantities.ts'

export type SheetCheck = { ok: true; sheet: Sheet } | { ok: false; errors: readonly FieldProblem[] }

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
  'torques',
  'limits',
]
const torqueNames = ['axle', 'caliper', 'lowerClamp', 'upperClamp'] as const
function sourced(check: FieldCheck, value: unknown, field: string): number | null {
  const found = check.fields(value, field, ['value', 'source'])
  const quantity = quantityAt(field)
  if (!found || !quantity) return null
  checkSource(check, found.source, `${field}.source`)
  const { low, high, kind, whole } = quantity
  const number = check.number(found.value, `${field}.value`, low, high, kind)
  if (number === null || !whole || Number.isInteger(number)) return number
  check.refuse(`${field}.value`, 'whole-number', number, `a whole number from ${low} to ${high}`)
  return null
}

/** Empty is allowed: it stays empty and is asked for when it is needed. */
function sourcedOrNull(check: FieldCheck, value: unknown, field: string): number | null {
  return value === null ? null : sourced(check, value, field)
}

const legSourced = ['role', 'fixing']
const legNames = [...legSourced, 'sources', 'bathOil', 'bathOilViscosity', 'washer', 'footTorque']

function leg(check: FieldCheck, value: unknown, field: string): void {
  const found = check.fields(value, field, legNames)
  if (!found) return
  const sources = found.sources === undefined ? null : check.fields(found.sources, `${field}.sources`, legSourced)
  for (const name of legSourced)
    if (sources?.[name] !== undefined) checkSource(check, sources[name], `${field}.sources.${name}`)
  check.oneOf(found.role, `${field}.role`, legRoles)
  if (found.fixing !== null) check.oneOf(found.fixing, `${field}.fixing`, footFixings)
  for (const name of ['bathOil', 'bathOilViscosity', 'footTorque'] as const)
    sourcedOrNull(check, found[name], `${field}.${name}`)
  const washer = found.washer === null ? null : check.fields(found.washer, `${field}.washer`, ['value', 'source'])
  if (!washer) return
  check.text(washer.value, `${field}.washer.value`)
  checkSource(check, washer.source, `${field}.washer.source`)
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
  const found = check.fields(value, 'spring', springFieldNames) ?? {}
  return Object.fromEntries(
    springFieldNames.map((name) => [
      name,
      found[name] === undefined ? null : sourced(check, found[name], `spring.${name}`),
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
  for (const name of ['id', 'name'] as const) check.text(found[name], name)
  check.text(found.revision, 'revision', 20)
  check.flag(found.generic, 'generic')
  check.oneOf(found.kind, 'kind', unitKinds)
  check.oneOf(found.body, 'body', bodies)
  check.oneOf(found.damper, 'damper', damperKinds)
  check.oneOf(found.springKind, 'springKind', ['air', 'coil'])
  const fork = found.kind === 'fork-air' || found.kind === 'fork-coil'
  if (typeof found.kind === 'string' && unitKinds.some((kind) => kind === found.kind)) {
    if (!found.kind.endsWith(String(found.springKind)))
      check.refuse('springKind', 'spring-kind', found.springKind, `what kind says: ${found.kind}`)
    if (fork !== (found.body === 'single-crown' || found.body === 'dual-crown'))
      check.refuse('body', 'body-kind', found.body, fork ? 'single-crown, dual-crown' : 'in-line, piggyback')
  }
  const stanchion = sourcedOrNull(check, found.stanchion, 'stanchion')
  const stroke = sourced(check, found.stroke, 'stroke')
  geometry(check, spring(check, found.spring), stroke, stanchion)
  for (const name of ['spacers', 'lowerVolume', 'maxPressure', 'freeLength'] as const)
    sourcedOrNull(check, found[name], name)
  const bushings = found.bushings === null ? null : check.fields(found.bushings, 'bushings', ['a', 'b'])
  if (bushings) for (const one of ['a', 'b'] as const) sourced(check, bushings[one], `bushings.${one}`)
  const clicks = check.fields(found.clicks, 'clicks', ['rebound', 'compression'])
  if (clicks) for (const one of ['rebound', 'compression'] as const) sourcedOrNull(check, clicks[one], `clicks.${one}`)
  if (found.legs !== null) {
    const both = check.fields(found.legs, 'legs', legs)
    if (both) for (const side of legs) leg(check, both[side], `legs.${side}`)
  } else if (fork) check.refuse('legs', 'legs-missing', null, 'both legs of a fork, left and right')
  const torques = found.torques === undefined ? null : check.fields(found.torques, 'torques', torqueNames)
  for (const name of torques ? torqueNames : [])
    if (torques?.[name] !== undefined) sourcedOrNull(check, torques[name], `torques.${name}`)
  if (!fork && torques) check.refuse('torques', 'torques-of-shock', 'given', 'nothing: these are fasteners of a fork')
  checkLimits(check, found.limits)
  // Every field of a sheet has been checked above.
  return check.problems.length === 0 ? { ok: true, sheet: value as Sheet } : { ok: false, errors: check.problems }
}
