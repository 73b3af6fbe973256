/** The return timed: how, by which clicks, what damping that is, and the clicks for the rider. */
import type { ClickSetting } from '@legwork/engine'
import { judgeMeasured, type MeasuredEntry, type ReleasedAt, releasesIn, returnMarks, say } from '@legwork/trade'
import { useState } from 'react'
import { QuantityInput } from '../../../figures/quantity-input.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { SafetySign } from '../../../marks/safety-sign.tsx'
import { VerdictMark } from '../../../marks/verdict-mark.tsx'
import { Button } from '../../../ui/button.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Shown, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { clicksFor, dampingAt, wantedDamping } from './return-asked.ts'
import { ReturnForm } from './return-form.tsx'
import { type KnownSetting, returnSetting, riderOf } from './return-known.ts'
import { ReturnSettings } from './return-settings.tsx'
import { clicksWorkings } from './return-workings.tsx'
import './press.css'
import './return.css'

type Phase = Exclude<MeasuredEntry['phase'], 'during'>
const gravity = 9.80665

/** What moves, weighed: kept as the force that it weighs. */
function useMoving(phase: Phase) {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const weighed = state.measured.findLast((one) => one.what === 'moving-weight')
  return {
    weighed: weighed ?? null,
    mass: weighed ? weighed.reading.value / gravity : null,
    refusal,
    keep: (mass: number) =>
      void write('measured', {
        what: 'moving-weight',
        leg: null,
        phase,
        reading: { value: mass * gravity, measure: 'N', instrument: null, how: null },
      }),
  }
}

function Moving({ mass, keep, refusal }: Omit<ReturnType<typeof useMoving>, 'weighed'>) {
  const [value, setValue] = useState<number | null>(mass)
  return (
    <>
      <form
        className="keep-line"
        onSubmit={(event) => {
          event.preventDefault()
          if (value !== null && value > 0.05) keep(value)
        }}
      >
        <QuantityInput
          label={say('return.moving')}
          hint={say('return.moving.how')}
          suggestion={<>≈ {say('return.moving.usual')}</>}
          kind="mass"
          digits={2}
          value={value}
          onChange={setValue}
        />
        <Button kind="second" type="submit">
          {say('return.moving.keep')}
        </Button>
      </form>
      <Refused refusal={refusal} />
    </>
  )
}

function useSetting(phase: Phase, { mass, weighed }: ReturnType<typeof useMoving>): KnownSetting | null {
  const { state, sheet, instruments } = useJobView()
  return returnSetting({ state, sheet, instruments, phase }, weighed, mass)
}

/** The clicks whose damping suits this rider, where two settings or more were timed. */
function ForRider({ all, setting }: { all: readonly ReleasedAt[]; setting: KnownSetting }) {
  const { state, bike, sheet } = useJobView()
  const settings = all.flatMap((at): ClickSetting[] => {
    const found = dampingAt(at, setting)
    return at.clicks !== null && found.ok && found.found.damping !== null
      ? [{ clicks: at.clicks, damping: found.found.damping }]
      : []
  })
  const rider = state.setUp && riderOf(sheet, bike, state.setUp.load)
  if (settings.length < 2 || !state.setUp || !rider) return null
  const pressure = setting.spring.kind === 'coil' ? null : state.setUp.pressure
  const wanted = wantedDamping(setting.spring, { pressure, ...rider })
  if (!wanted.ok) return null
  const found = clicksFor(settings, wanted.found)
  if (!found.ok) return <p className="book">{say('return.for-rider.refused', { because: found.because })}</p>
  const { clicks, band } = found.found
  const usualAngle =
    'headAngle' in rider && rider.headAngle.source.kind === 'common-practice' ? rider.headAngle.value : null
  return (
    <ValueRow
      name={<b>{say('return.for-rider')}</b>}
      note={
        <>
          {say('return.for-rider.note', { ratio: rider.ratio })};{' '}
          {usualAngle !== null && `${say('return.for-rider.angle', { angle: usualAngle })}; `}
          {band
            ? say('doubt.band', { low: Math.max(0, band[0]).toFixed(1), high: band[1].toFixed(1) })
            : say('return.for-rider.two')}
        </>
      }
    >
      <WorkedOut
        value={clicks}
        kind="number"
        digits={1}
        of={say('keep.clicks')}
        size="row"
        workings={() => clicksWorkings(settings, wanted.found, rider, pressure)}
      />
    </ValueRow>
  )
}

/** The slowest mean over the fastest: the adjuster at work. */
function ClosedOverOpen({ all }: { all: readonly ReleasedAt[] }) {
  const { sheet } = useJobView()
  const [open, closed] = [all[0], all.at(-1)]
  if (!open || !closed || open === closed || closed.clicks !== 0) return null
  const ratio = closed.time / open.time
  const { verdict } = judgeMeasured('return-closed-over-open', ratio, sheet)
  return (
    <ValueRow name={<b>{say('return.closed-open')}</b>} note={say('return.closed-open.note')}>
      <span className="quantity row" translate="no">
        {ratio.toFixed(1)}
      </span>
      <span className="verdict">
        <VerdictMark verdict={verdict} /> {say(`verdict.${verdict}`)}
      </span>
    </ValueRow>
  )
}

export function ReturnTest({ phase }: { phase: Phase }) {
  const { state, sheet } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const moving = useMoving(phase)
  const setting = useSetting(phase, moving)
  if (!sheet) return <p>{say('bench-test.no-spring')}</p>
  const marks = returnMarks(sheet.kind, sheet.stroke.value)
  const all = releasesIn(state.measured, phase)
  const kept =
    (phase === 'done' ? state.setting?.clicks.rebound : null) ?? state.snapshot.rebound?.reading?.value ?? null
  const atCard = all.find(({ clicks }) => clicks === kept) ?? all[0]
  const written = state.measured.findLast((one) => one.what === 'return-time' && one.phase === phase)
  const isWritten = atCard && written && Math.abs(written.reading.value - atCard.time) < 5e-4
  return (
    <>
      <header>
        <h1>{say('return.title')}</h1>
        <p className="note">{say('return.not-begun')}</p>
        <p>{say('return.how')}</p>
        <p className="book caution">
          <SafetySign sign="warning" size={28} /> <b>{say('work.caution')}</b> {say('return.caution')}
        </p>
      </header>
      <div className="press-figures marks">
        <div>
          <p className="label">{say('return.let-go')}</p>
          <p>
            <Shown value={marks.from} measure="m" size="second" />
          </p>
        </div>
        <div>
          <p className="label">{say('return.timed-to')}</p>
          <p>
            <Shown value={marks.to} measure="m" size="second" />
          </p>
        </div>
      </div>
      <div className="two-columns">
        <div>
          <ReturnForm phase={phase} marks={marks} clicks={kept} adjustable={sheet.clicks.rebound !== null} />
          <Moving key={moving.mass} {...moving} />
        </div>
        <SideHead place="above" title={say('return.settings')} note={setting ? null : say('return.needs-mass')}>
          <ReturnSettings all={all} setting={setting} />
          {setting?.from.friction.kind === 'common-practice' && all.length > 0 && (
            <p className="book">{say('return.friction-usual', { friction: text(setting.friction, 'N') })}</p>
          )}
          <ClosedOverOpen all={all} />
          {setting && <ForRider all={all} setting={setting} />}
          {atCard &&
            (isWritten ? (
              <p className="book">{say('return.written', { time: text(written.reading.value, 's') })}</p>
            ) : (
              <Button
                kind="second"
                onPress={() =>
                  void write('measured', {
                    what: 'return-time',
                    leg: null,
                    phase,
                    reading: {
                      value: Math.round(atCard.time * 1e3) / 1e3,
                      measure: 's',
                      instrument: atCard.readings[0]?.reading.instrument ?? null,
                      how: null,
                    },
                  })
                }
              >
                {say('return.write')}
              </Button>
            ))}
          <Refused refusal={refusal} />
        </SideHead>
      </div>
    </>
  )
}
