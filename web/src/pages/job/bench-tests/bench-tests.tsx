/** The press and the timed return of one phase: how they stand, and the way into each. */
import { type Chapter, type MeasuredEntry, pressesIn, readStops, releasesIn, say } from '@legwork/trade'
import { useSearch } from 'wouter'
import { LinkButton } from '../../../ui/button.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import './bench-test-words.ts'
import { judgedMeasurements } from '../findings.ts'
import { chapterHref } from '../job-address.ts'
import { useJobView } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'
import { PressTest } from './press-test.tsx'
import { ReturnTest } from './return-test.tsx'

type Phase = Exclude<MeasuredEntry['phase'], 'during'>
const chapterOf = (phase: Phase): Chapter => (phase === 'done' ? 'prove' : 'look-over')

/** Which test the address names: a page of its own while it runs, so that a reload comes back to it. */
export function useBenchTest(): 'press' | 'return' | null {
  const test = new URLSearchParams(useSearch()).get('test')
  return test === 'press' || test === 'return' ? test : null
}

export function BenchTest({ test, phase }: { test: 'press' | 'return'; phase: Phase }) {
  const { stream } = useJobView()
  const chapter = chapterOf(phase)
  return (
    <div className="bench-test">
      {test === 'press' ? <PressTest phase={phase} /> : <ReturnTest phase={phase} />}
      <p className="back">
        <LinkButton kind="second" size="row" arrow="back" href={chapterHref(stream, chapter)}>
          {say('bench-test.back', { chapter: say(`chapter.${chapter}`) })}
        </LinkButton>
      </p>
    </div>
  )
}

/** Found already: the figure that was written down and how it is judged. */
function useFound(phase: Phase): (what: 'friction' | 'return-time') => { value: string; verdict: string } | null {
  const { state, sheet, instruments } = useJobView()
  const text = useShownText()
  const judged = judgedMeasurements(state.measured, sheet, instruments, phase)
  return (what) => {
    const one = judged.find((measurement) => measurement.what === what)
    return one
      ? {
          value: text(one.entry.reading.value, one.entry.reading.measure),
          verdict: say(`verdict.${one.finding.verdict}`),
        }
      : null
  }
}

export function BenchTests({ phase }: { phase: Phase }) {
  const { state, stream } = useJobView()
  const found = useFound(phase)
  const href = (test: 'press' | 'return') => `${chapterHref(stream, chapterOf(phase))}?test=${test}`
  const press = pressesIn(state.measured, phase).at(-1)
  const both = press ? readStops(press).length : 0
  const friction = found('friction')
  const returns = releasesIn(state.measured, phase)
  const time = found('return-time')
  return (
    <SideHead place="above" title={say('bench-test.tests')} note={say('bench-test.tests.note')}>
      <ValueRow
        name={<b>{say('press.title')}</b>}
        note={
          press
            ? friction
              ? say('press.found', { friction: friction.value, verdict: friction.verdict })
              : say('press.under-way', { n: both, all: press.stops.length })
            : say('press.not-begun', { minutes: 12 })
        }
      >
        <LinkButton kind="second" size="row" href={href('press')}>
          {say(press ? (friction ? 'press.look' : 'press.go-on') : 'press.open')}
        </LinkButton>
      </ValueRow>
      <ValueRow
        name={<b>{say('return.title')}</b>}
        note={time ? say('return.found', { time: time.value, verdict: time.verdict }) : say('return.not-begun')}
      >
        <LinkButton kind="second" size="row" href={href('return')}>
          {say(returns.length > 0 ? 'return.look' : 'return.open')}
        </LinkButton>
      </ValueRow>
    </SideHead>
  )
}
