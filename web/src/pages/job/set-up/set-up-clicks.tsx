/** Clicks and spacers to start from, why, and the way to the ones that stay. */
import { pressureForSag, Refusal } from '@legwork/engine'
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { WorkedOut } from '../../../figures/workings.tsx'
import { SourceMark } from '../../../marks/source-mark.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { useJobView } from '../job-view.tsx'
import { Shown, useShownText } from '../readings.tsx'
import { airSpringOf, type StartInputs } from '../start-pressure.ts'
import { endForceWorkings } from './set-up-workings.tsx'
import { perClick, type StartClicks } from './start-clicks.ts'
import { middlingRider, useStartClicks } from './use-start-clicks.ts'
import { bench, fastExponent, outcomeOf, type Standing, standing } from './what-if.ts'

function Why({ start }: { start: StartClicks }) {
  const text = useShownText()
  const { clicks, pressure, basis } = start.from
  const from = { clicks: Math.round(clicks), pressure: text(pressure, 'Pa'), rider: `${middlingRider} kg` }
  const leaves =
    start.low === start.high
      ? say('set-up.clicks.leaves-one', { one: start.low })
      : say('set-up.clicks.leaves', { low: start.low, high: start.high })
  return (
    <p className="book">
      {say(`set-up.clicks.from.${basis}`, from)}{' '}
      {say('set-up.clicks.rule', { least: text(perClick.least, 'Pa'), most: text(perClick.most, 'Pa') })} {leaves}
    </p>
  )
}

function Rebound({ inputs, pressure }: { inputs: StartInputs; pressure: number }) {
  const start = useStartClicks(inputs, pressure)
  if (!start) return <p className="book">{say('set-up.clicks.none')}</p>
  return (
    <>
      <ValueRow
        name={
          <>
            <SourceMark kind="common-practice" /> {say('set-up.clicks.rebound')}
          </>
        }
      >
        <Shown value={start.clicks} measure="clicks" size="row-small" />
      </ValueRow>
      <Why start={start} />
    </>
  )
}

/** What one spacer does at the end of the stroke while the sag stays: both forces by the same question. */
function Spacers({ inputs, now, load }: { inputs: StartInputs; now: Standing; load: number }) {
  const { sheet, spacers, sag, ambient } = inputs
  const text = useShownText()
  const more = useMemo(() => {
    try {
      const { pressure } = pressureForSag(airSpringOf(sheet, spacers + 1), { load, sag, ambient })
      return standing(sheet, pressure, { spacers: spacers + 1, oilMore: 0, there: bench })
    } catch (trouble) {
      if (trouble instanceof Refusal) return null
      throw trouble
    }
  }, [sheet, spacers, load, sag, ambient])
  const force = (at: Standing) => {
    const outcome = outcomeOf(at, load)
    return (
      <WorkedOut
        value={outcome.endForce}
        kind="force"
        digits={0}
        workings={() => endForceWorkings(sheet, at, outcome.sag.stroke, fastExponent)}
      />
    )
  }
  return (
    <>
      <ValueRow name={say('set-up.spacers.now', { n: spacers })}>{force(now)}</ValueRow>
      {more && (
        <ValueRow name={say('set-up.spacers.more', { pressure: text(more.pressure, 'Pa') })}>{force(more)}</ValueRow>
      )}
      <p className="book">
        <SourceMark kind="common-practice" /> {say('set-up.spacers.rule')}
      </p>
    </>
  )
}

const routine = ['floor', 'kerb', 'trail', 'order', 'ends', 'harsh'] as const

interface ClicksProps {
  inputs: StartInputs
  pressure: number
  standing: Standing
  load: number
}

export function Clicks({ inputs, pressure, standing: now, load }: ClicksProps) {
  const { sheet } = useJobView()
  const compression = sheet?.clicks.compression?.value ?? null
  return (
    <SideHead place="above" title={say('set-up.clicks')} note={say('set-up.clicks.note')}>
      <Rebound inputs={inputs} pressure={pressure} />
      {compression !== null && (
        <ValueRow
          name={
            <>
              <SourceMark kind="common-practice" /> {say('set-up.clicks.compression')}
            </>
          }
          note={say('set-up.clicks.open')}
        >
          <Shown value={compression} measure="clicks" size="row-small" />
        </ValueRow>
      )}
      <Spacers inputs={inputs} now={now} load={load} />
      <details className="more-inputs">
        <summary>{say('set-up.routine')}</summary>
        <ol className="routine book">
          {routine.map((step) => (
            <li key={step}>{say(`set-up.routine.${step}`)}</li>
          ))}
        </ol>
      </details>
    </SideHead>
  )
}
