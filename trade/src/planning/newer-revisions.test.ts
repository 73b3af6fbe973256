/** A plan rests on the revisions it was agreed on: a later one is offered and never applied by itself. */
import { describe, expect, it } from 'vitest'
import { sheetOfDemo, WrittenJob } from '../journal/written-job.ts'
import type { Sheet } from '../sheets/sheet.ts'
import { newerRevisions } from './newer-revisions.ts'
import { planSteps } from './plan-steps.ts'

/** The same sheet, later: the left foot is torqued to 7 N·m. */
function laterOf(sheet: Sheet): Sheet {
  const { legs } = sheet
  if (!legs?.left.footTorque) throw new Error('U01 has it')
  const footTorque = { ...legs.left.footTorque, value: 7 }
  return { ...sheet, revision: 'later', legs: { ...legs, left: { ...legs.left, footTorque } } }
}

describe('a later revision of the sheet', () => {
  it('does not reach a plan that is agreed; it is offered, and taken by agreeing anew', () => {
    const job = new WrittenJob().ready().workUntil('foot-torque')
    const { sheet, context } = job
    const later = laterOf(sheet)
    const before = job.state
    expect(before.newer).toBeNull()
    const sheets = [sheet, later]
    context.currentSheet = later
    context.sheetAt = (id, revision) => sheets.find((one) => one.id === id && one.revision === revision)
    const { state } = job
    expect(state.sheet).toBe(sheet)
    expect(state.sheet?.legs?.left.footTorque?.value).not.toBe(7)
    expect(state.steps).toEqual(before.steps)
    expect(state.newer).toEqual({ sheet: later, procedures: [] })
    const agreed = job.try('plan-agreed', {
      services: ['lower-legs'],
      sheet: { id: later.id, revision: later.revision },
      steps: [...planSteps(['lower-legs'], later)],
      answer: 'yes',
      declined: [],
      answeredBy: 'workshop',
    })
    expect(agreed.ok).toBe(true)
    expect(job.state.newer).toBeNull()
    expect(job.state.sheet?.legs?.left.footTorque?.value).toBe(7)
    // What was done stays done.
    expect(job.state.steps.filter((step) => step.complete).length).toBe(
      before.steps.filter((step) => step.complete).length,
    )
  })

  it('is nothing to offer before a plan, or after a no', () => {
    const job = new WrittenJob().open()
    job.context.currentSheet = laterOf(job.sheet)
    expect(job.state.newer).toBeNull()
    const plan = {
      services: ['lower-legs'],
      sheet: { id: job.sheet.id, revision: 'A' },
      steps: [],
      answer: 'no',
    } as const
    expect(newerRevisions({ ...plan, services: [...plan.services], steps: [] }, laterOf(job.sheet))).toBeNull()
  })
})

it('a later revision of a procedure is named by its service', () => {
  const sheet = sheetOfDemo('U01')
  const steps = planSteps(['lower-legs', 'air-spring'], sheet).map((step) =>
    step.procedure === 'air-spring' ? { ...step, revision: 0 } : step,
  )
  const { id, revision } = sheet
  const plan = { services: ['lower-legs', 'air-spring'], sheet: { id, revision }, steps, answer: 'yes' as const }
  expect(newerRevisions(plan, sheet)).toEqual({ sheet: null, procedures: ['air-spring'] })
})

it('a plan agreed with steps of a former revision is worked to its end, and the later one is offered', () => {
  const job = new WrittenJob(sheetOfDemo('U07')).open().keepSnapshot().lookOver()
  // As revision 1 had it: one line for both heights, one for all clamps.
  const steps = planSteps(['lower-legs'], job.sheet).flatMap((step) => {
    const was = { ...step, revision: 1 }
    if (step.step === 'heights-noted') return [{ ...was, step: 'clamps-noted', legs: null }]
    if (step.step === 'upper-clamp-torque') return [{ ...was, step: 'clamps-torque' }]
    return step.step === 'heights-even' || step.step === 'lower-clamp-torque' ? [] : [was]
  })
  const { id, revision } = job.sheet
  const agreed = { services: ['lower-legs'], sheet: { id, revision }, answer: 'yes', declined: [] } as const
  job.put('plan-agreed', { ...agreed, services: ['lower-legs'], declined: [], steps, answeredBy: 'rider' })
  job.workUntil()
  expect(job.state.chapters.work.state).toBe('done')
  expect(job.state.newer?.procedures).toEqual(['lower-legs'])
})
