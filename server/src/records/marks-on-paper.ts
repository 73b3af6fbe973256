/** What the page says of how lines came into the book: gates passed, unknowns, late and carried-over lines, contested ones. */
import { type GateId, isStepId, isWordKey, type Made, message, say, sayMessage } from '@legwork/trade'
import { day, type JobOnPaper, nameOf } from './job-on-paper.ts'

type Named = Made & { says: string }

/** The title of a gate, as the steps name it. */
function gateTitle(gate: GateId | null): string {
  const key = `gate.${gate}`
  // Titles of gates have no parameters.
  return gate !== null && isWordKey(key) ? sayMessage({ key, params: {} }) : say('paper.contested.order')
}

/** A word by a key put together from data; the data itself where the catalogue has none. */
function wordOf(prefix: string, what: string): string {
  const key = `${prefix}.${what}`
  return isWordKey(key) ? sayMessage({ key, params: {} }) : what
}

/** Every line that a hand wrote, with its name. */
function linesOf({ state }: JobOnPaper): Named[] {
  const ofLeg = (what: string, leg: 'left' | 'right' | null) =>
    leg ? say('paper.of-leg', { what, leg: say(`leg.${leg}`) }) : what
  const one = (made: Made | null, says: string): Named[] => (made ? [{ ...made, says }] : [])
  return [
    ...Object.entries(state.snapshot).flatMap(([item, made]) => one(made, wordOf('snapshot', item))),
    ...Object.entries(state.chassis).flatMap(([part, made]) => one(made, wordOf('part', part))),
    ...state.measured.flatMap((made) => one(made, ofLeg(wordOf('measure', made.what), made.leg))),
    ...state.steps.flatMap(({ step, done }) => {
      const says = isStepId(step) ? say(`step.${step}`) : step
      return [...one(done.once, says), ...one(done.left, ofLeg(says, 'left')), ...one(done.right, ofLeg(says, 'right'))]
    }),
    ...one(state.sag, say('paper.sag')),
    ...one(state.setting, say('paper.setting')),
    ...Object.entries(state.putBack).flatMap(([item, made]) => one(made, wordOf('put-back', item))),
  ]
}

function lateAndCarried(job: JobOnPaper): string[] {
  const lines = linesOf(job)
  const late = lines.filter((line) => line.late)
  // Of a job that is from the paper book as a whole, one sentence says so.
  const carried = job.state.carriedOver ? [] : lines.filter((line) => line.carriedOver)
  return [
    ...late.map((line) => say('paper.late', { time: day(line.at), what: line.says })),
    ...carried.map((line) => say('paper.carried', { what: line.says })),
  ]
}

export function keptOf(job: JobOnPaper): string[] {
  const { state, text } = job
  const waived = state.waivers.map((one) =>
    say('paper.waived', {
      gate: gateTitle(one.gate),
      name: nameOf(job, one.person),
      date: day(one.at),
      reason: text(one.reason),
    }),
  )
  const contested = state.contested.map((one) =>
    say('paper.contested', {
      gate: gateTitle(one.gate),
      because: one.because,
      ruling: message(one.ruling === 'stands' ? 'paper.contested.stands' : 'paper.contested.open'),
    }),
  )
  const notKnown = Object.entries(state.snapshot).flatMap(([item, kept]) =>
    kept?.notKnownBecause
      ? [say('paper.not-known', { item: wordOf('snapshot', item), reason: text(kept.notKnownBecause) })]
      : [],
  )
  const whole = state.carriedOver ? [say('paper.carried-over')] : []
  return [...whole, ...waived, ...contested, ...notKnown, ...lateAndCarried(job)]
}
