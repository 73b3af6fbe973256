/** Readings as they are typed and shown: the figures of the house, by what a reading is read in. */
import type { KindName, MeasureName } from '@legwork/engine'
import { type Measures, type Reading, say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { type FigureSize, QuantityText } from '../../figures/figure.tsx'
import { QuantityInput } from '../../figures/quantity-input.tsx'
import { kindOf, measureFor, shown } from '../../figures/shown.ts'
import { useMeasures } from '../../figures/world.tsx'

type ReadingMeasure = Reading['measure']

interface Manner {
  kind: KindName
  measure?: MeasureName
  digits?: number
  of?: string
}

/** Return times are read in seconds, clearances in hundredths: more finely than their kind is in general. */
function mannerOf(measure: ReadingMeasure, fine: boolean, share: boolean): Manner {
  const kind = kindOf(measure)
  if (measure === 's') return { kind, measure: 's', digits: 2 }
  if (measure === 'm' && fine) return { kind, measure: 'mm', digits: 2 }
  if (measure === '1') return share ? { kind: 'fraction', digits: 1 } : { kind, digits: 2 }
  if (measure === 'clicks') return { kind, digits: 0, of: say('keep.clicks') }
  if (measure === 'count') return { kind, digits: 0 }
  return { kind }
}

interface ReadingFieldProps {
  label: ReactNode
  measure: ReadingMeasure
  value: number | null
  onChange: (value: number | null) => void
  hint?: ReactNode
  suggestion?: ReactNode
  judge?: (value: number) => string | null
  /** In hundredths of a millimetre. */
  fine?: boolean
  /** A ratio in per cent. */
  share?: boolean
}

/** A field for a reading; a count takes whole numbers from 0. */
export function ReadingField({ measure, fine = false, share = false, ...field }: ReadingFieldProps) {
  const { of: _counted, ...manner } = mannerOf(measure, fine, share)
  return <QuantityInput {...manner} {...field} />
}

interface ShownProps {
  value: number
  measure: ReadingMeasure
  size?: FigureSize
  hand?: boolean
  fine?: boolean
  share?: boolean
  /** After the point, instead of the measure's own. */
  digits?: number
}

export function Shown({ measure, fine = false, share = false, ...rest }: ShownProps) {
  return <QuantityText {...mannerOf(measure, fine, share)} {...rest} />
}

/** A reading as text, for sentences. */
export function readingText(
  value: number,
  measure: ReadingMeasure,
  person: Measures,
  { fine = false, share = false } = {},
): string {
  const manner = mannerOf(measure, fine, share)
  const { number, unit } = shown(value, manner.measure ?? measureFor(manner.kind, person), manner.digits)
  const after = manner.of ?? unit
  return after ? `${number}\u00a0${after}` : number
}

export function useShownText() {
  const person = useMeasures()
  return (value: number, measure: ReadingMeasure, fine = false, share = false): string =>
    readingText(value, measure, person, { fine, share })
}
