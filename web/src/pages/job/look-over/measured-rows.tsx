/** Measurements, worst first: mark, strip of limits, value and word. */
import { say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { LimitStrip } from '../../../charts/limit-strip.tsx'
import { VerdictMark } from '../../../marks/verdict-mark.tsx'
import { stripOf } from '../bench-tests/strip-of.ts'
import { ByWhom } from '../by-whom.tsx'
import { type JudgedMeasurement, measurable } from '../findings.ts'
import { useJobView } from '../job-view.tsx'
import { Shown, useShownText } from '../readings.tsx'
import './measured-rows.css'

const letters = 'abcdefghijklmnop'

function Strip({ judged }: { judged: JudgedMeasurement }) {
  const text = useShownText()
  const { entry, what, finding, halfWidth } = judged
  const { measure, fine, share } = measurable[what]
  if (finding.zones.length === 0) return <span className="book">{say('judged.no-limit')}</span>
  const strip = stripOf(entry.reading.value, finding.zones, halfWidth)
  const bare = (value: number) => text(value, measure, fine, share).split('\u00a0')[0] ?? ''
  return (
    <LimitStrip
      {...strip}
      format={bare}
      label={say('look.strip', {
        reading: text(entry.reading.value, measure, fine, share),
        verdict: say(`verdict.${finding.verdict}`),
        limits: strip.limits.map(bare).join(', '),
      })}
    />
  )
}

function MeasuredRow({ judged, letter }: { judged: JudgedMeasurement; letter: string }) {
  const { instruments } = useJobView()
  const { entry, what, finding } = judged
  const { measure, fine, share } = measurable[what]
  const name = entry.leg
    ? say('look.measured.leg', { what: say(`measure.${what}`), leg: say(`leg.${entry.leg}`) })
    : say(`measure.${what}`)
  const instrument = instruments.find((one) => one.id === entry.reading.instrument)
  return (
    <li className="measured">
      <span className="balloon" translate="no" aria-hidden="true">
        {letter}
      </span>
      <VerdictMark verdict={finding.verdict} />
      <div className="what">
        <b>{name}</b>
        <small className="book">
          {instrument && <span translate="no">{instrument.name}, </span>}
          <ByWhom made={entry} />
        </small>
      </div>
      <div className="strip">
        <Strip judged={judged} />
      </div>
      <div className="value">
        <Shown value={entry.reading.value} measure={measure} fine={fine} share={share} size="row-small" hand />
        <small className="word">{say(`verdict.${finding.verdict}`)}</small>
      </div>
    </li>
  )
}

interface MeasuredRowsProps {
  judged: readonly JudgedMeasurement[]
  /** Instead of what nobody measured. */
  none?: string
  /** A line after the measurements, judged by eye. */
  children?: ReactNode
}

export function MeasuredRows({ judged, none = say('look.measured.none'), children }: MeasuredRowsProps) {
  return (
    <>
      <ol className="measured-rows">
        {judged.map((one, index) => (
          <MeasuredRow key={one.entry.entry} judged={one} letter={letters[index] ?? ''} />
        ))}
        {children}
      </ol>
      {judged.length === 0 && <p className="book none-yet">{none}</p>}
    </>
  )
}
