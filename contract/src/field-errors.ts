/** A refusal of a schema, one line a field: what came, what is allowed, what to do. */
import type { z } from 'zod'
import type { FieldError } from './errors.ts'

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  let here = value
  for (const key of path) {
    if (here === null || typeof here !== 'object') return undefined
    here = Reflect.get(here, key)
  }
  return here
}

function shown(value: unknown): string {
  if (value === undefined) return 'nothing'
  const text = JSON.stringify(value)
  return text.length > 80 ? `${text.slice(0, 77)}…` : text
}

/** The issues of a schema as field errors; `value` is what was checked, `under` the field it stands in. */
export function fieldErrors(error: z.ZodError, value: unknown, under = ''): FieldError[] {
  return error.issues.map((issue) => {
    const field = [under, ...issue.path.map(String)].filter((part) => part !== '').join('.')
    const unknown = issue.code === 'unrecognized_keys'
    // A rule of ours says its own code.
    const own: unknown = issue.code === 'custom' ? issue.params?.code : undefined
    return {
      field: unknown ? [field, issue.keys[0]].filter(Boolean).join('.') : field || 'body',
      code: typeof own === 'string' ? own : `schema.${issue.code.replaceAll('_', '-')}`,
      came: unknown ? 'a field nobody asked for' : shown(at(value, issue.path)),
      allowed: issue.message,
      next: unknown ? 'Leave it out.' : 'Send what is allowed there.',
    }
  })
}
