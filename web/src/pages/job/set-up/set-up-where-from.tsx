/** Where the pressure comes from: the formula, every input with its source, and what the number hangs on most. */
import { type SourceKind, say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { SourceMark } from '../../../marks/source-mark.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { useJobView } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'
import { springRows } from '../spring-rows.tsx'
import { airSpringOf, type DoubtPart, inputDoubt, type StartInputs, type StartPressure } from '../start-pressure.ts'
import { loadWorkings, riderRows } from './set-up-workings.tsx'

function SourcedRow({ kind, name, children }: { kind: SourceKind | undefined; name: ReactNode; children: ReactNode }) {
  return (
    <ValueRow
      name={
        <>
          {kind && <SourceMark kind={kind} />} {name}
        </>
      }
    >
      {children}
    </ValueRow>
  )
}

/** One standard uncertainty of an input, in words. */
function useDoubtWords(): (part: DoubtPart) => string {
  const text = useShownText()
  return ({ input }) => {
    const u = inputDoubt[input]
    const percent = (u * 100).toFixed(1)
    if (input === 'share') return say('set-up.hangs-on.share', { u: Math.round(u * 100) })
    if (input === 'mass') return say('set-up.hangs-on.mass', { u: `${u} kg` })
    if (input === 'port') return say('set-up.hangs-on.port', { u: text(u, 'm', true) })
    return say(`set-up.hangs-on.${input}`, { u: percent })
  }
}

/** The three that move the pressure most. */
function HangsOn({ worked }: { worked: StartPressure }) {
  const words = useDoubtWords()
  return (
    <>
      <h3>{say('set-up.hangs-on')}</h3>
      {worked.doubtOf.slice(0, 3).map((part) => (
        <ValueRow key={part.input} name={words(part)}>
          <span translate="no">±&thinsp;</span>
          <QuantityText value={part.moves} kind="pressure" digits={1} />
        </ValueRow>
      ))}
      <p className="book">{say('set-up.hangs-on.note')}</p>
    </>
  )
}

export function WhereFrom({ inputs, worked }: { inputs: StartInputs; worked: StartPressure }) {
  const { rider } = useJobView()
  const text = useShownText()
  const { sheet, spacers } = inputs
  const spring = airSpringOf(sheet, spacers)
  const posture = rider?.posture ?? null
  return (
    <SideHead
      place="above"
      className="where-from"
      title={say('set-up.where-from', { pressure: text(worked.pressure, 'Pa') })}
    >
      <p className="formula" translate="no">
        <span>
          F = (p⁺ − p<sub>a</sub>)·A⁺ − (p⁻ − p<sub>a</sub>)·A⁻
        </span>{' '}
        <span>
          + Σ (p<sub>L</sub> − p<sub>a</sub>)·A<sub>L</sub>
        </span>
      </p>
      {riderRows(inputs, posture).map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: inputs of one sum keep their places
        <SourcedRow key={index} kind={row.source?.kind} name={row.name}>
          {row.shown}
        </SourcedRow>
      ))}
      <ValueRow name={say('set-up.row.load')}>
        <WorkedOut value={worked.load} kind="force" digits={0} workings={() => loadWorkings(inputs, posture, 'load')} />
      </ValueRow>
      <SourcedRow kind="common-practice" name={say('set-up.row.sag', { percent: Math.round(inputs.sag * 100) })}>
        <QuantityText value={inputs.sag * spring.stroke} kind="length" />
      </SourcedRow>
      <HangsOn worked={worked} />
      <details className="more-inputs">
        <summary>{say('set-up.sources')}</summary>
        {springRows(sheet, spring).map((row, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: dimensions of one sheet keep their places
          <SourcedRow key={index} kind={row.source?.kind} name={row.name}>
            {row.shown}
          </SourcedRow>
        ))}
        <p className="book">{say('set-up.lower-carries', { force: text(worked.lowerForce, 'N') })}</p>
        <p className="book">{say('set-up.formula')}</p>
      </details>
    </SideHead>
  )
}
