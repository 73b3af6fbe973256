/** A job with everything that its papers name: figures in the measures of whoever asks. */
import type { WorkshopLine } from '@legwork/contract'
import { formatQuantity } from '@legwork/engine'
import {
  type Id,
  type JobState,
  type Measures,
  type Rider,
  reduceJob,
  type Stream,
  say,
  type Unit,
} from '@legwork/trade'
import type { Letterhead } from '../papers/letterhead.ts'
import type { Reader } from '../store/store.ts'
import { readJobBook } from './job-book.ts'
import { readRegisters, readTexts } from './read.ts'
import { Trouble } from './trouble.ts'

const metric: Measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }
const dayFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' })
export const day = (at: string): string => dayFormat.format(new Date(at))

export interface JobOnPaper {
  state: JobState
  number: string
  shop: Letterhead
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
    shop: letterheadOf(registers.workshop),
    address: `${asked.origin}/units/${state.opened.unit}`,
    measures: person?.body.measures ?? metric,
    now,
    registers,
    text: (digest) => texts.get(digest) ?? say('paper.removed'),
  }
}

const letterheadOf = ({ name, address, phone, terms, home }: WorkshopLine): Letterhead => ({
  name,
  address,
  phone,
  // At home nobody stands in for anything to anybody.
  terms: home ? null : terms,
  home,
})

export const nameOf = (job: JobOnPaper, person: Id): string =>
  job.registers.people.find((line) => line.body.id === person)?.body.name ?? say('paper.nobody')
export const unitOf = (job: JobOnPaper): Unit | undefined =>
  job.registers.units.find((line) => line.body.id === job.state.opened?.unit)?.body
export const riderOf = (job: JobOnPaper): Rider | undefined =>
  job.registers.riders.find((line) => line.body.id === job.state.opened?.rider)?.body
export const pressureIn = (job: JobOnPaper, pascal: number): string => formatQuantity(pascal, job.measures.pressure)
export const lengthIn = (job: JobOnPaper, metre: number): string => formatQuantity(metre, job.measures.length)

/** The unit as its label and its description say. */
export function unitLine(job: JobOnPaper): string {
  const unit = unitOf(job)
  return unit ? `${unit.label}, ${unit.description}` : say('paper.nobody')
}

/** With kit [kg], as the set-up reckoned with it; before a set-up, as the register has it. */
export const massOf = (job: JobOnPaper): number | null => job.state.setUp?.riderMass ?? riderOf(job)?.mass ?? null
