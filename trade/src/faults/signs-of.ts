/** Signs of a kind of unit, in the order they are looked at. */
import type { UnitKind } from '../sheets/sheet.ts'
import { faultSigns, type SeenBy, type SignId } from './signs.ts'

/** Looked at on every unit that comes in; the rest where there is reason to (common practice, no source). */
const always: readonly SignId[] = ['S03', 'S06', 'S15', 'S16', 'S17', 'S18', 'S19', 'S20', 'S23']

/** @example isSignId('S03') // true */
export function isSignId(id: string): id is SignId {
  return faultSigns.some((sign) => sign.id === id)
}

/** Signs somebody sees on such a unit: `first` those always looked at. */
export function signsOf(kind: UnitKind, by: SeenBy): { first: readonly SignId[]; others: readonly SignId[] } {
  const seen = faultSigns.filter((sign) => {
    const kinds: readonly UnitKind[] | null = 'kinds' in sign ? sign.kinds : null
    return sign.seenBy.some((one) => one === by) && (kinds === null || kinds.includes(kind))
  })
  const ids = seen.map(({ id }) => id)
  return { first: ids.filter((id) => always.includes(id)), others: ids.filter((id) => !always.includes(id)) }
}
