/** Work: one step at a time, its figure largest, a tick a leg, and what shuts the way on. */
import { isStepId, procedureSteps, say } from '@legwork/trade'
import { useEffect, useState } from 'react'
import { useMeasures } from '../../../figures/world.tsx'
import { Button, LinkButton } from '../../../ui/button.tsx'
import { TextField } from '../../../ui/field.tsx'
import { chapterHref } from '../job-address.ts'
import { pumpsOf, useJobView, useWriting, wrenchesOf } from '../job-view.tsx'
import { useLastUsed, useUsedText } from '../last-used.ts'
import { ReadWithPick, useReadWith } from '../read-with.tsx'
import { Refused } from '../refused.tsx'
import { askedReading, type FigureTools, figureOf, instrumentsFor } from '../step-figure.ts'
import { StepSection } from '../step-section.tsx'
import { useWide } from '../use-wide.ts'
import { MaximumOnUnit } from './maximum-on-unit.tsx'
import { StepDrawing } from './step-drawing.tsx'
import { extrasOf } from './step-extras.ts'
import { missingFor, noDraft, openPlace, type Place, type TickDraft, tickBody } from './ticking.ts'
import { WorkBar } from './work-bar.tsx'
import { StepHead } from './work-head.tsx'
import { Places } from './work-places.tsx'
import './work.css'

/** A foot switch is a keyboard with one key: space or page down. */
function useFootSwitch(on: () => void, back: () => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const target = event.target instanceof HTMLElement ? event.target : null
      if (target?.closest('input, textarea, select, button, a, [role=checkbox]')) return
      if (event.key === ' ' || event.key === 'PageDown' || event.key === 'ArrowRight') {
        event.preventDefault()
        on()
      }
      if (event.key === 'ArrowLeft' || event.key === 'PageUp') back()
    }
    globalThis.addEventListener('keydown', press)
    return () => globalThis.removeEventListener('keydown', press)
  })
}

function Step({ index, setIndex }: { index: number; setIndex: (index: number) => void }) {
  const { state, instruments, keepText } = useJobView()
  const { write, refusal } = useWriting()
  const measures = useMeasures()
  const wide = useWide()
  const [draft, setDraft] = useState<TickDraft>(noDraft)
  const pumps = pumpsOf(instruments)
  const wrenches = wrenchesOf(instruments)
  const step = state.steps[index]
  // A wrench that suits one step may be far too large for another: each step has its own.
  const [pickedWrench, pickWrench] = useLastUsed(`wrench.${step?.step}`, wrenches)
  const [pickedPump, pickPump] = useLastUsed('pump', pumps)
  const tools: FigureTools = {
    wrenches,
    pickedWrench,
    pump: pumps.find((one) => one.id === pickedPump) ?? pumps[0] ?? null,
  }
  const asked = step ? askedReading(step) : null
  const readWith = useReadWith(`step.${step?.step}`, instrumentsFor(asked))
  const what = step && isStepId(step.step) ? (procedureSteps[step.step].used ?? null) : null
  const [usedText, setUsedText, rememberUsedText] = useUsedText(what)
  const figure = step ? figureOf(step, state, tools) : { kind: 'none' as const }
  const tick = async (place: Place) => {
    if (!step || missingFor(step, place, draft)) return
    const set = figure.kind === 'torque' ? figure.set : null
    const instrument =
      figure.kind === 'torque' ? figure.wrench.id : figure.kind === 'air' ? (tools.pump?.id ?? null) : readWith.picked
    const used = what && usedText.trim() !== '' ? await keepText(usedText.trim()) : null
    if (!(await write('step-done', tickBody(step, place, draft, { wrenchSet: set, instrument, used })))) return
    rememberUsedText()
    for (const { what: named, measure } of extrasOf(step)) {
      const value = draft.also[named] ?? null
      const reading = value === null ? null : { value, measure, instrument: null, how: null }
      if (reading) await write('measured', { what: named, leg: null, phase: 'during', reading })
    }
    setDraft({ ...draft, also: {} })
  }
  const place = step ? openPlace(step) : null
  useFootSwitch(
    () => (place ? void tick(place) : setIndex(Math.min(state.steps.length - 1, index + 1))),
    () => setIndex(Math.max(0, index - 1)),
  )
  if (!step || !isStepId(step.step)) return null
  return (
    <div className="work-step">
      <StepHead index={index} />
      <div
        className={procedureSteps[step.step].figure === 'drained' ? 'figures drained-figures' : 'figures'}
        data-measures={measures.pressure}
      >
        <StepDrawing
          figure={figure}
          drained={procedureSteps[step.step].figure === 'drained'}
          wrenches={tools.wrenches}
          onWrench={pickWrench}
          pumps={pumps}
          onPump={pickPump}
        />
      </div>
      {figure.kind === 'none' && !wide && <StepSection step={step} />}
      {procedureSteps[step.step].fills && <MaximumOnUnit />}
      <Places
        step={step}
        draft={draft}
        setDraft={setDraft}
        onTick={(at) => void tick(at)}
        beside={
          what &&
          place && (
            <TextField
              label={say(`work.used.${what}`)}
              hint={say('work.used.note')}
              value={usedText}
              onChange={setUsedText}
            />
          )
        }
      />
      <ReadWithPick {...readWith} />
      <Refused refusal={refusal} />
      {state.currentStep !== null && state.currentStep !== index && (
        <Button kind="second" size="row" onPress={() => setIndex(state.currentStep ?? 0)}>
          {say('work.here')}
        </Button>
      )}
      <p className="book keys">{say('work.keys')}</p>
      <WorkBar index={index} place={place} setIndex={setIndex} />
    </div>
  )
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
  return <Step key={index} index={index} setIndex={setIndex} />
}
