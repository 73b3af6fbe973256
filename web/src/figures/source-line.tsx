import { type Source, say } from '@legwork/trade'
import { SourceMark } from '../marks/source-mark.tsx'
import type { QuantityProps } from './quantity-text.tsx'
import { SourceDetails } from './source-details.tsx'
import { OpensWorkings, type Workings } from './workings.tsx'
import './source-line.css'

/** The line under a figure: its mark, its kind, its details. */
export function SourceLine({ source }: { source: Source }) {
  return (
    <p className="source-line book">
      <SourceMark kind={source.kind} /> {say(`source.${source.kind}`)}
      <SourceDetails source={source} />
    </p>
  )
}

/** The line under a worked-out figure: it opens formula, inputs and what is left out. */
export function WorkedOutLine({ workings, quantity }: { workings: () => Workings; quantity: QuantityProps }) {
  return (
    <OpensWorkings className="source-line book opens" workings={workings} quantity={quantity}>
      <SourceMark kind="worked-out" /> {say('source.worked-out')}
    </OpensWorkings>
  )
}
