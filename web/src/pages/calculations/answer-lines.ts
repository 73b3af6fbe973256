/** What came out, as lines, ranges and tables: read off the answer and its schema. */
import type { SchemaPart } from '@legwork/contract/calculations/index.ts'
import { type KindName, kinds, type MeasureName, measures } from '@legwork/engine'
import { isRecord, type Path } from './draft.ts'

/** One number: its kind, or its unit where it is of no kind a person chooses a measure for. */
export interface Numeric {
  kind: KindName | null
  unit: string
  /** The one measure it is read in, whatever a person chose. */
  measure?: MeasureName
  /** How likely something is: whole percents, for nobody knows it better. */
  isChance?: boolean
}

export type AnswerLine =
  | { is: 'number'; path: Path; value: number; of: Numeric }
  | { is: 'range'; path: Path; low: number; high: number; of: Numeric }
  | { is: 'numbers'; path: Path; values: readonly number[]; of: Numeric }
  | { is: 'word'; path: Path; word: string }
  | { is: 'words'; path: Path; words: readonly string[] }
  | { is: 'yes-no'; path: Path; yes: boolean }
  | { is: 'none'; path: Path }
  | { is: 'part'; path: Path; lines: readonly AnswerLine[] }
  | { is: 'table'; path: Path; rows: readonly (readonly AnswerLine[])[] }

const kindOfUnit: Readonly<Record<string, KindName>> = {
  m: 'length',
  'm³': 'volume',
  kg: 'mass',
  N: 'force',
  Pa: 'pressure',
  K: 'temperature',
  '°': 'angle',
  s: 'duration',
  'N/m': 'rate',
  N·m: 'torque',
  'm²/s': 'viscosity',
  'N·s/m': 'damping',
  J: 'energy',
  'm³/s': 'flow',
  '1': 'number',
}

export function numericOf(part: SchemaPart | undefined, beside: string | undefined): Numeric {
  const [quantity, told = '1'] = [part?.['x-quantity'], part?.['x-unit']]
  const unit = told === 'see unit' ? (beside ?? '1') : told
  if (quantity !== undefined && Object.hasOwn(kinds, quantity)) {
    // Just looked up among the names.
    const kind = quantity as KindName
    const measure = part?.['x-measure']
    return measure !== undefined && Object.hasOwn(measures, measure)
      ? { kind, unit, measure: measure as MeasureName } // looked up too
      : { kind, unit }
  }
  return { kind: kindOfUnit[unit] ?? null, unit }
}

/** The part that is meant where a value may also be nothing. */
function settled(part: SchemaPart | undefined): SchemaPart | undefined {
  return part?.anyOf?.find(({ type }) => type !== 'null') ?? part
}

/** Names of chances. */
const chances: readonly unknown[] = ['prior', 'posterior']

function memberOf(part: SchemaPart | undefined, name: string): SchemaPart | undefined {
  const others = part?.additionalProperties
  return part?.properties?.[name] ?? (typeof others === 'object' ? others : undefined)
}

function lineOf(value: unknown, told: SchemaPart | undefined, path: Path, beside?: string): AnswerLine {
  const part = settled(told)
  if (typeof value === 'number' && chances.includes(path.at(-1)))
    return { is: 'number', path, value, of: { kind: 'fraction', unit: '1', isChance: true } }
  if (typeof value === 'number') return { is: 'number', path, value, of: numericOf(part, beside) }
  if (typeof value === 'boolean') return { is: 'yes-no', path, yes: value }
  if (typeof value === 'string') return { is: 'word', path, word: value }
  if (Array.isArray(value)) return listLine(value, part, path, beside)
  if (isRecord(value)) return { is: 'part', path, lines: linesOf(value, part, path) }
  return { is: 'none', path }
}

function listLine(value: readonly unknown[], part: SchemaPart | undefined, path: Path, beside?: string): AnswerLine {
  const inner = part?.prefixItems?.[0] ?? (typeof part?.items === 'object' ? part.items : undefined)
  const numbers = value.filter((one) => typeof one === 'number')
  const [low, high] = numbers
  const words = value.filter((one) => typeof one === 'string')
  if (value.length > 0 && words.length === value.length) return { is: 'words', path, words }
  if (numbers.length < value.length)
    return { is: 'table', path, rows: value.map((row, index) => rowOf(row, settled(inner), [...path, index])) }
  const of = numericOf(settled(inner), beside)
  const isPair = part?.prefixItems?.length === 2 && low !== undefined && high !== undefined
  return isPair ? { is: 'range', path, low, high, of } : { is: 'numbers', path, values: numbers, of }
}

function rowOf(row: unknown, part: SchemaPart | undefined, path: Path): AnswerLine[] {
  return isRecord(row) ? linesOf(row, part, path) : [lineOf(row, part, path)]
}

/**
 * The lines of an answer; `low` and `high` beside each other become one range.
 *
 * @param part  of its JSON Schema
 */
export function linesOf(answer: Record<string, unknown>, part: SchemaPart | undefined, path: Path = []): AnswerLine[] {
  const { low, high } = answer
  const isRange = typeof low === 'number' && typeof high === 'number'
  const beside = typeof answer.unit === 'string' ? answer.unit : undefined
  const saysUnit = Object.values(part?.properties ?? {}).some((told) => settled(told)?.['x-unit'] === 'see unit')
  return Object.entries(answer).flatMap(([name, value]): AnswerLine[] => {
    if (value === undefined || (name === 'unit' && saysUnit)) return []
    const told = memberOf(part, name)
    if (isRange && name === 'low')
      return [{ is: 'range', path: [...path, 'low-high'], low, high, of: numericOf(settled(told), beside) }]
    if (isRange && name === 'high') return []
    return [lineOf(value, told, [...path, name], beside)]
  })
}
