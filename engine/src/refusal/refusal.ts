/** One field that cannot be taken: what came, what is allowed, what to do. */
export interface FieldRefusal {
  field: string
  code: string
  came: string
  allowed: string
  next: string
}

/** Thrown for a wrong input; names every field that is wrong. */
export class Refusal extends Error {
  readonly errors: readonly FieldRefusal[]
  constructor(errors: readonly FieldRefusal[]) {
    super(
      errors.map((error) => `${error.field} is ${error.came}; it must be ${error.allowed}. ${error.next}`).join('\n'),
    )
    this.name = 'Refusal'
    this.errors = errors
  }
}

/** @throws Refusal with this one field */
export function refuse(field: string, code: string, came: string, allowed: string, next: string): never {
  throw new Refusal([{ field, code, came, allowed, next }])
}
