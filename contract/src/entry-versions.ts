/** Versions of entry bodies: the newest of each kind, and how an older one is lifted to it when it is read. */
import type { EntryKind } from '@legwork/trade'

/** Lifts a body from `from` to `from + 1`. */
export interface UpCaster {
  kind: EntryKind
  from: number
  lift: (body: unknown) => unknown
}

/** Append-only: a tablet that was offline across an upgrade still delivers what it wrote. */
export const upCasters: readonly UpCaster[] = [
  // Before it was known which rest is waited for.
  { kind: 'waiting', from: 1, lift: (body) => ({ ...Object(body), rest: null }) },
]

/** The newest version of a kind: one more than its up-casters. */
export function newestVersion(kind: EntryKind, casters: readonly UpCaster[] = upCasters): number {
  return 1 + casters.filter((caster) => caster.kind === kind).length
}

/**
 * A body as the newest version has it.
 *
 * @throws RangeError for a version that is newer than this program, or below 1
 * @example liftBody('noted', 1, { text: '…' }) // { text: '…' }
 */
export function liftBody(
  kind: EntryKind,
  version: number,
  body: unknown,
  casters: readonly UpCaster[] = upCasters,
): unknown {
  const newest = newestVersion(kind, casters)
  if (!Number.isInteger(version) || version < 1 || version > newest)
    throw new RangeError(`${kind} has version ${version}; this program reads 1 to ${newest}`)
  let lifted = body
  for (let at = version; at < newest; at++) {
    const caster = casters.find((one) => one.kind === kind && one.from === at)
    if (!caster) throw new RangeError(`${kind} cannot be lifted from version ${at}`)
    lifted = caster.lift(lifted)
  }
  return lifted
}
