/** Why one value was refused, before it is known where it stood. */
export interface RefusedValue {
  /** Stable; this room's own are listed in `codes.ts`. */
  readonly code: string
  /** What came, in a readable measure. */
  readonly came: string
  /** What is allowed; completes "it must be …". */
  readonly allowed: string
  /** What to do now: a sentence. */
  readonly next: string
}

/** One refused field: where, what came, what is allowed, what to do. */
export interface RefusedField extends RefusedValue {
  /** Path of the field, e.g. `spring.lower.legs[0].oil`. */
  readonly field: string
}

/**
 * The sentence of a refused field.
 *
 * @example refusalSentence({ field: 'spring.shaft', code: 'does-not-fit', came: '40 mm', allowed: 'smaller than spring.bore (32 mm)', next: 'Measure the shaft below the piston.' }) // "spring.shaft is 40 mm; it must be smaller than spring.bore (32 mm). Measure the shaft below the piston."
 */
export function refusalSentence(error: RefusedField): string {
  if (error.code === 'missing') return `${error.field} is missing; it must be ${error.allowed}. ${error.next}`
  if (error.code === 'unknown-field')
    return `${error.field} is not known here; allowed are ${error.allowed}. ${error.next}`
  return `${error.field} is ${error.came}; it must be ${error.allowed}. ${error.next}`
}

/** Thrown instead of ever returning a wrong number: one line a field. */
export class Refusal extends Error {
  override readonly name = 'Refusal'
  readonly errors: readonly RefusedField[]

  constructor(errors: readonly RefusedField[]) {
    super(errors.map(refusalSentence).join('\n'))
    this.errors = errors
  }
}
