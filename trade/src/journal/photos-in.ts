/** Photos that an entry names: pictures of what it came in as, of a part that was looked at, of what a note says. */
import type { AnyEntry, Digest } from './entry.ts'

export type PhotoKind = 'snapshot-kept' | 'chassis-checked' | 'noted'
/** Kinds of entries that may name photos. */
export const photoKinds: readonly PhotoKind[] = ['snapshot-kept', 'chassis-checked', 'noted']

/** @example photosIn({ kind: 'noted', body: { text: 'a', photos: ['b'] } }) // ['b'] */
export function photosIn(entry: Pick<AnyEntry, 'kind' | 'body'>): readonly Digest[] {
  return 'photos' in entry.body ? (entry.body.photos ?? []) : []
}
