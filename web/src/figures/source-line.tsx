import { type Source, say } from '@legwork/trade'
import { type ReactNode, useState } from 'react'
import { SourceMark } from '../marks/source-mark.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { clock, day } from './moment.ts'
import { useFigureWorld } from './world.tsx'
import './source-line.css'

/** How a figure was worked out: opened from its source line. */
export interface Workings {
  /** As the reader knows it, e.g. 'Pressure for the rider'. */
  title: ReactNode
  formula: ReactNode
  inputs: readonly { name: ReactNode; shown: ReactNode; source?: Source }[]
  /** What the sum leaves out, a sentence each. */
  leavesOut: readonly ReactNode[]
}

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

/** The line under a figure: its mark, its kind, its details. A worked-out one opens formula, inputs and what is left out. */
export function SourceLine({ source, workings }: { source: Source; workings?: Workings | undefined }) {
  const [open, setOpen] = useState(false)
  const line = (
    <>
      <SourceMark kind={source.kind} /> {say(`source.${source.kind}`)}
      <Details source={source} />
    </>
  )
  if (!workings) return <p className="source-line book">{line}</p>
  return (
    <>
      <button type="button" className="source-line book opens" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {line}
      </button>
      <Dialog title={workings.title} isOpen={open} onClose={() => setOpen(false)}>
        <div className="workings">
          <p className="formula book">{workings.formula}</p>
          <dl>
            {workings.inputs.map((input, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: inputs of one sum keep their places
              <div key={index}>
                <dt className="book">
                  {input.source && <SourceMark kind={input.source.kind} />} {input.name}
                </dt>
                <dd>{input.shown}</dd>
              </div>
            ))}
          </dl>
          {workings.leavesOut.map((left, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: sentences of one sum keep their places
            <p key={index} className="book">
              {left}
            </p>
          ))}
        </div>
      </Dialog>
    </>
  )
}
