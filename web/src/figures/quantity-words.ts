import type { KindName } from '@legwork/engine'
import { measureFor, shown } from './shown.ts'
import { useMeasures } from './world.tsx'

/** A quantity as text in the reader's measures, for sentences. */
export function useQuantityWords(): (value: number, kind: KindName, digits?: number) => string {
  const person = useMeasures()
  return (value, kind, digits) => {
    const { number, unit } = shown(value, measureFor(kind, person), digits)
    return unit ? `${number}\u00a0${unit}` : number
  }
}
