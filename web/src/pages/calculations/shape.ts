/** What a form asks for, read off a calculation's own JSON Schema: the same that the API tells. */

import type { SchemaPart } from '@legwork/contract/calculations/index.ts'
import { type KindName, kinds } from '@legwork/engine'

export type Shape =
  /** `counts`: the measure that a plain number of the contract is in, where it is not SI. */
  | { is: 'quantity'; kind: KindName; counts?: 'h' }
  | { is: 'number'; unit?: string }
  | { is: 'text' }
  | { is: 'yes-no' }
  | { is: 'choice'; options: readonly string[] }
  | { is: 'group'; fields: readonly FormField[]; ways: readonly (readonly string[])[] }
  | { is: 'list'; of: Shape; least: number; most: number }
  /** A list of a fixed length, such as [low, high]. */
  | { is: 'places'; of: readonly Shape[] }
  /** One of several groups, told apart by a word in one of their fields. */
  | { is: 'kinds'; by: string; options: readonly { word: string; shape: GroupShape }[] }
  /** One of several forms, told apart by what they are: a number, a group, a list. */
  | { is: 'forms'; options: readonly Shape[] }
  /** One word that can't be another; nobody is asked for it. */
  | { is: 'fixed'; value: unknown }
  /** Whatever JSON. */
  | { is: 'anything' }

export type GroupShape = Extract<Shape, { is: 'group' }>

export interface FormField {
  name: string
  shape: Shape
  needed: boolean
  /** What is taken where it is left out. */
  instead: unknown
}

function isKind(name: string): name is KindName {
  return Object.hasOwn(kinds, name)
}

function groupOf(part: SchemaPart, without?: string): GroupShape {
  const { properties = {}, required = [], oneOf = [] } = part
  const fields = Object.entries(properties)
    .filter(([name]) => name !== without)
    .map(([name, inner]) => ({
      name,
      shape: shapeOf(inner),
      needed: required.includes(name),
      instead: inner.default,
    }))
  return { is: 'group', fields, ways: oneOf.map((way) => way.required ?? []) }
}

/** The field whose one word tells the alternatives apart. */
function tellingField(options: readonly SchemaPart[]): string | null {
  const [first] = options
  const names = Object.keys(first?.properties ?? {})
  return names.find((name) => options.every(({ properties }) => properties?.[name]?.const !== undefined)) ?? null
}

function alternatives(options: readonly SchemaPart[]): Shape {
  const [only, ...others] = options
  if (only && others.length === 0) return shapeOf(only)
  const by = tellingField(options)
  if (by === null) return { is: 'forms', options: options.map(shapeOf) }
  return {
    is: 'kinds',
    by,
    options: options.map((option) => ({
      word: String(option.properties?.[by]?.const),
      shape: groupOf(option, by),
    })),
  }
}

/**
 * The form of one part of a schema.
 *
 * @example shapeOf({ type: 'number' }) // { is: 'number' }
 */
export function shapeOf(part: SchemaPart): Shape {
  if (part.const !== undefined) return { is: 'fixed', value: part.const }
  const kind = part['x-quantity']
  if (kind !== undefined && isKind(kind)) return { is: 'quantity', kind }
  if (part['x-unit'] === 'h') return { is: 'quantity', kind: 'duration', counts: 'h' }
  if (part.enum) return { is: 'choice', options: part.enum.map(String) }
  if (part.properties) return groupOf(part)
  const several = part.anyOf ?? part.oneOf
  if (several) return alternatives(several.filter(({ type }) => type !== 'null'))
  if (part.prefixItems) return { is: 'places', of: part.prefixItems.map(shapeOf) }
  if (typeof part.items === 'object') {
    return { is: 'list', of: shapeOf(part.items), least: part.minItems ?? 0, most: part.maxItems ?? 10_000 }
  }
  if (part.type === 'number' || part.type === 'integer') {
    const unit = part['x-unit']
    return unit === undefined || unit === '1' ? { is: 'number' } : { is: 'number', unit }
  }
  if (part.type === 'boolean') return { is: 'yes-no' }
  if (part.type === 'string') return { is: 'text' }
  return { is: 'anything' }
}

/** What stands in a part that is opened and not yet filled in. */
export function blank(shape: Shape): unknown {
  if (shape.is === 'group') return blankGroup(shape)
  if (shape.is === 'kinds') {
    const [first] = shape.options
    return first ? { [shape.by]: first.word, ...blankGroup(first.shape) } : {}
  }
  if (shape.is === 'list') return Array.from({ length: Math.max(1, shape.least) }, () => blank(shape.of) ?? '')
  if (shape.is === 'places') return shape.of.map((of) => blank(of) ?? '')
  if (shape.is === 'fixed') return shape.value
  if (shape.is === 'forms') return shape.options[0] ? blank(shape.options[0]) : undefined
  return undefined
}

function blankGroup({ fields, ways }: GroupShape): Record<string, unknown> {
  const [first = []] = ways
  const begun = fields.filter(({ name, needed }) => needed || first.includes(name))
  return Object.fromEntries(
    begun.map(({ name, shape }) => [name, blank(shape)] as const).filter(([, value]) => value !== undefined),
  )
}

/** Which of several forms a value has; the first where it has none. */
export function formOf(options: readonly Shape[], value: unknown): number {
  const is = (shape: Shape): boolean => {
    if (Array.isArray(value)) return shape.is === 'list' || shape.is === 'places'
    if (value !== null && typeof value === 'object') return shape.is === 'group' || shape.is === 'kinds'
    return shape.is === 'number' || shape.is === 'quantity' || shape.is === 'text'
  }
  return Math.max(0, options.findIndex(is))
}
