/** A named computation of the contract: schema, function, units, what it rests on, an example. */
import type { RefusalCode, RefusedField } from '@legwork/engine'
import { Refusal } from '@legwork/engine'
import { z } from 'zod'
import { isDoubt } from './doubtful-input.ts'
import { type SchemaPart, schemaPart, unitsOf } from './units-of.ts'

/** In the order of a list. */
export const groups = [
  'Spring and load',
  'Air',
  'Leak',
  'Torque',
  'Oil',
  'Damping',
  'Wear',
  'Bench tests',
  'Hours and life',
  'Faults',
  'Doubt',
] as const

export type Group = (typeof groups)[number]

export interface Calculation {
  name: string
  group: Group
  title: string
  summary: string
  /** As it is printed in a handbook. */
  formula: string
  sources: readonly string[]
  /** Where it holds. */
  range: string
  input: z.ZodType
  /** What comes out, before `units` and `assumptions` are put beside it. */
  output: z.ZodType
  /** Unit of every numeric path out, `[]` for each of a list. */
  units: Readonly<Record<string, string>>
  example: Readonly<Record<string, unknown>>
  run: (input: unknown) => unknown
  assumptions: (input: unknown) => readonly string[]
}

/** A list or an object as the engine gives it: nothing in it is to be changed. */
type Given<T> = T extends object ? { readonly [K in keyof T]: Given<T[K]> } : T

/** Ties the schemas to the function, so that it takes what the one gives and gives what the other says. */
export function calculation<S extends z.ZodType, O extends z.ZodType<object>>(made: {
  name: string
  group: Group
  title: string
  summary: string
  formula: string
  sources: readonly string[]
  range: string
  input: S
  output: O
  example: Readonly<Record<string, unknown>>
  run: (input: z.output<S>) => Given<z.output<O>>
  assumptions?: (input: z.output<S>) => readonly string[]
}): Calculation {
  const { run, assumptions, ...rest } = made
  return {
    ...rest,
    units: unitsOf(made.output),
    // `runCalculation` hands over what this very schema gave.
    run: (input) => run(input as z.output<S>),
    assumptions: (input) => assumptions?.(input as z.output<S>) ?? [],
  }
}

export type Answer = { ok: true; output: Record<string, unknown> } | { ok: false; errors: readonly RefusedField[] }

function pathOf(path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (all, key) => (typeof key === 'number' ? `${all}[${key}]` : all === '' ? String(key) : `${all}.${String(key)}`),
    '',
  )
}

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (here, key) => (here !== null && typeof here === 'object' ? Reflect.get(here, key) : undefined),
    value,
  )
}

function shown(value: unknown): string {
  if (value === undefined) return 'missing'
  const text = JSON.stringify(value) ?? String(value)
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}

function codeOf(issue: z.core.$ZodIssue, came: unknown): RefusalCode {
  if (came === undefined) return 'missing'
  if (issue.code === 'too_small' || issue.code === 'too_big') return 'wrong-count'
  if (issue.code === 'invalid_value' || (issue.code === 'invalid_union' && issue.discriminator)) return 'not-a-choice'
  return typeof came === 'number' ? 'not-a-number' : 'wrong-type'
}

/** Completes "it must be …"; our own schemas say it themselves, the library's words are turned round. */
function allowedOf(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_value') return `one of ${issue.values.map(String).join(', ')}`
  if (issue.code === 'invalid_union' && issue.discriminator)
    return issue.message.replace(/^.*Expected /, 'one of ').replaceAll(' | ', ', ')
  if (issue.code === 'invalid_type') {
    const article = /^[aeiou]/.test(issue.expected) ? 'an' : 'a'
    return issue.message.startsWith('Invalid input') ? `${article} ${issue.expected}` : issue.message
  }
  if (issue.code === 'too_small') return `at least ${issue.minimum} long`
  if (issue.code === 'too_big') return `at most ${issue.maximum} long`
  return issue.message
}

/** Where one of several forms came but for something inside it, what is wrong inside instead of all forms at once. */
function inside(issue: z.core.$ZodIssue): z.core.$ZodIssue[] {
  if (issue.code !== 'invalid_union' || issue.discriminator) return [issue]
  const meant = issue.errors.filter(
    (found) => !found.some(({ path, code }) => path.length === 0 && code === 'invalid_type'),
  )
  const [only, ...others] = meant
  if (!only || others.length > 0) return [issue]
  return only.flatMap((found) => inside({ ...found, path: [...issue.path, ...found.path] }))
}

const doubtsGoElsewhere = 'A doubt is carried by the calculation doubt: ask that one, with this as its input.'

/** What a schema found wrong, as fields refused by the engine's own form. */
export function refusedFields(error: z.ZodError, input: unknown): RefusedField[] {
  return error.issues.flatMap(inside).flatMap((issue): RefusedField[] => {
    const field = pathOf(issue.path)
    if (issue.code === 'custom' && issue.params?.refused) return [{ field, ...issue.params.refused }]
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({
        field: pathOf([...issue.path, key]),
        code: 'unknown-field',
        came: 'a field nobody asked for',
        allowed: 'the fields listed by `GET /api/calc`',
        next: 'Leave it out, or look for its right name.',
      }))
    const came = at(input, issue.path)
    const allowed = allowedOf(issue)
    const code = codeOf(issue, came)
    const carried = came !== null && typeof came === 'object' && isDoubt(came)
    const next = carried ? doubtsGoElsewhere : 'Send what is allowed there.'
    return [{ field: field || 'input', code, came: shown(came), allowed, next }]
  })
}

/** Runs one calculation on whatever came in. Never throws for a wrong input. */
export function runChecked(one: Calculation, input: unknown): Answer {
  const checked = one.input.safeParse(input)
  if (!checked.success) return { ok: false, errors: refusedFields(checked.error, input) }
  try {
    // Every calculation gives an object.
    const output = one.run(checked.data) as Record<string, unknown>
    return { ok: true, output: { ...output, units: one.units, assumptions: one.assumptions(checked.data) } }
  } catch (trouble) {
    if (trouble instanceof Refusal) return { ok: false, errors: trouble.errors }
    throw trouble
  }
}

/** What `POST /api/calc/…` answers with: the output, the unit of every number in it, what it rests on. */
export function answerSchema(one: Calculation): SchemaPart {
  const { properties = {}, required = [], ...rest } = schemaPart(one.output, 'output')
  const units = { type: 'object', additionalProperties: { type: 'string' } }
  const assumptions = { type: 'array', items: { type: 'string' } }
  return {
    ...rest,
    type: 'object',
    properties: { ...properties, units, assumptions },
    required: [...required, 'units', 'assumptions'],
  }
}

// A JSON Schema is an object of any fields; `SchemaPart` names those that are read here.
const anySchema = z.record(z.string(), z.unknown()) as unknown as z.ZodType<SchemaPart>

/** What `GET /api/calc/…` answers with. */
export const calculationTold = z
  .object({
    name: z.string(),
    group: z.string(),
    title: z.string(),
    summary: z.string(),
    formula: z.string(),
    sources: z.array(z.string()).readonly(),
    range: z.string(),
    units: z.record(z.string(), z.string()),
    example: z.record(z.string(), z.unknown()),
    schema: anySchema.meta({ description: 'JSON Schema of what goes in.' }),
    answer: anySchema.meta({ description: 'JSON Schema of what comes out.' }),
  })
  .meta({ id: 'Calculation' })

/** A calculation as `GET /api/calc` tells of it. */
export function describeCalculation(one: Calculation) {
  const { name, group, title, summary, formula, sources, range, units, example } = one
  const schema = schemaPart(one.input, 'input')
  return { name, group, title, summary, formula, sources, range, units, example, schema, answer: answerSchema(one) }
}
