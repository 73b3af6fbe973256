import type { Source } from '@legwork/trade'
import type { ReactNode } from 'react'
import { DoubtBand } from './doubt-band.tsx'
import { type QuantityProps, QuantityText } from './quantity-text.tsx'
import { SourceLine, WorkedOutLine } from './source-line.tsx'
import type { Workings } from './workings.tsx'

export { type FigureSize, type QuantityProps, QuantityText } from './quantity-text.tsx'

interface Doubt {
  low: number
  high: number
  says: ReactNode
}

/** No number without its source; a worked-out one opens its workings. */
export type FigureProps = QuantityProps & {
  /** Above the figure where its place does not say what it is. */
  label?: ReactNode
  /** 90 % band [SI] and what it hangs on. */
  doubt?: Doubt
} & ({ source: Source; workings?: never } | { workings: () => Workings; source?: never })

/** A sourced value: number, unit, band of doubt, source line. */
export function Figure({ label, source, workings, doubt, ...quantity }: FigureProps) {
  const { value, kind, measure } = quantity
  return (
    <div className="figure">
      {label && <p className="label">{label}</p>}
      <p>
        <QuantityText {...quantity} />
      </p>
      {doubt && value !== null && (
        <DoubtBand
          value={value}
          low={doubt.low}
          high={doubt.high}
          kind={kind}
          says={doubt.says}
          {...(measure ? { measure } : {})}
        />
      )}
      {workings ? <WorkedOutLine workings={workings} quantity={quantity} /> : <SourceLine source={source} />}
    </div>
  )
}
