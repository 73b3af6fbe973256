/** Fields of calculations: a number in SI or a text with a measure, read into SI. */
import { type KindName, kinds, type MeasureName, parseQuantity, type RefusedValue } from '@legwork/engine'
import { z } from 'zod'

/** Keeps a refusal whole on its way through the schema. */
export function refusedIssue(error: RefusedValue): {
  code: 'custom'
  message: string
  params: { refused: RefusedValue }
} {
  return { code: 'custom', message: error.allowed, params: { refused: error } }
}

/** A quantity of one kind. */
export function quantity(kind: KindName) {
  const { unit, example } = kinds[kind]
  const said = unit === '1' ? `a number, or a text like ${example}` : `a number in ${unit}, or a text like ${example}`
  return z
    .union([z.number(), z.string()], { error: said })
    .meta({ description: said, 'x-quantity': kind, 'x-unit': unit })
    .transform((came, context): number => {
      if (typeof came === 'number') return came
      const parsed = parseQuantity(came, kind)
      if (parsed.ok) return parsed.value
      context.addIssue({ ...refusedIssue(parsed.error), input: came })
      return z.NEVER
    })
}

/** A count: a plain number. */
export const count = z.number()

/** A field that may be left out, and what is taken then. */
export function taken<S extends z.ZodType>(field: S, instead: unknown): z.ZodOptional<S> {
  return field.optional().meta({ default: instead })
}

/** For an object that is asked in one of several ways: all fields of one way, none of the others. */
export function ways(...all: readonly (readonly string[])[]): { oneOf: { required: readonly string[] }[] } {
  return { oneOf: all.map((required) => ({ required })) }
}

/** A number that comes out: SI, of one kind. */
export function si(kind: KindName) {
  return z.number().meta({ 'x-quantity': kind, 'x-unit': kinds[kind].unit })
}

/** A number that comes out and whose name means one measure, such as Saybolt's seconds. */
export function alwaysIn(kind: KindName, measure: MeasureName) {
  return z.number().meta({ 'x-quantity': kind, 'x-unit': kinds[kind].unit, 'x-measure': measure })
}

/** A number that comes out in a unit no field is written in. */
export function inUnit(unit: string) {
  return z.number().meta({ 'x-unit': unit })
}

/** Lower and upper end of a range or a band. */
export function pair<S extends z.ZodType>(of: S) {
  return z.tuple([of, of])
}
