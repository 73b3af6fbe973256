/** What the press says: the verdict, friction before and after, what explains the readings, the test that decides. */
import { judgeMeasured, type MeasuredEntry, pressesIn, say } from '@legwork/trade'
import { LimitStrip } from '../../../charts/limit-strip.tsx'
import { WorkedOut } from '../../../figures/workings.tsx'
import { VerdictMark } from '../../../marks/verdict-mark.tsx'
import { Button } from '../../../ui/button.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Shown, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { askedIn, furthestOff, type PressAsked } from './press-asked.ts'
import { PressChart } from './press-chart.tsx'
import type { PressFitted } from './press-fit.ts'
import { bandSays, hypothesisSays, standingOf, verdictSays } from './press-words.ts'
import { frictionWorkings, sheetForceWorkings } from './press-workings.tsx'
import { stripOf } from './strip-of.ts'
import { usePressFit } from './use-press-fit.ts'

interface PressResultProps {
  phase: Exclude<MeasuredEntry['phase'], 'during'>
  asked: PressAsked | null
  onFurther: (how: 'again' | 'half') => void
}

/** The friction, judged, with what was read as it came in, and the act that writes it among the measurements. */
function Friction({
  phase,
  asked,
  fitted,
}: Omit<PressResultProps, 'onFurther' | 'asked'> & { asked: PressAsked; fitted: PressFitted }) {
  const { state, sheet } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const { friction, frictionBand } = fitted.test
  const [low, high] = frictionBand
  const half = (high - low) / 2
  const finding = judgeMeasured('friction', friction, sheet, half)
  const written = state.measured.findLast((one) => one.what === 'friction' && one.phase === phase)
  const received = state.measured.findLast((one) => one.what === 'friction' && one.phase === 'received')
  const scale = pressesIn(state.measured, phase)
    .at(-1)
    ?.stops.find(({ pressing }) => pressing)?.pressing
  const isWritten = written !== undefined && Math.abs(written.reading.value - friction) < 0.5
  const strip = stripOf(friction, finding.zones, half)
  const stops = asked.presses.reduce((sum, { readings }) => sum + readings.length, 0)
  return (
    <SideHead place="above" title={say('press.friction')}>
      <div className="press-friction">
        <WorkedOut value={friction} kind="force" digits={0} size="row-large" workings={() => frictionWorkings(asked)} />
        <span className="verdict">
          <VerdictMark verdict={finding.verdict} /> {say(`verdict.${finding.verdict}`)}
        </span>
        <LimitStrip
          {...strip}
          format={(value) => String(Math.round(value))}
          label={say('look.strip', {
            reading: text(friction, 'N'),
            verdict: say(`verdict.${finding.verdict}`),
            limits: strip.limits.map((limit) => String(Math.round(limit))).join(', '),
          })}
        />
        <p className="book">
          {say('doubt.band', { low: String(Math.round(low)), high: text(Math.round(high), 'N') })}{' '}
          {say('press.friction.band', { n: stops })}
        </p>
      </div>
      {phase === 'done' && received && (
        <ValueRow name={say('press.friction.was')}>
          <Shown value={received.reading.value} measure="N" size="row" />
        </ValueRow>
      )}
      {isWritten ? (
        <p className="book">{say('press.friction.written', { friction: text(written.reading.value, 'N') })}</p>
      ) : (
        <Button
          kind="main"
          onPress={() =>
            void write('measured', {
              what: 'friction',
              leg: null,
              phase,
              reading: {
                value: Math.round(friction * 10) / 10,
                measure: 'N',
                instrument: scale?.reading.instrument ?? null,
                how: null,
              },
            })
          }
        >
          {say('press.friction.write')}
        </Button>
      )}
      <Refused refusal={refusal} />
    </SideHead>
  )
}

/** No sign where it rounds to nothing. */
function signedPercent(share: number): string {
  const percent = Math.round(share * 100)
  return percent === 0 ? '0' : `${percent < 0 ? '−' : '+'}${Math.abs(percent)}`
}

/** The spring itself, apart from its friction, against the sheet. */
function SpringLoad({ asked }: { asked: PressAsked }) {
  const { sheet } = useJobView()
  const text = useShownText()
  const off = furthestOff(asked)
  if (!off) return null
  const { verdict } = judgeMeasured('spring-load-off', Math.abs(off.off), sheet)
  return (
    <ValueRow
      name={<b>{say('press.spring-load')}</b>}
      note={
        <>
          {say('press.spring-load.note', { stroke: text(off.stroke, 'm'), mean: text(Math.round(off.mean), 'N') })}{' '}
          <WorkedOut value={off.sheet} kind="force" digits={0} workings={() => sheetForceWorkings(asked, off)} />
        </>
      }
    >
      <span className="quantity row" translate="no">
        {signedPercent(off.off)}
        <u> %</u>
      </span>
      <span className="verdict">
        <VerdictMark verdict={verdict} /> {say(`verdict.${verdict}`)}
      </span>
    </ValueRow>
  )
}

/** What it takes to begin moving, over what it takes to go on. */
function Breakaway({ phase, fitted }: { phase: PressResultProps['phase']; fitted: PressFitted }) {
  const { state, sheet } = useJobView()
  const text = useShownText()
  const { friction } = fitted.test
  const began = state.measured.findLast((one) => one.what === 'breakaway' && one.phase === phase)?.reading.value
  if (began === undefined || friction <= 0) return null
  const { verdict } = judgeMeasured('breakaway-ratio', began / friction, sheet)
  return (
    <ValueRow
      name={<b>{say('press.breakaway')}</b>}
      note={say('press.breakaway.note', { breakaway: text(began, 'N') })}
    >
      <span className="quantity row" translate="no">
        {(began / friction).toFixed(1)}
      </span>
      <span className="verdict">
        <VerdictMark verdict={verdict} /> {say(`verdict.${verdict}`)}
      </span>
    </ValueRow>
  )
}

function Explains({ fitted: { test } }: { fitted: PressFitted }) {
  const text = useShownText()
  return (
    <SideHead place="above" title={say('press.explains')} note={say('press.explains.note')}>
      <ol className="hypotheses">
        {test.hypotheses.map((one) => {
          const standing = standingOf(test, one)
          const band = standing === 'none' ? null : bandSays(one, text)
          return (
            <li key={one.name} className={standing}>
              <b>
                {hypothesisSays(one, text)} {band && <span className="book">({band})</span>}
              </b>
              <span className="book">{say(`press.explains.${standing}`)}</span>
            </li>
          )
        })}
      </ol>
    </SideHead>
  )
}

export function PressResult({ phase, asked, onFurther }: PressResultProps) {
  const { state, sheet, instruments } = useJobView()
  const text = useShownText()
  const before = phase === 'done' ? askedIn(state, sheet, instruments, 'received') : null
  const fitted = usePressFit(asked)
  const first = pressesIn(state.measured, phase)[0]
  const again = (
    <Button kind="second" size="row" onPress={() => onFurther('again')}>
      {say('press.again')}
    </Button>
  )
  if (!asked)
    return (
      <>
        <p>{say('press.few')}</p>
        {again}
      </>
    )
  if (fitted && 'refused' in fitted)
    return (
      <div role="alert">
        <p className="refusal">{say('press.refused')}</p>
        {fitted.refused.map(({ field, came, allowed, next }) => (
          <p key={field}>{say('quantity.refused', { came, allowed, next })}</p>
        ))}
        {again}
      </div>
    )
  if (!fitted)
    return (
      <p className="book" role="status">
        {say('press.working')}
      </p>
    )
  const { nextTest, verdict } = fitted.test
  const half = first ? text(first.filling.reading.value / 2, 'Pa') : ''
  return (
    <section className="press-result">
      <p className="verdict-says" role="status">
        {verdictSays(fitted.test, text)}
      </p>
      {verdict === 'cannot-tell' && (
        <p>{nextTest ? say('press.next.half', { pressure: half }) : say('press.next.none')}</p>
      )}
      {nextTest && (
        <div className="acts">
          <Button kind="second" onPress={() => onFurther('half')}>
            {say('press.half', { pressure: half })}
          </Button>
        </div>
      )}
      <div className="two-columns">
        <div>
          <Friction phase={phase} asked={asked} fitted={fitted} />
          <Breakaway phase={phase} fitted={fitted} />
          <SpringLoad asked={asked} />
          <Explains fitted={fitted} />
        </div>
        <div>
          <PressChart asked={asked} fitted={fitted} before={before} />
          {again}
        </div>
      </div>
    </section>
  )
}
