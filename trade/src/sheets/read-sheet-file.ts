/** Reading a sheet's file: every refusal names line, field, what came and what is allowed; nothing is repaired. */
import { type KindName, parseQuantity } from '@legwork/engine'
import type { Id } from '../journal/entry.ts'
import { benchLimits, isJudgeable } from '../limits/bench-limits.ts'
import { checkSheet } from './check-sheet.ts'
import { cameAs, type FieldProblem } from './field-check.ts'
import { isLoose, type Loose, resolveSources, type SourceNames } from './file-sources.ts'
import { readPlacedJson, type TextPlace } from './json-places.ts'
import type { Sheet } from './sheet.ts'
import { sheetFileFormat, sheetFileVersion } from './sheet-file.ts'
import { liftSheetFile } from './sheet-file-versions.ts'
import { quantityAt } from './sheet-quantities.ts'

export interface PlacedProblem extends FieldProblem, TextPlace {}

export type SheetFileRead =
  /** `id` is null where the file has none: a new sheet, or the one of that name. */
  | { ok: true; sheet: Omit<Sheet, 'id'>; id: Id | null; placeOf: (field: string) => TextPlace }
  | { ok: false; errors: readonly PlacedProblem[] }

/** A sheet's file is a few kilobytes; what is larger is something else. */
const largest = 1_000_000
const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/

interface Collected {
  problems: FieldProblem[]
  /** What stood in the file where a number is now. */
  came: Map<string, string>
}

const problem = (field: string, code: string, came: string, allowed: string, next: string): FieldProblem => ({
  field,
  code: `sheet.${code}`,
  came,
  allowed,
  next,
})

function numberOf(text: string, kind: KindName, field: string, collected: Collected): unknown {
  const parsed = parseQuantity(text, kind)
  if (parsed.ok) {
    collected.came.set(field, cameAs(text))
    return parsed.value
  }
  const { code, came, allowed, next } = parsed.error
  collected.problems.push({ field, code, came, allowed, next })
  return text
}

/** Texts with a measure as numbers in SI, wherever a quantity stands. */
function inSI(value: unknown, path: string, collected: Collected): unknown {
  if (!isLoose(value)) return value
  const what = path.startsWith('limits.') ? path.slice('limits.'.length) : ''
  const kind = isJudgeable(what) ? benchLimits[what].kind : quantityAt(path)?.kind
  const own = isJudgeable(what) ? ['watch', 'fail', 'watchBelow', 'failBelow'] : ['value']
  return Object.fromEntries(
    Object.entries(value).map(([name, inside]) => {
      const field = path ? `${path}.${name}` : name
      if (kind && own.includes(name) && typeof inside === 'string')
        return [name, numberOf(inside, kind, field, collected)]
      return [name, name === 'source' ? inside : inSI(inside, field, collected)]
    }),
  )
}

/** A leg whose role and fixing may stand with their source, as every other value does. */
function legFilledOut(leg: unknown, field: string, collected: Collected): unknown {
  if (!isLoose(leg)) return leg
  const whole: Record<string, unknown> = { ...emptyLegFields, ...leg }
  const sources: Record<string, unknown> = {}
  for (const name of ['role', 'fixing'] as const) {
    const said = whole[name]
    if (!isLoose(said)) continue
    for (const other of Object.keys(said).filter((one) => one !== 'value' && one !== 'source'))
      collected.problems.push(
        problem(`${field}.${name}.${other}`, 'unknown-field', cameAs(said[other]), 'value, source', 'Take it out.'),
      )
    whole[name] = said.value
    sources[name] = said.source
  }
  return Object.keys(sources).length > 0 ? { ...whole, sources } : whole
}

/** Left out is empty: whoever writes a file by hand writes only what is there. */
function filledOut(found: Loose, collected: Collected): Loose {
  const { legs = null, clicks = {}, kind } = found
  const leg = ([side, one]: [string, unknown]) => [side, legFilledOut(one, `legs.${side}`, collected)]
  return {
    ...emptyFields,
    ...found,
    springKind: typeof kind === 'string' && kind.endsWith('coil') ? 'coil' : 'air',
    clicks: isLoose(clicks) ? { rebound: null, compression: null, ...clicks } : clicks,
    legs: isLoose(legs) ? Object.fromEntries(Object.entries(legs).map(leg)) : legs,
  }
}

const emptyLegFields = { fixing: null, bathOil: null, bathOilViscosity: null, washer: null, footTorque: null }
const emptyFields = {
  stanchion: null,
  spring: {},
  spacers: null,
  lowerVolume: null,
  maxPressure: null,
  freeLength: null,
  bushings: null,
  limits: {},
  generic: false,
}
const forged = ['springKind'] as const

function head(found: Loose, collected: Collected): void {
  const { format, id } = found
  if (format !== sheetFileFormat)
    collected.problems.push(
      problem('format', 'file-format', cameAs(format), `"${sheetFileFormat}"`, 'Pick a file of a sheet.'),
    )
  if (id !== undefined && (typeof id !== 'string' || !uuid.test(id)))
    collected.problems.push(
      problem('id', 'file-id', cameAs(id), 'an id as it was exported, or none', 'Leave it out: the name decides.'),
    )
  for (const name of forged)
    if (found[name] !== undefined)
      collected.problems.push(
        problem(name, 'unknown-field', cameAs(found[name]), 'nothing: it follows from kind', 'Take it out.'),
      )
}

/**
 * A sheet out of the text of a file.
 *
 * @param names  ids for the people and instruments that the file names
 * @returns the sheet, or everything that is wrong with it, in the order of the file
 * @example readSheetFile('{', names) // { ok: false, errors: [{ line: 1, column: 2, code: 'sheet.not-json', … }] }
 */
export function readSheetFile(text: string, names: SourceNames): SheetFileRead {
  const first = { line: 1, column: 1 }
  if (text.length > largest) {
    const allowed = `at most ${largest} characters`
    const error = problem('', 'file-too-large', `${text.length} characters`, allowed, 'Pick the file of one sheet.')
    return { ok: false, errors: [{ ...error, ...first }] }
  }
  const read = readPlacedJson(text)
  if (!read.ok) {
    const error = problem('', 'not-json', read.came, read.allowed, 'Mend the text there.')
    return { ok: false, errors: [{ ...error, ...read.place }] }
  }
  const placed = (errors: readonly FieldProblem[]): readonly PlacedProblem[] =>
    errors
      .map((error) => ({ ...error, ...read.placeOf(error.field) }))
      .sort((one, other) => one.line - other.line || one.column - other.column)
  if (!isLoose(read.value)) {
    const error = problem(
      '',
      'not-an-object',
      cameAs(read.value),
      'an object {…} with named values',
      'Pick a file of a sheet.',
    )
    return { ok: false, errors: placed([error]) }
  }
  const { version } = read.value
  const lifted = liftSheetFile(version, read.value)
  if (!lifted) {
    const allowed = `a whole number from 1 to ${sheetFileVersion}`
    const error = problem('version', 'file-version', cameAs(version), allowed, 'Read it in with a newer Legwork.')
    return { ok: false, errors: placed([error]) }
  }
  const collected: Collected = { problems: [], came: new Map() }
  head(lifted, collected)
  const { format: _format, version: _version, id, sources, ...values } = lifted
  const resolved = resolveSources(values, sources, names, collected.problems)
  const sheet = inSI(filledOut(resolved, collected), '', collected)
  const check = checkSheet({ ...Object(sheet), id: 'file' })
  const known = new Set(collected.problems.map((error) => error.field))
  for (const error of check.ok ? [] : check.errors) {
    if (known.has(error.field)) continue
    const came = collected.came.get(error.field) ?? error.came
    // A source that stands in `sources` was refused there, once.
    if (!collected.problems.some((one) => error.field.startsWith(`${one.field}.`)))
      collected.problems.push({ ...error, came, next: 'Correct it in the file.' })
  }
  if (!check.ok || collected.problems.length > 0) return { ok: false, errors: placed(collected.problems) }
  const { id: _stand, ...rest } = check.sheet
  return { ok: true, sheet: rest, id: typeof id === 'string' ? id : null, placeOf: read.placeOf }
}
