/** One stop of the press: where to go, the hold with its reason, and what the scale shows. */
import { holdFriction, type Spring } from '@legwork/engine'
import { type MeasuredEntry, type NextStop, type Pressed, pressHold, pressMost, readStops, say } from '@legwork/trade'
import { useEffect, useMemo, useRef, useState } from 'react'
import { QuantityInput } from '../../../figures/quantity-input.tsx'
import { SafetySign } from '../../../marks/safety-sign.tsx'
import { Button } from '../../../ui/button.tsx'
import { Choice } from '../../../ui/choice.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { ReadWithPick, useReadWith } from '../read-with.tsx'
import { Shown, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { foreseen, truePressure } from './press-asked.ts'
import { StrikeReading } from './strike-reading.tsx'
import { useHold } from './use-hold.ts'

const gravity = 9.80665
/** A scale shows kilograms or newtons; each station keeps to its own. */
const scaleKey = 'legwork.press.scale'
type ScaleShows = 'kg' | 'N'

interface PressStopProps {
  phase: MeasuredEntry['phase']
  press: Pressed
  next: NextStop
  planned: readonly number[]
  spring: Spring | null
  onPass: () => void
  /** What was read is enough. */
  onEnough: () => void
}

/** Space or a foot switch begins the hold; then the hand is at the scale's number. */
function useFootBegins(begin: () => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const target = event.target instanceof HTMLElement ? event.target : null
      if (event.key !== ' ' || target?.closest('input, select, button, a')) return
      event.preventDefault()
      begin()
    }
    globalThis.addEventListener('keydown', press)
    return () => globalThis.removeEventListener('keydown', press)
  })
}

/** What a short hold would read as friction, in this spring's own figures. */
function WhyHold({
  spring,
  pressure,
  strokes,
}: {
  spring: Spring
  pressure: number | null
  strokes: readonly number[]
}) {
  const says = useMemo(() => {
    if (strokes.length === 0) return null
    const after = (hold: number) => {
      const { friction } = holdFriction(spring, { strokes, hold, ...(pressure === null ? {} : { pressure }) })
      return friction.map((newton) => Math.round(newton)).join('–')
    }
    return say('press.hold.why', { five: after(5), hold: pressHold, held: after(pressHold) })
  }, [spring, pressure, strokes])
  return says && <p className="book why">{says}</p>
}

export function PressStopForm({ phase, press, next, planned, spring, onPass, onEnough }: PressStopProps) {
  const { instruments } = useJobView()
  const { write, refusal } = useWriting()
  const text = useShownText()
  const scale = useReadWith('press', ['scale'])
  const [shows, setShows] = useState<ScaleShows>(() => (localStorage.getItem(scaleKey) === 'N' ? 'N' : 'kg'))
  const [force, setForce] = useState<number | null>(null)
  const { held, begin } = useHold(`${next.stroke} ${next.way}`)
  const form = useRef<HTMLFormElement>(null)
  const begins = () => {
    begin()
    form.current?.querySelector('input[type=text]')?.closest('input')?.focus()
  }
  useFootBegins(begins)
  const pressure = !spring || spring.kind === 'coil' ? null : truePressure(press.filling, instruments)
  const expected = spring && foreseen(spring, pressure, next.stroke)
  const left = held === null ? null : Math.ceil(pressHold - held)
  const done = press.stops.filter((stop) => stop[next.way] !== null).length
  const all = next.way === 'pressing' ? planned.length : press.stops.filter(({ pressing }) => pressing).length
  const toGo = next.way === 'pressing' ? 2 * all - done : all - done
  const isFarOff = (newton: number) =>
    expected !== null && Math.abs(newton - expected) > Math.max(120, 0.4 * expected)
      ? say('press.off', {
          force: shows === 'kg' ? `${(expected / gravity).toFixed(1)} ${say('press.kg')}` : text(expected, 'N'),
        })
      : null
  const keep = async () => {
    if (force === null || force > 1.5 * pressMost.force) return
    await write('measured', {
      what: 'press-force',
      leg: null,
      phase,
      reading: { value: force, measure: 'N', instrument: scale.picked, how: null },
      press: {
        of: press.filling.entry,
        stroke: next.stroke,
        way: next.way,
        held: held === null ? null : Math.round(held * 10) / 10,
      },
    })
  }
  const newton = shows === 'N'
  const last = press.stops
    .flatMap(({ pressing, releasing }) => [pressing, releasing])
    .reduce((late, one) => (one && (!late || one.entry > late.entry) ? one : late), null)
  return (
    <form
      ref={form}
      className="press-stop"
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
    >
      <header>
        <h1>{say(`press.${next.way}`)}</h1>
        <p className="note">
          {say('press.stop-of', { n: done + 1, all })} ·{' '}
          {say('press.minutes', { n: Math.ceil((toGo * (pressHold + 10)) / 60) })}
        </p>
        <p className="book caution">
          <SafetySign sign="warning" size={28} /> <b>{say('work.caution')}</b> {say('press.caution')}
        </p>
        {last && (
          <p className="book before">
            {say('press.before', { stroke: text(last.press?.stroke ?? 0, 'm') })} <StrikeReading of={last} />
          </p>
        )}
      </header>
      <div className="press-figures">
        <p>
          <Shown value={next.stroke} measure="m" size="step" />
        </p>
        <div className="hold">
          {left === null ? (
            <>
              <Button kind="second" size="work" onPress={begins}>
                {say('press.hold.begin', { seconds: pressHold })}
              </Button>
              <p className="book">{say('press.hold.none')}</p>
            </>
          ) : (
            <>
              <p className="label">{say(left > 0 ? 'press.hold.left' : 'press.hold.over')}</p>
              <p role="timer">
                <Shown
                  value={Math.max(0, left > 0 ? left : Math.floor(held ?? 0))}
                  measure="s"
                  size="second"
                  digits={0}
                />
              </p>
            </>
          )}
        </div>
      </div>
      <div className="press-reading">
        <QuantityInput
          key={shows}
          label={say('press.scale-shows')}
          kind={newton ? 'force' : 'mass'}
          digits={newton ? 0 : 1}
          value={force === null ? null : newton ? force : force / gravity}
          onChange={(value) => setForce(value === null ? null : newton ? value : value * gravity)}
          judge={(value) => isFarOff(newton ? value : value * gravity)}
        />
        <Choice
          label={say('press.scale-in')}
          options={[
            { value: 'kg', label: say('press.kg') },
            { value: 'N', label: say('press.newton') },
          ]}
          value={shows}
          onChange={(one) => {
            setShows(one)
            localStorage.setItem(scaleKey, one)
          }}
        />
        <ReadWithPick {...scale} />
      </div>
      {spring && <WhyHold spring={spring} pressure={pressure} strokes={planned} />}
      <Refused refusal={refusal} />
      <div className="press-bar">
        {next.way === 'pressing' ? (
          <Button kind="second" onPress={onPass}>
            {say('press.pass')}
          </Button>
        ) : readStops(press).length >= 3 ? (
          <Button kind="second" onPress={onEnough}>
            {say('press.enough')}
          </Button>
        ) : (
          <span />
        )}
        <Button kind="main" size="work" type="submit">
          {say('press.keep')}
        </Button>
      </div>
    </form>
  )
}
