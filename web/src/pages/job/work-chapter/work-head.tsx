/** The head of a step: the rule with its gates, what it is, what was done before it, the caution, what rests. */
import {
  cautionOf,
  gatePosts,
  isStepId,
  type JobState,
  procedureSteps,
  type RestKind,
  type StepDone,
  type StepId,
  type StepState,
  say,
  sayMessage,
  supplySays,
} from '@legwork/trade'
import { useMemo } from 'react'
import { type RulerGate, StepRuler } from '../../../charts/step-ruler.tsx'
import { useOwnWidth } from '../../../charts/use-own-width.ts'
import { SafetySign } from '../../../marks/safety-sign.tsx'
import { ByWhom } from '../by-whom.tsx'
import { useJobView } from '../job-view.tsx'
import { useShownText } from '../readings.tsx'
import { StillRests } from '../still-rests.tsx'
import { StepAmounts } from './step-amounts.tsx'
import '../job-words.ts'

/** The gates of the plan; the last one is the unit's leaving, shut until everything is back on it. */
function useGates(): readonly RulerGate[] {
  const { state, unit } = useJobView()
  const { steps, sheet, facts } = state
  const kind = sheet?.kind ?? unit?.kind ?? 'fork-air'
  const posts = useMemo(() => gatePosts(steps, kind, sheet), [steps, kind, sheet])
  const leaves = facts.setting === 'written' && facts.length === 'within'
  return [
    ...posts.map(({ after }) => ({ after, open: steps.slice(0, after).every((step) => step.complete) })),
    { after: steps.length, open: leaves },
  ]
}

function Ruler({ index }: { index: number }) {
  const { state } = useJobView()
  const [ruler, width] = useOwnWidth(876)
  const gates = useGates()
  const shut = gates.find((gate) => !gate.open)
  const where = say('work.step-of', { n: index + 1, all: state.steps.length })
  return (
    <div ref={ruler}>
      <StepRuler
        width={width - 8}
        states={state.steps.map((one, at) => (at === index ? 'now' : one.complete ? 'done' : 'to-come'))}
        gates={gates}
        label={shut ? `${where}. ${say('work.gate-after', { n: shut.after })}` : where}
      />
    </div>
  )
}

const doneOf = ({ done }: StepState): StepDone | null => done.right ?? done.left ?? done.once

/** The step before this one, and what was read at it. */
function Before({ index }: { index: number }) {
  const { state } = useJobView()
  const text = useShownText()
  const before = state.steps[index - 1]
  const made = before && doneOf(before)
  if (!before || !made || !isStepId(before.step)) return null
  const step = say(`step.${before.step}`)
  const read = (done: StepDone | null) => (done?.reading ? text(done.reading.value, done.reading.measure) : null)
  const [left, right, once] = [read(before.done.left), read(before.done.right), read(before.done.once)]
  const what = left && right ? say('work.before.legs', { step, left, right }) : once ? `${step}, ${once}` : step
  return (
    <p className="book before">
      {say('work.before-this')} <span translate="no">{what}.</span> <ByWhom made={made} />
    </p>
  )
}

/** A rest that this step waits in: the rings soak from the step that begins it to the one that ends it. */
function restAt(state: JobState, index: number): RestKind | null {
  const at = (key: 'begins' | 'ends') =>
    state.steps.findIndex(({ step }) => isStepId(step) && procedureSteps[step][key] === 'soak')
  const [from, to] = [at('begins'), at('ends')]
  return from !== -1 && index >= from && index <= to ? 'soak' : null
}

/** Tools and what is used up, as the procedure names them. */
function With({ step }: { step: StepId }) {
  const { tools, consumables } = procedureSteps[step]
  const all = [...tools, ...consumables.map((supply) => sayMessage(supplySays(supply)))]
  if (all.length === 0) return null
  return (
    <p className="book with">
      {say('work.with')} <span translate="no">{all.join(', ')}</span>
    </p>
  )
}

export function StepHead({ index }: { index: number }) {
  const { state, sheet } = useJobView()
  const step = state.steps[index]
  if (!step || !isStepId(step.step)) return null
  const openLeg = step.legs?.find((leg) => !step.done[leg]) ?? step.legs?.[0] ?? null
  const kind = restAt(state, index)
  const rest = state.rests.find((one) => one.kind === kind)
  return (
    <>
      <Ruler index={index} />
      <header>
        <h1>{say(`step.${step.step}`)}</h1>
        <p className="minutes">
          <b translate="no">{state.minutesDone}</b> {say('work.of-minutes', { n: state.minutesPlanned })}
        </p>
        <div className="lines">
          <p className="note">{say(`step.${step.step}.note`)}</p>
          <StepAmounts step={step} />
          <p className="book caution">
            <SafetySign sign="warning" size={28} /> <b>{say('work.caution')}</b>{' '}
            {sayMessage(cautionOf(step.step, sheet, openLeg))}
          </p>
          <With step={step.step} />
          <Before index={index} />
        </div>
        {rest && !rest.over && (
          <div className={procedureSteps[step.step].ends === kind ? 'rests waited-for' : 'rests'}>
            <StillRests rest={rest} />
          </div>
        )}
      </header>
    </>
  )
}
