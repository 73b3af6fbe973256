/** How routes tell what they answer with, where that is no plain JSON object of the contract. */
import type { RouteShorthandOptions } from 'fastify'
import { z } from 'zod'

/**
 * Told and typed, not looked over again on its way out: what the book holds was checked when it was written, and a line that
 * a later schema would no longer take must not make the book unreadable. Tests hold these answers to their schemas.
 */
export const asWritten: NonNullable<RouteShorthandOptions['serializerCompiler']> = () => (answer) =>
  JSON.stringify(answer)

/** Bytes, or text of another type than a plain JSON answer. */
export const file = (description: string, type: string) => ({
  description,
  content: { [type]: { schema: z.unknown().meta({ description, contentMediaType: type }) } },
})
