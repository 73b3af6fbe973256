/** One job of the demo's paper book, entered as carried over. */
import type { Id, Reading, Stream } from '@legwork/trade'
import { type DemoJob, storyTime } from '@legwork/trade'
import { type DemoStation, freshId } from './demo-station.ts'

export interface DemoPlaces {
  unit: Id
  rider: Id
  bike: Id
  pump: Id
  spacers: number
  sheet: Id
  /** Of the sheet. */
  revision: string
}

/** Writes the job's entries at the times of the story; gives the job's stream. */
export function carryOver(hand: DemoStation, job: DemoJob, places: DemoPlaces, today: Date): Stream {
  let minute = 9 * 60
  const next = (minutes: number): Date => {
    minute += minutes
    return storyTime(job.day, minute, today)
  }
  const opened = next(0)
  const stream: Stream = `job:${freshId(opened)}`
  const visit = freshId(opened)
  hand.register('visits', { id: visit, rider: places.rider, promised: null, leftWith: null }, opened)
  const write: typeof hand.entry = (to, kind, body, at) =>
    hand.entry(to, kind, body, at, { mode: 'carried-over', doneAt: at.toISOString() })
  const now = { mode: 'now' } as const // `write` puts the standing in; the parameter list is the station's
  write(
    stream,
    'job-opened',
    {
      unit: places.unit,
      rider: places.rider,
      bike: places.bike,
      visit,
      asked: hand.text(job.asked),
      spendAllowed: null,
    },
    opened,
    now,
  )
  for (const sign of job.signs) write(stream, 'sign-noted', { sign, state: 'present', by: 'said' }, next(1), now)
  if (job.services) {
    // The paper book has what was agreed, not its single steps.
    const sheet = { id: places.sheet, revision: places.revision }
    const agreed = { services: [...job.services], sheet, steps: [], declined: [] }
    write(stream, 'plan-agreed', { ...agreed, answer: 'yes', answeredBy: 'rider' }, next(2), now)
  }
  for (const measured of job.measured) {
    const reading: Reading = {
      value: measured.value,
      measure: measured.measure,
      instrument: measured.measure === 'Pa' ? places.pump : null,
      how: measured.measure === 'Pa' ? 'attached' : null,
    }
    const { what, leg = null, phase } = measured
    write(stream, 'measured', { what, leg, phase, reading }, next(2), now)
  }
  write(stream, 'noted', { text: hand.text(job.found) }, next(5), now)
  if (job.ends === 'stopped') {
    write(stream, 'chassis-checked', { part: 'crown', verdict: 'condemned', found: hand.text(job.found) }, next(2), now)
    write(stream, 'stopped', { gate: 'R1', why: hand.text(job.done) }, next(5), now)
    return stream
  }
  write(stream, 'noted', { text: hand.text(job.done) }, next(Math.max(1, job.minutes.actual - 10)), now)
  if (job.pressure !== null) {
    write(
      stream,
      'setting-written',
      {
        pressure: job.pressure,
        temperature: 293.15,
        pump: places.pump,
        spacers: places.spacers,
        clicks: { rebound: null, compression: null },
      },
      next(2),
      now,
    )
  }
  write(stream, 'ready', { minutes: job.minutes.actual }, next(1), now)
  write(
    stream,
    'handed-over',
    { receivedBy: hand.text('Carried over from the paper book'), initials: null },
    next(60),
    now,
  )
  return stream
}
