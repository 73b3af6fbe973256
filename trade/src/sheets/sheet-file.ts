/** A sheet as a file of its own: JSON that a person can read and write, described in docs/sheet-file.md. */
import { fromSI, type KindName, kinds, type MeasureName, toSI } from '@legwork/engine'
import type { Id } from '../journal/entry.ts'
import { benchLimits, isJudgeable } from '../limits/bench-limits.ts'
import type { LegSheet, Sheet, Source } from './sheet.ts'
import { quantityAt } from './sheet-quantities.ts'

export const sheetFileFormat = 'legwork-sheet'
/** Goes up when an older program could misread a file. */
export const sheetFileVersion = 1

/** Names for the ids of a workshop's people and instruments; a file holds no ids but the sheet's own. */
export interface FileNames {
  person: (id: Id) => string | null
  instrument: (id: Id) => string | null
}

/** Measures to write a kind in, the first one that gives few enough digits. */
const written: Partial<Record<KindName, readonly MeasureName[]>> = {
  pressure: ['psi', 'bar'],
  fraction: ['%'],
}

/** The shortest decimal number that is this value again when it is read. */
function shortest(value: number, measure: MeasureName): string | null {
  for (let digits = 1; digits <= 17; digits += 1) {
    const number = String(Number(fromSI(value, measure).toPrecision(digits)))
    if (!number.includes('e') && toSI(Number(number), measure) === value) return number
  }
  return null
}

/**
 * A quantity as a file says it: in a measure of the workshop, and exactly this value again when it is read.
 *
 * @example writtenQuantity(0.00001, 'volume') // '10 ml'
 */
export function writtenQuantity(value: number, kind: KindName): string | number {
  const { plain } = kinds[kind]
  if (plain === null) return value
  const tries = (written[kind] ?? [plain]).flatMap((measure: MeasureName) => {
    const number = shortest(value, measure)
    return number === null ? [] : [`${number} ${measure}`]
  })
  return tries.sort((one, other) => one.length - other.length)[0] ?? value
}

/** Sources under short names: a sheet of one document names it once. */
class SourceBook {
  readonly #names = new Map<string, string>()
  readonly sources: Record<string, unknown> = {}
  readonly #file: FileNames

  constructor(file: FileNames) {
    this.#file = file
  }

  nameOf(source: Source): string {
    const key = JSON.stringify(source)
    const known = this.#names.get(key)
    if (known) return known
    const name = `${source.kind}-${this.#names.size + 1}`
    this.#names.set(key, name)
    const { person, instrument, ...rest } = source
    const said = {
      ...rest,
      person: person && (this.#file.person(person) ?? person),
      instrument: instrument && (this.#file.instrument(instrument) ?? instrument),
    }
    this.sources[name] = Object.fromEntries(Object.entries(said).filter(([, value]) => value !== null))
    return name
  }
}

const isSource = (value: object): value is { source: Source } => 'source' in value

/** Null where a value is empty is left in: it shows whoever fills the file in what there is to fill in. */
function valuesOf(value: unknown, path: string, book: SourceBook): unknown {
  if (typeof value !== 'object' || value === null) return value
  if (!isSource(value))
    return Object.fromEntries(
      Object.entries(value).map(([name, inside]) => [name, valuesOf(inside, path ? `${path}.${name}` : name, book)]),
    )
  const { source, ...held } = value
  const what = path.startsWith('limits.') ? path.slice('limits.'.length) : ''
  const kind = isJudgeable(what) ? benchLimits[what].kind : quantityAt(path)?.kind
  const said = Object.entries(held).map(([name, one]) => [
    name,
    typeof one === 'number' && kind ? writtenQuantity(one, kind) : one,
  ])
  return { ...Object.fromEntries(said), source: book.nameOf(source) }
}

/** Role and fixing with their source in place, as every other value has it. */
function legsOf(legs: Sheet['legs']): unknown {
  if (!legs) return null
  const whole = ({ sources = {}, role, fixing, ...leg }: LegSheet) => ({
    role: sources.role ? { value: role, source: sources.role } : role,
    fixing: sources.fixing ? { value: fixing, source: sources.fixing } : fixing,
    ...leg,
  })
  return { left: whole(legs.left), right: whole(legs.right) }
}

/**
 * A sheet's revision as the text of a file.
 *
 * @example writeSheetFile(sheet, names).startsWith('{\n  "format": "legwork-sheet"') // true
 */
export function writeSheetFile(sheet: Sheet, names: FileNames): string {
  const book = new SourceBook(names)
  const { id, name, revision, generic, kind, body, damper, springKind: _worked, ...values } = sheet
  const said = valuesOf({ ...values, legs: legsOf(values.legs) }, '', book)
  const head = { format: sheetFileFormat, version: sheetFileVersion, id, name, revision, generic, kind, body, damper }
  return `${JSON.stringify({ ...head, sources: book.sources, ...Object(said) }, null, 2)}\n`
}
