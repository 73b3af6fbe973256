/** Numbers written in a picture, in the measures of whoever looks. */
import { useMeasures } from '../../../figures/world.tsx'
import type { Numeric } from '../answer-lines.ts'
import { readIn, writtenNumber } from '../answer-number.tsx'

type Kind = NonNullable<Numeric['kind']>

/** Three digits are enough beside a line; the answer below has all. */
function short(value: number): string {
  return writtenNumber(Number(value.toPrecision(3)))
}

/** Writes a quantity with its measure: `88 psi`. */
export function useWritten(): (value: number, kind: Kind) => string {
  const person = useMeasures()
  return (value, kind) => {
    const { of, unit } = readIn({ kind, unit: '' }, person, Math.abs(value))
    const text = short(of(value))
    return unit === '' ? text : unit === '°' ? `${text}°` : `${text}\u00a0${unit}`
  }
}
