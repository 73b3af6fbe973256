/** The press: filled, pressed down stop by stop and let back, and what the readings say. */
import { type MeasuredEntry, nextStop, type Pressed, passedKey, pressesIn, pressHold, say } from '@legwork/trade'
import { useState } from 'react'
import { useJobView } from '../job-view.tsx'
import { askedIn, plannedStops, pressedSpring, truePressure } from './press-asked.ts'
import { PressBegin } from './press-begin.tsx'
import { PressReadings } from './press-readings.tsx'
import { PressResult } from './press-result.tsx'
import { PressStopForm } from './press-stop.tsx'
import './press.css'

interface PressTestProps {
  phase: Exclude<MeasuredEntry['phase'], 'during'>
}

export function PressTest({ phase }: PressTestProps) {
  const { state, sheet, instruments } = useJobView()
  const [passed, setPassed] = useState<ReadonlySet<number>>(new Set())
  /** Stopped before the last stop: what was read is looked at. */
  const [isEnough, setEnough] = useState(false)
  /** A further press is asked for: once more, or at half the pressure. */
  const [further, setFurther] = useState<'again' | 'half' | null>(null)
  const presses = pressesIn(state.measured, phase)
  const press = presses.at(-1) ?? null
  const spring = pressedSpring(sheet, state, phase)
  const sag = spring && (state.setUp?.sag ?? 0.2) * spring.stroke
  const planOf = (one: Pressed): readonly number[] =>
    spring
      ? plannedStops(spring, spring.kind === 'coil' ? null : truePressure(one.filling, instruments), sag)
      : one.stops.map(({ stroke }) => stroke)
  const planned = press ? planOf(press) : []
  const next = press && !isEnough ? nextStop(planned, press, passed) : null
  const asked = askedIn(state, sheet, instruments, phase)
  const first = presses[0] ?? null
  if (!press || further)
    return (
      <PressBegin
        phase={phase}
        half={further === 'half' && first ? first.filling.reading.value / 2 : null}
        minutes={Math.ceil(
          (spring ? plannedStops(spring, spring.kind === 'coil' ? null : 0, sag).length : 14) *
            2 *
            ((pressHold + 10) / 60),
        )}
        onBegun={() => {
          setFurther(null)
          setPassed(new Set())
          setEnough(false)
        }}
        onLeave={press ? () => setFurther(null) : null}
      />
    )
  return (
    <>
      {next && (
        <PressStopForm
          key={`${press.filling.entry} ${next.stroke} ${next.way}`}
          phase={phase}
          press={press}
          next={next}
          planned={planned.filter((stroke) => !passed.has(passedKey(stroke)))}
          spring={spring}
          onEnough={() => setEnough(true)}
          onPass={() => setPassed(new Set([...passed, passedKey(next.stroke)]))}
        />
      )}
      {!next && (
        <header>
          <h1>{say('press.title')}</h1>
          <p className="note">{say('press.through')}</p>
        </header>
      )}
      {!spring && <p>{say('bench-test.no-spring')}</p>}
      {!next && <PressResult phase={phase} asked={asked} onFurther={setFurther} />}
      {presses.toReversed().map((one) => (
        <PressReadings key={one.filling.entry} press={one} />
      ))}
    </>
  )
}
