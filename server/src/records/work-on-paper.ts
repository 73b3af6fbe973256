/** What was found, done and proved, as the hand-over page prints it. */
import { formatQuantity } from '@legwork/engine'
import {
  halfWidthOf,
  isServiceId,
  type JobState,
  judgeDrained,
  judgeMeasured,
  judgeOilLook,
  type Leg,
  legs,
  type MeasuredEntry,
  say,
} from '@legwork/trade'
import type { HandOverPage } from '../papers/hand-over-page-data.ts'
import type { RuledRow } from '../papers/ruled-section.ts'
import { type JobOnPaper, lengthIn, nameOf } from './job-on-paper.ts'

const stepOf = (state: JobState, step: string) => state.steps.find((one) => one.step === step)

/** Bath oil that was poured into a leg [m³]. */
export const pouredInto = (state: JobState, leg: Leg): number | null =>
  stepOf(state, 'oil-in')?.done[leg]?.reading?.value ?? null

/** What is judged, and how it is printed. */
const judged = {
  clearance: (value: number) => formatQuantity(value, 'mm', { digits: 2 }),
  friction: (value: number) => formatQuantity(value, 'N'),
  breakaway: (value: number) => formatQuantity(value, 'N'),
  'return-time': (value: number) => formatQuantity(value, 's', { digits: 2 }),
  'short-of-length': (value: number) => formatQuantity(value, 'mm'),
  'return-closed-over-open': (value: number) => value.toFixed(2),
  'return-warm-over-cold': (value: number) => value.toFixed(2),
  'lock-out-creep': (value: number) => formatQuantity(value, 'mm'),
  'dead-zone': (value: number) => formatQuantity(value, 'mm'),
  'leak-24-h': (value: number) => formatQuantity(value, '%', { digits: 1 }),
  'mount-play': (value: number) => formatQuantity(value, 'mm', { digits: 2 }),
} as const satisfies Record<string, (value: number) => string>
const isJudged = (what: string): what is keyof typeof judged => Object.hasOwn(judged, what)

/** The last reading of each kind and leg, of the latest phase there is. */
function lastMeasured(state: JobState): MeasuredEntry[] {
  const last = new Map<string, MeasuredEntry>()
  for (const entry of state.measured) last.set(`${entry.what} ${entry.leg}`, entry)
  return [...last.values()]
}

export function foundOf(job: JobOnPaper): HandOverPage['found'] {
  const { state } = job
  const found: HandOverPage['found'] = []
  for (const leg of legs) {
    const drained = stepOf(state, 'foot-off')?.done[leg]?.reading?.value
    const filled = state.sheet?.legs?.[leg].bathOil?.value
    if (drained === undefined || !filled) continue
    found.push({
      verdict: judgeDrained(drained, filled).verdict,
      what: say('paper.drained', { leg: say(`leg.${leg}`) }),
      figure: say('paper.drained.of', { drained: formatQuantity(drained, 'ml'), filled: formatQuantity(filled, 'ml') }),
      source: 'measured-here',
    })
  }
  const isPresent = (sign: string) => state.signs.findLast((one) => one.sign === sign)?.state === 'present'
  for (const { verdict, says } of judgeOilLook(isPresent))
    found.push({ verdict, what: say('paper.drained-look', { says }), figure: '', source: 'measured-here' })
  for (const entry of lastMeasured(state)) {
    if (!isJudged(entry.what)) continue
    const { value, instrument } = entry.reading
    const used = job.registers.instruments.find(({ body }) => body.id === instrument)?.body
    const name = say(`measure.${entry.what}`).toLocaleLowerCase('en-GB')
    found.push({
      verdict: judgeMeasured(entry.what, value, state.sheet, halfWidthOf(used, value)).verdict,
      what: entry.leg ? say('paper.of-leg', { what: name, leg: say(`leg.${entry.leg}`) }) : name,
      figure: judged[entry.what](value),
      source: 'measured-here',
    })
  }
  const parts = Object.values(state.chassis)
  if (parts.length > 0) {
    const sound = parts.every((part) => part.verdict === 'sound')
    found.push({
      verdict: sound ? 'pass' : 'fail',
      what: say('paper.chassis'),
      figure: sound ? say('paper.sound') : say('part.condemned'),
      source: 'measured-here',
    })
  }
  return found
}

/** Whose limits the findings were held against; null where none was. */
export function limitsOf({ state }: JobOnPaper): string | null {
  const sources = lastMeasured(state)
    .filter((entry) => isJudged(entry.what))
    .flatMap((entry) => judgeMeasured(entry.what, entry.reading.value, state.sheet).source ?? [])
  const drained = legs.some((leg) => stepOf(state, 'foot-off')?.done[leg]?.reading)
  const own = state.sheet && sources.some(({ kind }) => kind !== 'common-practice')
  const usual = drained || sources.some(({ kind }) => kind === 'common-practice')
  const of = [
    ...(own && state.sheet
      ? [say('paper.limits.sheet', { name: state.sheet.name, revision: state.sheet.revision })]
      : []),
    ...(usual ? [say('paper.limits.usual')] : []),
  ]
  return of.length === 0 ? null : say('paper.limits', { of: of.join('; ') })
}

/** Parts that are new once their step is ticked. */
const renewed = [
  ['seals-in', 'paper.wipers'],
  ['air-seals-new', 'paper.air-seals'],
] as const

export function doneOf(job: JobOnPaper): RuledRow[] {
  const { state } = job
  const done: RuledRow[] = []
  for (const service of state.plan?.services ?? []) {
    if (isServiceId(service) && state.plan?.answer !== 'no')
      done.push({ what: say(`service.${service}`), figure: '', source: null })
  }
  const news = say('paper.washer.new')
  for (const [step, what] of renewed)
    if (stepOf(state, step)?.complete) done.push({ what: say(what), figure: news, source: null })
  for (const leg of legs) {
    const side = { leg: say(`leg.${leg}`) }
    const oil = pouredInto(state, leg)
    if (oil !== null)
      done.push({ what: say('paper.oil', side), figure: formatQuantity(oil, 'ml'), source: 'measured-here' })
    const foot = stepOf(state, 'foot-torque')?.done[leg]
    if (foot) done.push({ what: say('paper.washer', side), figure: news, source: null })
  }
  done.push(...torquesOf(job))
  // What the paper book said was done.
  if (state.carriedOver)
    for (const note of state.notes) done.push({ what: job.text(note.text), figure: '', source: null })
  return done
}

/** Fasteners that were torqued, by the sheet's figure. */
function torquesOf(job: JobOnPaper): RuledRow[] {
  const { state, measures } = job
  const row = (what: string, torque: number | undefined): RuledRow[] =>
    torque === undefined ? [] : [{ what, figure: formatQuantity(torque, measures.torque), source: 'makers-sheet' }]
  const feet = legs.flatMap((leg) =>
    stepOf(state, 'foot-torque')?.done[leg]
      ? row(say('paper.torque', { leg: say(`leg.${leg}`) }), state.sheet?.legs?.[leg].footTorque?.value)
      : [],
  )
  const cap = stepOf(state, 'cap-torque')?.complete
  return [...feet, ...(cap ? row(say('paper.cap-torque'), state.sheet?.spring.capTorque?.value) : [])]
}

/** Whose hands did it, and in a shop how long it took of what was planned. */
export function handsOf(job: JobOnPaper): string | null {
  const { steps, minutesDone, minutesPlanned } = job.state
  const people = new Set(
    steps.flatMap(({ done }) => [done.once, done.left, done.right].flatMap((one) => one?.person ?? [])),
  )
  if (people.size === 0) return null
  const names = [...people].map((person) => nameOf(job, person)).join(', ')
  if (job.shop.home) return say('paper.by-hands', { names })
  return say('paper.by-hands.minutes', { names, done: Math.round(minutesDone), planned: Math.round(minutesPlanned) })
}

/** Each bench test as received beside the same test when done. */
export function beforeAfterOf(job: JobOnPaper): HandOverPage['beforeAfter'] {
  const { state } = job
  const rows: HandOverPage['beforeAfter'] = []
  const none = '–'
  const kept = state.snapshot.length?.reading?.value
  const length = state.measured.findLast((one) => one.what === 'free-length' && one.phase === 'done')?.reading.value
  if (length !== undefined)
    rows.push({
      what: say('paper.free-length'),
      before: kept === undefined ? none : lengthIn(job, kept),
      after: lengthIn(job, length),
      source: 'measured-here',
    })
  const travel = stepOf(state, 'travel-air-out')?.done.once?.reading?.value
  if (travel !== undefined)
    rows.push({ what: say('paper.travel'), before: none, after: lengthIn(job, travel), source: 'measured-here' })
  for (const what of ['friction', 'breakaway', 'return-time', 'short-of-length'] as const) {
    const of = (phase: MeasuredEntry['phase']) =>
      state.measured.findLast((one) => one.what === what && one.phase === phase)?.reading.value
    const [before, after] = [of('received'), of('done')]
    if (after === undefined) continue
    rows.push({
      what: say(`measure.${what}`).toLocaleLowerCase('en-GB'),
      before: before === undefined ? none : judged[what](before),
      after: judged[what](after),
      source: 'measured-here',
    })
  }
  return rows
}
