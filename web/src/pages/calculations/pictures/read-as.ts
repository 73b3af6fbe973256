/** Quantities of a picture in the measures of whoever looks. */
import { useMeasures } from '../../../figures/world.tsx'
import type { Numeric } from '../answer-lines.ts'
import { readIn } from '../answer-number.tsx'

export interface ReadAs {
  of: (si: number) => number
  unit: string
}

/** `size`: the largest that is drawn, for measures that go by size. */
export function useReadAs(kind: NonNullable<Numeric['kind']>, size: number): ReadAs {
  return readIn({ kind, unit: '' }, useMeasures(), size)
}
