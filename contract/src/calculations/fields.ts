/** Fields of calculations: a number in SI or a text with a measure, read into SI. */
import { type KindName, kinds, parseQuantity, type RefusedValue } from '@legwork/engine'
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
    .meta({ description: said })
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
