/** Figures of instruments as texts, in the measures of whoever reads. */
import type { KindName } from '@legwork/engine'
import { type InstrumentKind, instrumentFields } from '@legwork/trade'
import { measureFor, shown } from '../../figures/shown.ts'
import { useMeasures } from '../../figures/world.tsx'
import { digitsOf } from '../../sheet-form/place-field.tsx'

/** What the smallest step of a kind is a step of. */
export const kindOfStep = (kind: InstrumentKind): KindName =>
  instrumentFields(kind).find(({ name }) => name === 'resolution')?.kind ?? 'number'

export function useShownAs(): (value: number, kind: KindName) => string {
  const person = useMeasures()
  return (value, kind) => {
    const measure = measureFor(kind, person)
    const { number, unit } = shown(value, measure, digitsOf(value, measure))
    return unit ? `${number}\u00a0${unit}` : number
  }
}
