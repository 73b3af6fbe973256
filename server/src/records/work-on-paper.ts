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
  const oil = perLeg(
    (leg) => pouredInto(state, leg),
    (volume) => formatQuantity(volume, 'ml'),
  )
  if (oil) done.push({ what: say('paper.oil'), figure: oil, source: 'measured-here' })
  const washers = legs.filter((leg) => stepOf(state, 'foot-torque')?.done[leg])
  if (washers.length > 0)
    done.push({ what: say('paper.washer', { legs: legsIn(washers) }), figure: news, source: null })
  done.push(...torquesOf(job))
  done.push(...usedIn(job))
  // What the paper book said was done.
  if (state.carriedOver)
    for (const note of state.notes) done.push({ what: job.text(note.text), figure: '', source: null })
  return done
}

/** Which oil, seals and spacers, in the words of who ticked. */
function usedIn({ state, text }: JobOnPaper): RuledRow[] {
  const said = state.steps.flatMap(({ done }) => [done.once, done.left, done.right].flatMap((one) => one?.used ?? []))
  return [...new Set(said)].map((digest) => ({ what: say('paper.used', { used: text(digest) }) }))
}

const legsIn = (some: readonly Leg[]): string =>
  some.length === 2 ? say('paper.both-legs') : some.map((leg) => say(`leg.${leg}`)).join(', ')

/** A figure of each leg that has one, each with its leg. */
function perLeg(of: (leg: Leg) => number | null, shown: (value: number) => string): string | null {
  const figures = legs.flatMap((leg) => {
    const value = of(leg)
    return value === null ? [] : [say('paper.figure-of-leg', { figure: shown(value), leg: say(`leg.${leg}`) })]
  })
  return figures.length === 0 ? null : figures.join(', ')
}

/** Fasteners that were torqued, by the sheet's figure. */
function torquesOf({ state, measures }: JobOnPaper): RuledRow[] {
  const shown = (torque: number) => formatQuantity(torque, measures.torque)
  const feet = legs.filter((leg) => stepOf(state, 'foot-torque')?.done[leg])
  const wanted = (leg: Leg) => state.sheet?.legs?.[leg].footTorque?.value ?? null
  const [first = null, ...others] = feet.map(wanted)
  const alike = first !== null && others.every((torque) => torque === first)
  const figure = alike ? shown(first) : perLeg((leg) => (feet.includes(leg) ? wanted(leg) : null), shown)
  const row = (what: string, torque: string | null): RuledRow[] =>
    torque === null ? [] : [{ what, figure: torque, source: 'makers-sheet' }]
  const cap = stepOf(state, 'cap-torque')?.complete ? (state.sheet?.spring.capTorque?.value ?? null) : null
  return [
    ...row(alike ? say('paper.torque.alike', { legs: legsIn(feet) }) : say('paper.torque'), figure),
    ...row(say('paper.cap-torque'), cap === null ? null : shown(cap)),
  ]
}

/** Whose hands did it, and in a shop how long it took of what was planned. */
export function handsOf(job: JobOnPaper): string | null {
  const { steps, minutesPlanned, ready } = job.state
  const people = new Set(
    steps.flatMap(({ done }) => [done.once, done.left, done.right].flatMap((one) => one?.person ?? [])),
  )
  if (people.size === 0) return null
  const names = [...people].map((person) => nameOf(job, person)).join(', ')
  const done = ready?.minutes ?? null
  if (job.shop.home || done === null) return say('paper.by-hands', { names })
  return say('paper.by-hands.minutes', { names, done: Math.round(done), planned: Math.round(minutesPlanned) })
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
