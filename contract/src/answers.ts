/**
 * What the routes answer with: each schema gives an answer its type, its page in OpenAPI and the test that what is really
 * answered fits it. Told closed, because a server sends nothing else; read open, because pages that a tablet keeps may be
 * older than the server.
 */
import type { RegisterName, Registers } from '@legwork/trade'
import { z } from 'zod'
import { digest, id, instant } from './delivery.ts'
import { type PlacedEntry, placedEntry } from './placed-entry.ts'
import { person, registerBodies } from './registers.ts'

export const stream = z.templateLiteral([z.enum(['job', 'unit']), ':', z.string()])
const count = z.number().int().min(0)
const position = count.meta({ description: 'Place in the order of everything that happened in the workshop.' })

export const workshopLine = z
  .object({
    id,
    name: z.string(),
    address: z.string().nullable().meta({ description: 'At the head of its papers; null until somebody said it.' }),
    phone: z.string().nullable(),
    terms: z.string().nullable().meta({ description: 'What it stands in for, in its own words.' }),
    demo: z.boolean(),
    home: z.boolean(),
    createdAt: instant,
  })
  .meta({ id: 'Workshop' })
export const workshopsAnswer = z.object({ workshops: z.array(workshopLine) })
export const workshopAnswer = z.object({ workshop: workshopLine })
export const workshopOpened = z.object({ workshop: workshopLine, person })
export const stationOpened = z.object({
  station: z.object({ id, workshop: id, name: z.string() }),
  deliveredNo: count.meta({ description: 'The last number of this station that the book has.' }),
})

const chapter = z.enum(['take-in', 'look-over', 'plan', 'work', 'prove', 'set-up', 'hand-over'])
const chapterStanding = z.enum(['not-yet', 'open', 'done', 'shut', 'not-needed'])
/** A job as the Bench shows it. */
export const jobCard = z
  .object({
    stream,
    number: z.number().int().min(1).meta({ description: 'J01, J02 … by the order in which jobs reached the book.' }),
    unit: id,
    rider: id.nullable(),
    visit: id,
    state: z.enum(['booked', 'in', 'under-way', 'waiting', 'stopped', 'ready', 'handed-over', 'called-off']),
    chapter,
    chapters: z.record(chapter, chapterStanding),
    stepIndex: count.nullable(),
    stepCount: count,
    minutesPlanned: z.number().min(0),
    minutesLeft: z.number().min(0),
    blockedBy: z.string().nullable().meta({ description: 'The gate that shuts the next act.' }),
    asked: digest.nullable(),
    promised: z.string().nullable(),
    stopped: z.boolean(),
    contested: count,
    carriedOver: z.boolean(),
    openedAt: z.string(),
    lastAt: z.string(),
  })
  .meta({ id: 'JobCard' })
export const jobsAnswer = z.object({ jobs: z.array(jobCard), position })

export const keptText = z
  .object({ digest, text: z.string().nullable(), removedOn: z.string().nullable() })
  .meta({ id: 'KeptText', description: 'A text that entries name by its digest; null where it was removed.' })
export const entriesAnswer = z.object({
  entries: z.array(placedEntry),
  texts: z.array(keptText),
  position,
})

const registerLine = <R extends RegisterName>(register: R) =>
  z.object({ version: z.number().int().min(1), body: registerBodies[register] })
/** Every register as it is now; of sheets every revision, because plans rest on old ones. */
export const registersAnswer = z.object({
  workshop: workshopLine,
  position,
  people: z.array(registerLine('people')),
  riders: z.array(registerLine('riders')),
  bikes: z.array(registerLine('bikes')),
  units: z.array(registerLine('units')),
  sheets: z.array(registerLine('sheets')),
  instruments: z.array(registerLine('instruments')),
  visits: z.array(registerLine('visits')),
})

export const searchHit = z
  .object({ kind: z.enum(['unit', 'rider', 'job']), id: z.string(), title: z.string(), detail: z.string() })
  .meta({ id: 'SearchHit' })
export const searchAnswer = z.object({ hits: z.array(searchHit) })

export const riderErased = z.object({ removedOn: instant, texts: count, photos: count })
export const photoKept = z.object({ digest, kept: z.enum(['now', 'already']) })
export const sheetWritten = z.object({
  became: z.enum(['new', 'revision', 'same']),
  id,
  name: z.string(),
  revision: z.string(),
})
export const ready = z.object({ ok: z.literal(true), now: instant })

export type WorkshopLine = z.infer<typeof workshopLine>
export type WorkshopsAnswer = z.infer<typeof workshopsAnswer>
export type WorkshopAnswer = z.infer<typeof workshopAnswer>
export type WorkshopOpened = z.infer<typeof workshopOpened>
export type StationOpened = z.infer<typeof stationOpened>
export type JobCard = z.infer<typeof jobCard>
export type JobsAnswer = z.infer<typeof jobsAnswer>
export type KeptText = z.infer<typeof keptText>
export type EntriesAnswer = z.infer<typeof entriesAnswer>
export type RegistersAnswer = z.infer<typeof registersAnswer>
export type SearchHit = z.infer<typeof searchHit>
export type SearchAnswer = z.infer<typeof searchAnswer>
export type RiderErased = z.infer<typeof riderErased>
export type PhotoKept = z.infer<typeof photoKept>
export type SheetWritten = z.infer<typeof sheetWritten>
export type Ready = z.infer<typeof ready>

/** What the stream of changes sends: an event each. */
export interface RegisterChange<R extends RegisterName = RegisterName> {
  position: number
  register: R
  version: number
  body: Registers[R]
  /** With a rider who was removed: the texts and photos that went along, so that every station lets go of its own. */
  gone?: KeptText[]
}
export interface EntryChange {
  position: number
  entry: PlacedEntry
  texts: KeptText[]
}
