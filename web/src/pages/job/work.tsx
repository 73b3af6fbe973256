/** Work: one step at a time, its figure largest, a tick a leg, and what shuts the way on. */
import { isStepId, type Leg, procedureSteps, type StepState, say, sayMessage } from '@legwork/trade'
import { useEffect, useState } from 'react'
import { StepRuler } from '../../charts/step-ruler.tsx'
import { useOwnWidth } from '../../charts/use-own-width.ts'
import { useMeasures } from '../../figures/world.tsx'
import { SafetySign } from '../../marks/safety-sign.tsx'
import { Button, LinkButton, ShutButton } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { GateNote } from '../../ui/gate-note.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import { ByWhom } from './by-whom.tsx'
import { chapterHref } from './job-address.ts'
import { pumpsOf, useJobView, useWriting, wrenchesOf } from './job-view.tsx'
import { ReadingField, Shown } from './readings.tsx'
import { Refused } from './refused.tsx'
import { StepDrawing } from './step-drawing.tsx'
import { askedReading, type FigureTools, figureOf, legAt, torques } from './step-figure.ts'
import {
  isLeg,
  missingFor,
  noDraft,
  openPlace,
  type Place,
  placesOf,
  statementKey,
  statementsAt,
  type TickDraft,
  tickBody,
} from './ticking.ts'
import './work.css'

const placeName = (place: Place): string => (isLeg(place) ? say(`leg.${place}.title`) : say('work.tick.once'))

function Statements(props: { step: StepState; place: Place; draft: TickDraft; onSay: (key: string) => void }) {
  const { step, place, draft, onSay } = props
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
        detail={say('work.said-so')}
        ticked={draft.said.has(key)}
        onTick={() => onSay(key)}
      />
    )
  })
}

function PlaceTick(props: {
  step: StepState
  place: Place
  draft: TickDraft
  setDraft: (draft: TickDraft) => void
  onTick: (place: Place) => void
}) {
  const { step, place, draft, setDraft, onTick } = props
  const done = step.done[place]
  const asked = askedReading(step)
  const missing = missingFor(step, place, draft)
  if (done)
    return (
      <div className="place">
        <TickBox label={placeName(place)} detail={<ByWhom made={done} />} ticked />
        {done.reading && <Shown value={done.reading.value} measure={done.reading.measure} hand size="row" />}
      </div>
    )
  const label = asked ? sayMessage({ ...asked.label, params: { leg: isLeg(place) ? say(`leg.${place}`) : '' } }) : ''
  return (
    <div className="place">
      {asked && (
        <ReadingField
          label={label}
          measure={asked.measure}
          value={draft.readings[place] ?? null}
          onChange={(value) => setDraft({ ...draft, readings: { ...draft.readings, [place]: value } })}
        />
      )}
      <Statements
        step={step}
        place={place}
        draft={draft}
        onSay={(key) => setDraft({ ...draft, said: new Set([...draft.said, key]) })}
      />
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

function Step({ index, setIndex }: { index: number; setIndex: (index: number) => void }) {
  const { state, instruments, stream } = useJobView()
  const { write, refusal } = useWriting()
  const measures = useMeasures()
  const [draft, setDraft] = useState<TickDraft>(noDraft)
  const [pickedWrench, pickWrench] = useState<string | null>(null)
  const pumps = pumpsOf(instruments)
  const [pickedPump, pickPump] = useState<string | null>(null)
  const [ruler, rulerWidth] = useOwnWidth(876)
  const step = state.steps[index]
  const tools: FigureTools = {
    wrenches: wrenchesOf(instruments),
    pickedWrench,
    pump: pumps.find((one) => one.id === pickedPump) ?? pumps[0] ?? null,
  }
  const figure = step ? figureOf(step, state, tools) : { kind: 'none' as const }
  const tick = async (place: Place) => {
    if (!step || missingFor(step, place, draft)) return
    const set = figure.kind === 'torque' ? figure.set : null
    const instrument =
      figure.kind === 'torque' ? figure.wrench.id : figure.kind === 'air' ? (tools.pump?.id ?? null) : null
    await write('step-done', tickBody(step, place, draft, { wrenchSet: set, instrument }))
  }
  const last = index === state.steps.length - 1
  const next = () => setIndex(Math.min(state.steps.length - 1, index + 1))
  const place = step ? openPlace(step) : null
  useEffect(() => {
    // A foot switch is a keyboard with one key: space or page down.
    const press = (event: KeyboardEvent) => {
      const target = event.target instanceof HTMLElement ? event.target : null
      if (target?.closest('input, textarea, select, button, a, [role=checkbox]')) return
      if (event.key === ' ' || event.key === 'PageDown' || event.key === 'ArrowRight') {
        event.preventDefault()
        if (place) void tick(place)
        else next()
      }
      if (event.key === 'ArrowLeft' || event.key === 'PageUp') setIndex(Math.max(0, index - 1))
    }
    globalThis.addEventListener('keydown', press)
    return () => globalThis.removeEventListener('keydown', press)
  })
  if (!step || !isStepId(step.step)) return null
  const words = procedureSteps[step.step]
  const blocked = index === state.currentStep ? (state.next.blocked ?? (place ? null : state.ahead)) : null
  const shutAct = place ? say('work.tick.first', { what: placeName(place) }) : ''
  return (
    <div className="work-step">
      <div ref={ruler}>
        <StepRuler
          width={rulerWidth - 8}
          states={state.steps.map((one, at) => (at === index ? 'now' : one.complete ? 'done' : 'to-come'))}
          label={say('work.step-of', { n: index + 1, all: state.steps.length })}
        />
      </div>
      <header>
        <h1>{say(`step.${step.step}`)}</h1>
        <p className="minutes">
          <b translate="no">{state.minutesDone}</b> {say('work.of-minutes', { n: state.minutesPlanned })}
        </p>
        <div className="lines">
          <p className="note">{say(`step.${step.step}.note`)}</p>
          <p className="book caution">
            <SafetySign sign="warning" size={28} /> <b>{say('work.caution')}</b> {say(`step.${step.step}.caution`)}
          </p>
        </div>
      </header>
      <div className="figures" data-measures={measures.pressure}>
        <StepDrawing figure={figure} drained={words.figure === 'drained'} />
      </div>
      <div className="places-row">
        {placesOf(step).map((one) => (
          <PlaceTick
            key={one}
            step={step}
            place={one}
            draft={draft}
            setDraft={setDraft}
            onTick={(at) => void tick(at)}
          />
        ))}
      </div>
      {figure.kind === 'torque' && tools.wrenches.length > 1 && (
        <Choice
          label={say('work.wrench')}
          options={tools.wrenches.map((one) => ({ value: one.id, label: <span translate="no">{one.name}</span> }))}
          value={figure.wrench.id}
          onChange={pickWrench}
        />
      )}
      {figure.kind === 'air' && pumps.length > 1 && (
        <Choice
          label={say('work.pump')}
          options={pumps.map((one) => ({ value: one.id, label: <span translate="no">{one.name}</span> }))}
          value={tools.pump?.id ?? null}
          onChange={pickPump}
        />
      )}
      <Refused refusal={refusal} />
      <p className="book keys">{say('work.keys')}</p>
      <div className="work-bar">
        <Button
          kind="second"
          size="work"
          arrow="back"
          name={index === 0 ? say('work.first') : say('work.back', { n: index })}
          onPress={() => setIndex(Math.max(0, index - 1))}
        >
          <span translate="no">{index === 0 ? '' : index}</span>
        </Button>
        {blocked ? (
          <GateNote open={false} sign={<SafetySign sign="no-pump" size={64} />}>
            {sayMessage(blocked.because)}
          </GateNote>
        ) : (
          <GateNote open={!place}>
            {place
              ? shutAct
              : last
                ? say('work.open.last')
                : say('work.open.next', { step: nextTitle(state.steps[index + 1]) })}
          </GateNote>
        )}
        {place ? (
          <ShutButton size="work" act={shutAct} why={blocked ? sayMessage(blocked.because) : shutAct} />
        ) : last ? (
          <LinkButton kind="main" size="work" arrow="forward" href={chapterHref(stream, 'prove')}>
            {say('work.to-prove')}
          </LinkButton>
        ) : (
          <Button kind="main" size="work" arrow="forward" onPress={next}>
            {say('work.next')}
          </Button>
        )}
      </div>
      {legAt(step) && null}
    </div>
  )
}

function nextTitle(step: StepState | undefined): string {
  return step && isStepId(step.step) ? say(`step.${step.step}`) : ''
}

export function Work() {
  const { state, stream } = useJobView()
  const [index, setIndex] = useState(state.currentStep ?? Math.max(0, state.steps.length - 1))
  if (!state.plan || state.plan.answer === 'no' || state.steps.length === 0)
    return (
      <div>
        <p>{say(state.plan?.answer === 'no' ? 'work.declined' : 'work.not-planned')}</p>
        <LinkButton kind="main" arrow="forward" href={chapterHref(stream, 'plan')}>
          {say('work.to-plan')}
        </LinkButton>
      </div>
    )
  return (
    <>
      <Step key={index} index={index} setIndex={setIndex} />
      {state.currentStep !== null && state.currentStep !== index && (
        <Button kind="second" size="row" onPress={() => setIndex(state.currentStep ?? 0)}>
          {say('work.here')}
        </Button>
      )}
    </>
  )
}
