/** In which order entries are replayed, and which are out of account. */
import type { AnyEntry, Id } from './entry.ts'
import type { JobContext } from './job-state.ts'
import { doneAt } from './progress.ts'

/**
 * The book's order, with what was done earlier and entered later put where it was done: before the first entry that was
 * done after it, and never before the opening.
 */
export function replayOrder(entries: readonly AnyEntry[]): readonly AnyEntry[] {
  const ordered = entries.filter((entry) => entry.standing.mode !== 'late')
  for (const late of entries) {
    if (late.standing.mode !== 'late') continue
    const when = doneAt(late)
    const after = ordered.findIndex((entry, index) => index > 0 && doneAt(entry) > when)
    ordered.splice(after === -1 ? ordered.length : after, 0, late)
  }
  return ordered
}

/** May this person decide: waive a gate, rule over a contested entry, lift a stop? */
export function decides(context: JobContext, person: Id): boolean {
  const role = context.roleOf(person)
  return role === 'owner' || role === 'technician'
}

/** Which entries are struck, and which contested ones a person let stand. */
export function rulings(
  entries: readonly AnyEntry[],
  context: JobContext,
): { struck: ReadonlySet<Id>; stands: ReadonlySet<Id> } {
  const kinds = new Map(entries.map((entry) => [entry.id, entry.kind]))
  const struck = new Set<Id>()
  for (const entry of entries) {
    const target = entry.kind === 'struck' ? kinds.get(entry.body.entry) : undefined
    if (entry.kind === 'struck' && target !== undefined && target !== 'struck' && target !== 'job-opened')
      struck.add(entry.body.entry)
  }
  const stands = new Set<Id>()
  for (const entry of entries) {
    if (entry.kind !== 'ruled' || struck.has(entry.id) || !decides(context, entry.person)) continue
    if (entry.body.ruling === 'stands') stands.add(entry.body.entry)
    else struck.add(entry.body.entry)
  }
  return { struck, stands }
}
