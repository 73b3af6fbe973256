/** A request that cannot be done: becomes a problem document (RFC 9457). */
import type { FieldError } from '@legwork/contract'

export class Trouble extends Error {
  override readonly name = 'Trouble'
  readonly status: number
  readonly errors: readonly FieldError[]
  constructor(status: number, title: string, errors: readonly FieldError[]) {
    super(title)
    this.status = status
    this.errors = errors
  }
}
