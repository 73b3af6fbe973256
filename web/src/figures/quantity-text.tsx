import type { KindName, MeasureName } from '@legwork/engine'
import { say } from '@legwork/trade'
import { measureFor, shown } from './shown.ts'
import { useMeasures } from './world.tsx'
import './figure.css'

/** `step` and `second` in Work, `page` once a page, the others in rows and text. */
export type FigureSize = 'step' | 'second' | 'page' | 'row-large' | 'row' | 'row-small' | 'text'

export interface QuantityProps {
  /** SI; null where it is not known. */
  value: number | null
  kind: KindName
  /** Instead of the reader's own measure. */
  measure?: MeasureName
  /** After the point, instead of the measure's own. */
  digits?: number
  /** For a bare number: what is counted, in words. */
  of?: string
  size?: FigureSize
  /** Written by a hand: violet. */
  hand?: boolean
}

/** A number with its unit, in the measures of whoever reads. Data: never put into another language. */
export function QuantityText({ value, kind, measure, digits, of, size = 'text', hand = false }: QuantityProps) {
  const person = useMeasures()
  const classes = `quantity ${size}${hand ? ' hand' : ''}`
  if (value === null) return <span className={classes}>{say('figure.none')}</span>
  const { number, unit } = shown(value, measure ?? measureFor(kind, person), digits)
  const after = of ?? unit
  return (
    <span className={classes} translate="no">
      {number}
      {after && <u className={after === '°' ? 'close' : undefined}>{after === '°' ? after : ` ${after}`}</u>}
    </span>
  )
}
