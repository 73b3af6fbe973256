/** Whatever a gate asks of a tick, the page of its step asks for: every plan is worked to its end by what pages write. */
import { isStepId, procedureSteps, type StepState } from '@legwork/trade'
import { psi, sheetOfDemo, WrittenJob, waitFor } from '@legwork/trade/journal/written-job.ts'
import { expect, it } from 'vitest'
import { askedReading, figureOf, statementsOf, type Wrench } from '../step-figure.ts'
import { missingFor, noDraft, placesOf, statementKey, type TickDraft, tickBody } from './ticking.ts'

const named = { note: null, kind: 'wrench', class: 0.04, adapterLength: 0, length: 0.25 } as const
const wrenches: readonly Wrench[] = [
  { ...named, id: 'W1', name: 'W1', low: 10, high: 60 },
  { ...named, id: 'W2', name: 'W2', low: 2, high: 15 },
]

/** What a hand reads there: what is wanted where the step says so. */
function read(job: WrittenJob, step: StepState): number {
  if (!isStepId(step.step)) return 0
  const { fills, makes, makesWithin } = procedureSteps[step.step]
  if (fills) return { quarter: 22, half: 44, target: 88 }[fills] * psi
  if (makes.travel) return job.sheet.stroke.value
  return makesWithin === undefined ? 8e-6 : makesWithin / 2
}

function drafted(job: WrittenJob, step: StepState): TickDraft {
  const places = placesOf(step)
  return {
    ...noDraft,
    readings: askedReading(step) ? Object.fromEntries(places.map((place) => [place, read(job, step)])) : {},
    said: new Set(statementsOf(step).flatMap((gate) => places.map((place) => statementKey(gate, place)))),
  }
}

it.each([
  ['U01', ['lower-legs']],
  ['U01', ['lower-legs', 'air-spring']],
  ['U03', ['air-spring']],
  ['U07', ['lower-legs']],
  ['U07', ['lower-legs', 'air-spring']],
  ['U08', ['lower-legs']],
])('%s, %s', (key, services) => {
  const job = new WrittenJob(sheetOfDemo(key)).ready(services)
  job.setUp()
  for (const { step: id } of job.state.steps) {
    const step = () => {
      const found = job.state.steps.find((one) => one.step === id)
      if (!found) throw new Error(`${id} is not in the plan`)
      return found
    }
    for (const place of placesOf(step())) {
      const [now, draft] = [step(), drafted(job, step())]
      if (askedReading(now)?.needed || statementsOf(now).length > 0)
        expect(missingFor(now, place, noDraft), id).not.toBeNull()
      expect(missingFor(now, place, draft), id).toBeNull()
      const figure = figureOf(now, job.state, { wrenches, pickedWrench: null, pump: null })
      expect(figure.kind, id).not.toBe('missing')
      const wrenchSet = figure.kind === 'torque' ? figure.set : null
      const body = tickBody(now, place, draft, { wrenchSet, instrument: null, used: null })
      expect(job.try('step-done', body, { after: waitFor(id) }), id).toEqual({ ok: true })
    }
    expect(step().complete, id).toBe(true)
  }
  expect(job.state.chapters.work.state).toBe('done')
})
