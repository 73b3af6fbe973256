/** Questions that can be asked in two ways: exactly one of them, and all of it. */
import { Refusal } from '@legwork/engine'

type Fields<Key extends string> = { readonly [K in Key]?: number | undefined }
type Complete<Key extends string> = { readonly [K in Key]: number }

function complete<Key extends string>(value: Fields<Key>, keys: readonly Key[]): Complete<Key> {
  // Asked for only where every key is there.
  return Object.fromEntries(keys.map((key) => [key, value[key]])) as Complete<Key>
}

/**
 * The one form that is complete.
 *
 * @param at  path of the object, ending in a dot, or empty
 * @throws Refusal `wrong-form` where fields of both are mixed or none is there, `missing` for each that completes one
 */
export function oneForm<One extends string, Other extends string>(
  value: Fields<One> & Fields<Other>,
  one: readonly One[],
  other: readonly Other[],
  at = '',
): Complete<One> | Complete<Other> {
  const lackOne = one.filter((key) => value[key] === undefined)
  const lackOther = other.filter((key) => value[key] === undefined)
  const someOne = lackOne.length < one.length
  const someOther = lackOther.length < other.length
  if (lackOne.length === 0 && !someOther) return complete<One>(value, one)
  if (lackOther.length === 0 && !someOne) return complete<Other>(value, other)
  const forms = `${one.join(' and ')}, or ${other.join(' and ')}`
  if (someOne === someOther) {
    const came = someOne ? 'mixed with fields of the other way' : 'missing'
    const next = 'Give all fields of one way and none of the other.'
    throw new Refusal([{ field: `${at}${String(one[0])}`, code: 'wrong-form', came, allowed: forms, next }])
  }
  const lacking: readonly string[] = someOne ? lackOne : lackOther
  throw new Refusal(
    lacking.map((name) => ({
      field: at + name,
      code: 'missing',
      came: 'missing',
      allowed: `there: ${forms}`,
      next: 'Give it.',
    })),
  )
}
