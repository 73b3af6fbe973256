/** Papers of a job: hand-over page, label, notice, and the next service for the calendar. */
import { id } from '@legwork/contract'
import { type Digest, usualBike } from '@legwork/trade'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { file } from '../answers.ts'
import { dueCalendar } from '../papers/due-calendar.ts'
import { renderHandOverPage } from '../papers/hand-over-page.ts'
import { renderLabel } from '../papers/label.ts'
import { renderNotice } from '../papers/notice.ts'
import { renderStartCard } from '../papers/start-card.ts'
import { type JobOnPaper, readJobOnPaper } from '../records/job-on-paper.ts'
import { handOverPageOf, labelOf, noticeOf } from '../records/job-papers.ts'
import { duesOf } from '../records/next-on-paper.ts'
import { photoBytesOf } from '../records/photos.ts'
import { type CardBike, startCardOf } from '../records/start-card-on-paper.ts'
import type { Server } from '../server-parts.ts'
import { streamName } from './book.ts'
import { ofWorkshop } from './workshops.ts'

/** The bike that a start card is reckoned for. */
const cardBike = z.object({
  headAngle: z.coerce.number().min(45).max(85).default(usualBike.headAngle),
  frontMass: z.coerce.number().min(0).max(40).default(usualBike.frontMass),
  sag: z.coerce.number().min(0.05).max(0.5).default(0.2),
})

interface Asked {
  photoOf: (digest: Digest) => Promise<Uint8Array | null>
  bike: CardBike
}

const papers: Readonly<
  Record<
    string,
    {
      says: string
      type: string
      query?: z.ZodObject
      make: (job: JobOnPaper, asked: Asked) => Promise<Uint8Array | string>
    }
  >
> = {
  'hand-over.pdf': {
    says: 'The hand-over page',
    type: 'application/pdf',
    make: (job) => renderHandOverPage(handOverPageOf(job)),
  },
  'label.pdf': { says: 'The label of the unit', type: 'application/pdf', make: (job) => renderLabel(labelOf(job)) },
  'notice.pdf': {
    says: 'The written notice of a stopped job',
    type: 'application/pdf',
    make: async (job, { photoOf }) => renderNotice(await noticeOf(job, photoOf)),
  },
  'start-card.pdf': {
    says: 'The start card of a unit that came alone: a pressure for each mass of a rider',
    type: 'application/pdf',
    query: cardBike,
    make: async (job, { bike }) => renderStartCard(startCardOf(job, bike)),
  },
  'due.ics': {
    says: 'The next service as a calendar file',
    type: 'text/calendar; charset=utf-8',
    make: async (job) => dueCalendar(duesOf(job)),
  },
}

export function papersRoutes(app: FastifyInstance, { store, clock }: Server): void {
  const routes = app.withTypeProvider<ZodTypeProvider>()
  for (const [name, { says, type, query, make }] of Object.entries(papers))
    routes.get(
      `/api/workshops/:workshop/jobs/:stream/${name}`,
      {
        config: { permission: 'papers.read' },
        schema: {
          summary: says,
          params: ofWorkshop.extend({ stream: streamName }),
          querystring: z.object({ person: id.optional(), ...query?.shape }),
          response: { 200: file(says, type) },
        },
      },
      async (request, reply) => {
        const { workshop, stream } = request.params
        const job = await readJobOnPaper(store.read, {
          workshop,
          stream,
          person: request.query.person ?? null,
          origin: `http://${request.headers.host}`,
          now: clock().toISOString(),
        })
        const made = await make(job, {
          photoOf: (digest) => photoBytesOf(store.read, workshop, digest),
          bike: cardBike.parse(request.query),
        })
        return reply
          .type(type)
          .header('content-disposition', `inline; filename="${job.number}-${name}"`)
          .header('cache-control', 'no-store')
          .send(typeof made === 'string' ? made : Buffer.from(made))
      },
    )
}
