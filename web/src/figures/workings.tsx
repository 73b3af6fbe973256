/** How a figure was worked out: one panel for all of them, from its formula to the calculation that repeats it. */
import type { KindName } from '@legwork/engine'
import { type Source, say } from '@legwork/trade'
import { type ReactNode, useState } from 'react'
import { Link } from 'wouter'
import { SourceMark } from '../marks/source-mark.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { type QuantityProps, QuantityText } from './quantity-text.tsx'
import { SourceDetails } from './source-details.tsx'
import './workings.css'

/** What was asked of a calculation: its input in the contract's fields and SI, and which number of the answer is shown. */
export interface Asked {
  calculation: string
  input: Readonly<Record<string, unknown>>
  /** Of the answer, e.g. `pressure` or `friction[1]`. */
  path: string
  /** What is shown is the answer times this. */
  times?: { by: number; because: string }
}

/** Everything a panel says. */
export interface Workings {
  /** As the reader knows it, e.g. 'Pressure for the rider'. */
  title: ReactNode
  formula: ReactNode
  inputs: readonly { name: ReactNode; shown: ReactNode; source?: Source }[]
  /** What the sum leaves out, a sentence each. */
  leavesOut: readonly ReactNode[]
  asked: Asked
}

/** The address that works the same number out again, with no job around it. */
export const calculationHref = ({ calculation, input }: Asked): string =>
  `/calculations/${calculation}?input=${encodeURIComponent(JSON.stringify(input))}`

function Panel({ workings, quantity }: { workings: Workings; quantity: QuantityProps }) {
  const { formula, inputs, leavesOut, asked } = workings
  const { times, calculation, path } = asked
  return (
    <div
      className="workings"
      data-calculation={calculation}
      data-path={path}
      data-times={times?.by ?? 1}
      data-kind={quantity.kind}
      data-si={quantity.value ?? undefined}
    >
      <p className="formula book" translate="no">
        {formula}
      </p>
      <p className="answer">
        <SourceMark kind="worked-out" /> <QuantityText {...quantity} size="row" />
      </p>
      <h3>{say('workings.inputs')}</h3>
      <dl>
        {inputs.map((input, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: inputs of one sum keep their places
          <div key={index}>
            <dt className="book">
              {input.source && <SourceMark kind={input.source.kind} />} {input.name}
              {input.source && (
                <small>
                  {say(`source.${input.source.kind}`)}
                  <SourceDetails source={input.source} />
                </small>
              )}
            </dt>
            <dd>{input.shown}</dd>
          </div>
        ))}
      </dl>
      {times && (
        <p className="book">
          {say('workings.times', { times: Number(times.by.toPrecision(4)), because: times.because })}
        </p>
      )}
      {leavesOut.length > 0 && <h3>{say('workings.leaves-out')}</h3>}
      {leavesOut.map((left, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: sentences of one sum keep their places
        <p key={index} className="book">
          {left}
        </p>
      ))}
      <p>
        <Link href={calculationHref(asked)} className="repeat">
          {say('workings.open', { name: calculation })}
        </Link>
      </p>
    </div>
  )
}

interface WorkingsDialogProps {
  /** Asked for only when the panel is opened: a slider that is being moved builds none. */
  workings: () => Workings
  quantity: QuantityProps
  onClose: () => void
}

function WorkingsDialog({ workings, quantity, onClose }: WorkingsDialogProps) {
  const opened = workings()
  return (
    <Dialog title={opened.title} isOpen onClose={onClose}>
      <Panel workings={opened} quantity={quantity} />
    </Dialog>
  )
}

/** A button that opens the panel of the figure it stands in or under. */
export function OpensWorkings({
  workings,
  quantity,
  className,
  children,
}: {
  workings: () => Workings
  quantity: QuantityProps
  className: string
  children: ReactNode
}) {
  const [open, setOpen] = useState(false)
  return (
    <>
      <button type="button" className={className} aria-haspopup="dialog" data-worked-out onClick={() => setOpen(true)}>
        {children}
      </button>
      {open && <WorkingsDialog workings={workings} quantity={quantity} onClose={() => setOpen(false)} />}
    </>
  )
}

/** A worked-out number in a row or a sentence: its mark leads, and it opens. */
export function WorkedOut({ workings, ...quantity }: QuantityProps & { kind: KindName; workings: () => Workings }) {
  return (
    <OpensWorkings className="worked-out" workings={workings} quantity={quantity}>
      <SourceMark kind="worked-out" size={13} /> <QuantityText {...quantity} />
    </OpensWorkings>
  )
}
