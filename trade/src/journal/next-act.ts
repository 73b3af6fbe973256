/** The one thing to do next in a job, and what stands in its way. */
import { firstShut } from '../gates/rules.ts'
import { isStepId } from '../procedures/procedures.ts'
import { message } from '../words/words.ts'
import { isComplete } from './apply-step.ts'
import { plainAsking } from './ask-gates.ts'
import { currentChapter, notBack } from './chapters.ts'
import { settling } from './job-rests.ts'
import type { JobState, NextAct, StepState } from './job-state.ts'
import { factsFor, type Progress, traitsFor } from './progress.ts'
import { blockedStep, type Moment, openLeg, stepThatOpens } from './step-ahead.ts'

const act = (
  of: Pick<NextAct, 'kind' | 'chapter' | 'says'> & Partial<Pick<NextAct, 'step' | 'leg' | 'item' | 'blocked'>>,
): NextAct => ({ step: null, leg: null, item: null, blocked: null, ...of })

function stepAct(step: StepState, blocked: NextAct['blocked']): NextAct {
  const says = isStepId(step.step)
    ? message('next.step', { step: message(`step.${step.step}`) })
    : message('refused.unknown-step')
  return act({ kind: 'step', chapter: 'work', step: step.step, leg: openLeg(step), says, blocked })
}

function workAct(progress: Progress, moment: Moment): NextAct {
  const index = progress.steps.findIndex((step) => !isComplete(progress, step))
  const step = progress.steps[index]
  if (!step) return act({ kind: 'plan', chapter: 'plan', says: message('next.plan') })
  const blocked = blockedStep(progress, step.step, openLeg(step), moment)
  if (!blocked) return stepAct(step, null)
  if (blocked.gate === 'R27' && blocked.because.key === 'gate.R27.unknown')
    return act({
      kind: 'measure',
      chapter: 'work',
      step: step.step,
      item: 'maximum-pressure',
      says: message('next.measure', { what: message('measure.maximum-pressure') }),
    })
  if (blocked.because.key === 'refused.needs-set-up')
    return act({ kind: 'set-up', chapter: 'work', step: step.step, says: message('next.set-up') })
  const opens = stepThatOpens(progress, index, moment)
  return opens
    ? { ...stepAct(opens, null), leg: opens.legs ? (openLeg(opens) ?? 'left') : null }
    : stepAct(step, blocked)
}

/** What the unit's leaving would meet shut. */
function leavingShut(progress: Progress, moment: Moment): NextAct['blocked'] {
  const facts = factsFor(progress, moment.at, moment.person)
  return firstShut(
    { ...plainAsking(progress, facts), entry: 'handed-over' },
    progress.waivers.map((waiver) => waiver.gate),
  )
}

function measureAct(item: 'free-length' | 'leak-down-start' | 'leak-down-end', blocked: NextAct['blocked']): NextAct {
  const says = message('next.measure', { what: message(`measure.${item}`) })
  return act({ kind: 'measure', chapter: 'prove', item, says, blocked })
}

/** The next act of a job that is neither closed nor stopped. */
function chapterAct(progress: Progress, moment: Moment): NextAct {
  const { facts } = progress
  const traits = traitsFor(progress)
  const chapter = currentChapter(progress, moment.at)
  switch (chapter) {
    case 'take-in': {
      const item = traits.snapshot.find((one) => facts[`snapshot.${one}`] === 'none') ?? 'length'
      return act({
        kind: 'snapshot',
        chapter,
        item,
        says: message('next.snapshot', { item: message(`snapshot.${item}`) }),
      })
    }
    case 'look-over': {
      const item = traits.parts.find((one) => facts[`chassis.${one}`] !== 'sound') ?? 'crown'
      return act({ kind: 'chassis', chapter, item, says: message('next.chassis', { part: message(`part.${item}`) }) })
    }
    case 'plan':
      return act({ kind: 'plan', chapter, says: message('next.plan') })
    case 'work':
      return workAct(progress, moment)
    case 'prove': {
      if (facts.length !== 'within') return measureAct('free-length', null)
      if (facts.leakDown === 'running') return measureAct('leak-down-end', null)
      return measureAct('leak-down-start', settling(progress, moment.at))
    }
    case 'set-up':
      return act({ kind: 'setting', chapter, says: message('next.setting') })
    case 'hand-over': {
      const item = notBack(progress)
      if (item)
        return act({
          kind: 'put-back',
          chapter,
          item,
          says: message('next.put-back', { item: message(`put-back.${item}`) }),
        })
      return act({
        kind: 'hand-over',
        chapter,
        says: message('next.hand-over'),
        blocked: leavingShut(progress, moment),
      })
    }
  }
}

/** The next act, whatever the job's state. */
export function nextAct(progress: Progress, stopped: JobState['stopped'], moment: Moment): NextAct {
  if (!progress.opened) return act({ kind: 'open', chapter: 'take-in', says: message('next.open') })
  if (progress.handedOver || progress.calledOff)
    return act({ kind: 'nothing', chapter: 'hand-over', says: message('next.nothing') })
  const contested = progress.contested.find((one) => one.ruling === null)
  if (contested && stopped?.entry === contested.entry)
    return act({
      kind: 'rule',
      chapter: currentChapter(progress, moment.at),
      item: contested.entry,
      says: message('next.rule'),
    })
  const next = chapterAct(progress, moment)
  if (!stopped) return next
  return { ...next, blocked: { gate: stopped.gate, because: stopped.because, act: message('refused.stopped.act') } }
}
