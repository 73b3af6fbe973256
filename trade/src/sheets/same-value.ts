/** The same whatever order the fields were written in. */
function canonical(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value
  const sorted = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1))
  return Object.fromEntries(sorted.map(([name, inside]) => [name, canonical(inside)]))
}

/**
 * Whether two values say the same, in whatever order their fields stand.
 *
 * @example sameValue({ a: 1, b: { c: 2, d: 3 } }, { b: { d: 3, c: 2 }, a: 1 }) // true
 */
export const sameValue = (one: unknown, other: unknown): boolean =>
  JSON.stringify(canonical(one)) === JSON.stringify(canonical(other))
