import { type Source, say } from '@legwork/trade'
import { SourceMark } from '../marks/source-mark.tsx'
import { clock, day } from './moment.ts'
import type { QuantityProps } from './quantity-text.tsx'
import { OpensWorkings, type Workings } from './workings.tsx'
import { useFigureWorld } from './world.tsx'
import './source-line.css'

/** Document, revision and page, or who, when and with what: whatever the source says of itself. */
function Details({ source }: { source: Source }) {
  const { nameOf } = useFigureWorld()
  const { document, revision, page, person, at, instrument } = source
  const said: string[] = []
  if (document) said.push(document)
  if (revision) said.push(say('source.revision', { revision }))
  if (page) said.push(say('source.page', { page }))
  if (person) said.push(nameOf(person) ?? say('source.somebody'))
  if (instrument) said.push(nameOf(instrument) ?? say('source.some-instrument'))
  if (at) said.push(`${day(at)}, ${clock(at)}`)
  return said.length > 0 ? <span translate="no">{`: ${said.join(', ')}`}</span> : null
}

/** The line under a figure: its mark, its kind, its details. */
export function SourceLine({ source }: { source: Source }) {
  return (
    <p className="source-line book">
      <SourceMark kind={source.kind} /> {say(`source.${source.kind}`)}
      <Details source={source} />
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
