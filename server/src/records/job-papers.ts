/** A job as its papers print it: figures in the measures of whoever asks, each with where it comes from. */
import { formatQuantity, pumpReading } from '@legwork/engine'
import {
  dueFrom,
  type Id,
  intervals,
  isServiceId,
  type JobState,
  judgeDrained,
  judgeMeasured,
  legs,
  type Measures,
  reduceJob,
  type Sheet,
  type Stream,
  say,
  sayMessage,
} from '@legwork/trade'
import type { DueService } from '../papers/due-calendar.ts'
import type { HandOverPage, PageFigure } from '../papers/hand-over-page-data.ts'
import type { Label } from '../papers/label.ts'
import type { Notice } from '../papers/notice.ts'
import type { Reader } from '../store/store.ts'
import { drawingOf } from './fork-on-paper.ts'
import { readJobBook } from './job-book.ts'
import { readRegisters, readTexts } from './read.ts'
import { Trouble } from './trouble.ts'

const metric: Measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }
const dayFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' })
const day = (at: string): string => dayFormat.format(new Date(at))

/** A job with everything that its papers name. */
export interface JobOnPaper {
  state: JobState
  number: string
  workshop: string
  address: string
  measures: Measures
  now: string
  registers: Awaited<ReturnType<typeof readRegisters>>
  text: (digest: string) => string
}

/** @throws Trouble 404 for a stream that is no job here */
export async function readJobOnPaper(
  read: Reader,
  asked: { workshop: Id; stream: Stream; person: Id | null; origin: string; now: string },
): Promise<JobOnPaper> {
  const { workshop, stream, now } = asked
  const { entries, context } = await readJobBook(read, workshop, stream)
  const state = reduceJob(entries, { ...context, now })
  if (!state.opened)
    throw new Trouble(404, 'No such job', [
      {
        field: 'stream',
        code: 'job.unknown',
        came: stream,
        allowed: 'a job of this workshop',
        next: 'Look it up on the Bench.',
      },
    ])
  const registers = await readRegisters(read, workshop)
  const card = await read
    .selectFrom('job_card')
    .select('number')
    .where('workshop', '=', workshop)
    .where('stream', '=', stream)
    .executeTakeFirst()
  const texts = new Map((await readTexts(read, workshop, [...state.texts])).map((text) => [text.digest, text.text]))
  const person = registers.people.find((line) => line.body.id === (asked.person ?? state.handedOver?.person))
  return {
    state,
    number: `J${String(card?.number ?? 0).padStart(2, '0')}`,
    workshop: registers.workshop.name,
    address: `${asked.origin}/units/${state.opened.unit}`,
    measures: person?.body.measures ?? metric,
    now,
    registers,
    text: (digest) => texts.get(digest) ?? say('paper.removed'),
  }
}

const nameOf = (job: JobOnPaper, person: Id): string =>
  job.registers.people.find((line) => line.body.id === person)?.body.name ?? say('paper.nobody')
const unitOf = (job: JobOnPaper) => job.registers.units.find((line) => line.body.id === job.state.opened?.unit)?.body
const riderOf = (job: JobOnPaper) => job.registers.riders.find((line) => line.body.id === job.state.opened?.rider)?.body
const pressureIn = (job: JobOnPaper, pascal: number): string => formatQuantity(pascal, job.measures.pressure)
const lengthIn = (job: JobOnPaper, metre: number): string => formatQuantity(metre, job.measures.length)

function pressureFigure(job: JobOnPaper, sheet: Sheet | null): PageFigure[] {
  const { setting, setUp } = job.state
  if (!setting) return []
  const temperature = formatQuantity(setting.temperature, job.measures.temperature)
  const pump = job.registers.instruments.find((line) => line.body.id === setting.pump)?.body
  const volume = sheet?.spring.positiveVolume
    ? sheet.spring.positiveVolume.value - setting.spacers * (sheet.spring.spacerVolume?.value ?? 0)
    : null
  const shown =
    pump?.kind === 'pump' && volume !== null
      ? pumpReading({ volume, hoseVolume: pump.hoseVolume, pressure: setting.pressure }).reading * (1 + pump.offset)
      : null
  const detail =
    shown !== null && pump
      ? say('paper.pressure.detail', { temperature, pump: pump.name, shown: pressureIn(job, shown) })
      : say('paper.pressure.detail-plain', { temperature })
  const same = setUp && Math.abs(setUp.pressure - setting.pressure) < 1
  const source = same ? 'worked-out' : 'measured-here'
  return [{ place: 'pressure', name: say('paper.pressure'), figure: pressureIn(job, setting.pressure), source, detail }]
}

function settingsOf(job: JobOnPaper): PageFigure[] {
  const { state } = job
  const { setting, sag, sheet } = state
  const figures = pressureFigure(job, sheet)
  const count = (place: PageFigure['place'], name: string, n: number): PageFigure => ({
    place,
    name,
    figure: say('paper.clicks', { n }),
    source: 'measured-here',
    detail: null,
  })
  if (setting) figures.push(count('spacers', say('paper.spacers'), setting.spacers))
  if (setting?.clicks.rebound != null) figures.push(count('rebound', say('paper.rebound'), setting.clicks.rebound))
  if (setting?.clicks.compression != null)
    figures.push(count('compression', say('paper.compression'), setting.clicks.compression))
  if (sag) {
    const mean = (sag.fromAbove + sag.fromBelow) / 2
    const percent = sheet ? Math.round((100 * mean) / sheet.stroke.value) : '–'
    figures.push({
      place: 'sag',
      name: say('paper.sag'),
      figure: lengthIn(job, mean),
      source: 'measured-here',
      detail: say('paper.sag.detail', { percent }),
    })
  }
  return figures
}

const stepOf = (state: JobState, step: string) => state.steps.find((one) => one.step === step)

function foundOf(job: JobOnPaper): HandOverPage['found'] {
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
  for (const one of state.measured) {
    if (one.what !== 'clearance' && one.what !== 'friction') continue
    const { verdict } = judgeMeasured(one.what, one.reading.value, state.sheet, 0)
    const value = one.reading.value
    const figure = one.what === 'friction' ? formatQuantity(value, 'N') : formatQuantity(value, 'mm', { digits: 2 })
    found.push({
      verdict,
      what: one.leg ? `${one.what}, ${say(`leg.${one.leg}`)}` : one.what,
      figure,
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

function doneOf(job: JobOnPaper): HandOverPage['done'] {
  const { state } = job
  const done: HandOverPage['done'] = []
  for (const service of state.plan?.services ?? []) {
    if (isServiceId(service) && state.plan?.answer !== 'no')
      done.push({ what: say(`service.${service}`), figure: '', source: null })
  }
  for (const leg of legs) {
    const side = { leg: say(`leg.${leg}`) }
    const oil = stepOf(state, 'oil-in')?.done[leg]?.reading?.value
    if (oil !== undefined)
      done.push({ what: say('paper.oil', side), figure: formatQuantity(oil, 'ml'), source: 'measured-here' })
    const foot = stepOf(state, 'foot-torque')?.done[leg]
    const torque = state.sheet?.legs?.[leg].footTorque?.value
    if (foot && torque !== undefined) {
      done.push({
        what: say('paper.torque', side),
        figure: formatQuantity(torque, job.measures.torque),
        source: 'makers-sheet',
      })
      done.push({ what: say('paper.washer', side), figure: say('paper.washer.new'), source: null })
    }
  }
  // What the paper book said was done.
  if (state.carriedOver)
    for (const note of state.notes) done.push({ what: job.text(note.text), figure: '', source: null })
  return done
}

function beforeAfterOf(job: JobOnPaper): HandOverPage['beforeAfter'] {
  const { state } = job
  const before = state.snapshot.length?.reading?.value
  const after = state.measured.findLast((one) => one.what === 'free-length' && one.phase === 'done')?.reading.value
  const rows: HandOverPage['beforeAfter'] = []
  if (after !== undefined)
    rows.push({
      what: say('paper.free-length'),
      before: before === undefined ? '–' : lengthIn(job, before),
      after: lengthIn(job, after),
      source: 'measured-here',
    })
  const travel = stepOf(state, 'travel-air-out')?.done.once?.reading?.value
  if (travel !== undefined)
    rows.push({ what: say('paper.travel'), before: '–', after: lengthIn(job, travel), source: 'measured-here' })
  return rows
}

function nextOf(job: JobOnPaper): { service: string; hours: string; date: string; day: string | null } | null {
  if (!job.state.plan || job.state.plan.answer === 'no') return null
  const { low, high } = intervals['lower-legs']
  const hoursPerWeek = riderOf(job)?.hoursPerWeek ?? null
  const from = (job.state.handedOver?.at ?? job.now).slice(0, 10)
  const due = hoursPerWeek ? dueFrom({ service: 'lower-legs', hoursPerWeek, from }) : null
  return {
    service: say('service.lower-legs'),
    hours: say('paper.hours', { low, high }),
    date: due ? say('paper.date', { early: day(due.early), late: day(due.late) }) : say('paper.no-date'),
    day: due?.date ?? null,
  }
}

function unitLine(job: JobOnPaper): string {
  const unit = unitOf(job)
  return unit ? `${unit.label}, ${unit.description}` : say('paper.nobody')
}

export function handOverPageOf(job: JobOnPaper): HandOverPage {
  const { state } = job
  const { handedOver, opened, plan, sag, setting, sheet } = state
  const next = nextOf(job)
  const notKnown = Object.entries(state.snapshot).flatMap(([item, kept]) =>
    kept.notKnownBecause
      ? [
          say('paper.not-known', {
            item: say(`snapshot.${item as 'length'}`), // the keys of a snapshot are its items
            reason: job.text(kept.notKnownBecause),
          }),
        ]
      : [],
  )
  return {
    workshop: job.workshop,
    job: job.number,
    date: day(handedOver?.at ?? job.now),
    handedOverBy: handedOver ? nameOf(job, handedOver.person) : '–',
    rider: riderOf(job)?.name ?? null,
    unit: unitLine(job),
    asked: opened?.asked ? job.text(opened.asked) : null,
    settings: settingsOf(job),
    drawing: sheet ? drawingOf(sheet, setting?.spacers ?? 0, sag ? (sag.fromAbove + sag.fromBelow) / 2 : null) : null,
    found: foundOf(job),
    done: doneOf(job),
    beforeAfter: beforeAfterOf(job),
    holdsAir: null,
    next,
    beforeYouRide: [
      ...(sheet?.kind.startsWith('shock')
        ? [say('paper.check.shock-bolts'), say('paper.check.shock-clear')]
        : [say('paper.check.axle'), say('paper.check.brake')]),
      ...(setting ? [say('paper.check.pressure', { pressure: pressureIn(job, setting.pressure) })] : []),
    ],
    declined: (plan?.declined ?? []).filter(isServiceId).map((service) => say(`service.${service}`)),
    waivers: state.waivers.map((one) =>
      say('paper.waived', { gate: one.gate, name: nameOf(job, one.person), reason: job.text(one.reason) }),
    ),
    notes: notKnown,
    carriedOver: state.carriedOver,
    cautions: [
      say('paper.caution.pump'),
      ...(sheet?.maxPressure
        ? [say('paper.caution.maximum', { maximum: pressureIn(job, sheet.maxPressure.value) })]
        : []),
      say('paper.caution.sheet'),
    ],
    receivedBy: handedOver ? { name: job.text(handedOver.receivedBy), time: day(handedOver.at) } : null,
    address: job.address,
  }
}

export function labelOf(job: JobOnPaper): Label {
  const { setting } = job.state
  return {
    job: job.number,
    date: day(job.state.handedOver?.at ?? job.now),
    pressure: setting
      ? `${pressureIn(job, setting.pressure)} ${say('paper.pressure.detail-plain', { temperature: formatQuantity(setting.temperature, job.measures.temperature) })}`
      : null,
    lines: settingsOf(job)
      .slice(1)
      .map((figure) => `${figure.name} ${figure.figure}`),
    next: nextOf(job)?.hours ?? null,
    address: job.address,
  }
}

/** @throws Trouble 404 where the job is not stopped */
export function noticeOf(job: JobOnPaper): Notice {
  const { state } = job
  const condemned = Object.entries(state.chassis).filter(([, part]) => part.verdict === 'condemned')
  if (!state.stopped && condemned.length === 0)
    throw new Trouble(404, 'No notice', [
      {
        field: 'stream',
        code: 'job.not-stopped',
        came: job.number,
        allowed: 'a stopped job',
        next: 'Print the hand-over page.',
      },
    ])
  const first = condemned[0]?.[1]
  return {
    workshop: job.workshop,
    job: job.number,
    date: day(first?.at ?? job.now),
    unit: unitLine(job),
    rider: riderOf(job)?.name ?? null,
    found: [
      ...condemned.map(
        ([part, { found }]) => `${say(`part.${part as 'crown'}`)}: ${found ? job.text(found) : say('part.condemned')}`,
      ), // the keys of a chassis are its parts
      ...(state.stopped ? [sayMessage(state.stopped.because)] : []),
    ],
    by: first ? nameOf(job, first.person) : '–',
  }
}

/** @throws Trouble 404 where no date can be worked out */
export function dueOf(job: JobOnPaper): DueService {
  const next = nextOf(job)
  const unit = unitOf(job)
  if (!next?.day || !unit)
    throw new Trouble(404, 'No date', [
      {
        field: 'hoursPerWeek',
        code: 'due.no-hours',
        came: 'nothing',
        allowed: 'the rider’s hours a week',
        next: 'Ask the rider and write it into the register.',
      },
    ])
  const { service, hours } = next
  return { unitId: unit.id, unit: unitLine(job), service, hours, date: next.day, address: job.address }
}
