/**
 * The revision after this one: the maker's letter stays, a count of what was changed here follows it.
 *
 * @param taken  revisions that are there already and can't be taken again
 * @example nextRevision('C') // 'C.1'
 * @example nextRevision('C.1', ['C.2']) // 'C.3'
 */
export function nextRevision(revision: string, taken: readonly string[] = []): string {
  const found = /^(.*)\.(\d+)$/.exec(revision)
  const next = found ? `${found[1]}.${Number(found[2]) + 1}` : `${revision}.1`
  return taken.includes(next) ? nextRevision(next, taken) : next
}
