/** Where a step is ticked: once, or once a leg; what is read and said there first. */
import {
  isStepId,
  judgeDrained,
  type Leg,
  procedureSteps,
  type StepState,
  say,
  sayMessage,
  usualRange,
  usualWarning,
} from '@legwork/trade'
import type { ReactNode } from 'react'
import { VerdictMark } from '../../../marks/verdict-mark.tsx'
import { TickBox } from '../../../ui/tick-box.tsx'
import { ByWhom } from '../by-whom.tsx'
import { useJobView } from '../job-view.tsx'
import { ReadingField, Shown, useShownText } from '../readings.tsx'
import { askedReading, torques } from '../step-figure.ts'
import { StepExtraFields, StepExtrasWritten } from './step-extra-fields.tsx'
import { isLeg, missingFor, type Place, placesOf, statementKey, statementsAt, type TickDraft } from './ticking.ts'

export const placeName = (place: Place): string => (isLeg(place) ? say(`leg.${place}.title`) : say('work.tick.once'))

interface PlaceProps {
  step: StepState
  place: Place
  draft: TickDraft
  setDraft: (draft: TickDraft) => void
  onTick: (place: Place) => void
}

function Statements({ step, place, draft, setDraft }: Omit<PlaceProps, 'onTick'>) {
  const { sheet } = useJobView()
  return statementsAt(step, place).map((gate) => {
    const key = statementKey(gate, place)
    const leg: Leg | null = isLeg(place) ? place : null
    const washer = leg ? sheet?.legs?.[leg].washer?.value : undefined
    const label =
      gate === 'R15' && leg
        ? washer
          ? say('work.say.R15', { leg: say(`leg.${leg}`), washer })
          : say('work.say.R15.plain', { leg: say(`leg.${leg}`) })
        : gate === 'R5' || gate === 'R8' || gate === 'R11'
          ? say(`work.say.${gate}`)
          : gate
    return (
      <TickBox
        key={key}
        label={label}
        ticked={draft.said.has(key)}
        onTick={() => setDraft({ ...draft, said: new Set([...draft.said, key]) })}
      />
    )
  })
}

const isDrain = ({ step }: StepState): boolean => isStepId(step) && procedureSteps[step].figure === 'drained'

/** What the drained volume tells, beside what the sheet put in. */
function Drained({ leg, volume }: { leg: Leg; volume: number }) {
  const { sheet } = useJobView()
  const text = useShownText()
  const filled = sheet?.legs?.[leg].bathOil?.value
  if (!filled) return null
  const found = judgeDrained(volume, filled)
  return (
    <p className="book drained">
      <VerdictMark verdict={found.verdict} />{' '}
      {say('work.drained-share', {
        percent: Math.round(found.share * 100),
        filled: text(filled, 'm³'),
        says: found.says,
      })}
    </p>
  )
}

/** Oil in a leg that is far from what the sheet or practice says is most often a slip of the pen. */
function useJudge(step: StepState, place: Place): ((value: number) => string | null) | null {
  const { sheet } = useJobView()
  if (!isLeg(place) || !isStepId(step.step)) return null
  const { figure } = procedureSteps[step.step]
  const wanted = sheet?.legs?.[place].bathOil?.value
  if (figure === 'bath-oil' && wanted)
    return (value) =>
      Math.abs(value - wanted) > 1e-6 ? say('work.oil-off', { wanted: Math.round(wanted * 1e6) }) : null
  if (figure !== 'drained') return null
  const usual = usualRange('bathOil', sheet)
  if (!usual) return null
  return (value) => {
    const warning = value > usual.high ? usualWarning(value, { ...usual, low: 0 }) : null
    return warning && sayMessage(warning)
  }
}

function DonePlace({ step, place }: { step: StepState; place: Place }) {
  const { text } = useJobView()
  const done = step.done[place]
  if (!done) return null
  return (
    <div className="place">
      <TickBox label={placeName(place)} detail={<ByWhom made={done} />} ticked />
      {done.reading && (
        <Shown
          value={done.reading.value}
          measure={done.reading.measure}
          fine={askedReading(step)?.fine ?? false}
          hand
          size="row"
        />
      )}
      {done.used && (
        <p className="book" translate="no">
          {text(done.used) ?? say('book.text-gone')}
        </p>
      )}
      {done.reading && isLeg(place) && isDrain(step) && <Drained leg={place} volume={done.reading.value} />}
      <StepExtrasWritten step={step} place={place} />
    </div>
  )
}

function OpenPlace(props: PlaceProps) {
  const { step, place, draft, setDraft, onTick } = props
  const asked = askedReading(step)
  const missing = missingFor(step, place, draft)
  const judge = useJudge(step, place)
  const label = asked ? sayMessage({ ...asked.label, params: { leg: isLeg(place) ? say(`leg.${place}`) : '' } }) : ''
  return (
    <div className="place">
      <div className="place-readings">
        {asked && (
          <ReadingField
            label={label}
            measure={asked.measure}
            fine={asked.fine ?? false}
            value={draft.readings[place] ?? null}
            {...(judge ? { judge } : {})}
            onChange={(value) => setDraft({ ...draft, readings: { ...draft.readings, [place]: value } })}
          />
        )}
        {place === placesOf(step)[0] && <StepExtraFields step={step} draft={draft} setDraft={setDraft} />}
      </div>
      <Statements step={step} place={place} draft={draft} setDraft={setDraft} />
      <TickBox
        label={placeName(place)}
        detail={torques(step) ? say('work.tick.torque') : say('work.tick.plain')}
        ticked={false}
        onTick={() => onTick(place)}
        {...(missing ? { shut: sayMessage(missing) } : {})}
      />
    </div>
  )
}

/** `beside`: what is written down besides, in the column that a step done once leaves free. */
export function Places({ beside, ...props }: Omit<PlaceProps, 'place'> & { beside: ReactNode }) {
  const { step } = props
  return (
    <div className="places-row">
      {placesOf(step).map((place) =>
        step.done[place] ? (
          <DonePlace key={place} step={step} place={place} />
        ) : (
          <OpenPlace key={place} {...props} place={place} />
        ),
      )}
      {beside && <div className="place beside-ticks">{beside}</div>}
    </div>
  )
}
