/** Problem documents (RFC 9457) with one line a field: what came, what is allowed, what to do next. */
import { z } from 'zod'

export const fieldError = z.object({
  field: z.string(),
  code: z.string(),
  came: z.string(),
  allowed: z.string(),
  next: z.string(),
  /** Where it stands in a file that was sent, from 1. */
  line: z.number().int().min(1).exactOptional(),
  column: z.number().int().min(1).exactOptional(),
})
export type FieldError = z.infer<typeof fieldError>

export const problem = z.object({
  type: z.string(),
  title: z.string(),
  status: z.number().int(),
  detail: z.string(),
  errors: z.array(fieldError),
})
export type Problem = z.infer<typeof problem>
