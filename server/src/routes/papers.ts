/** Papers of a job: hand-over page, label, notice, and the next service for the calendar. */
import { id } from '@legwork/contract'
import type { Digest } from '@legwork/trade'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { file } from '../answers.ts'
import { dueCalendar } from '../papers/due-calendar.ts'
import { renderHandOverPage } from '../papers/hand-over-page.ts'
import { renderLabel } from '../papers/label.ts'
import { renderNotice } from '../papers/notice.ts'
import { type JobOnPaper, readJobOnPaper } from '../records/job-on-paper.ts'
import { handOverPageOf, labelOf, noticeOf } from '../records/job-papers.ts'
import { duesOf } from '../records/next-on-paper.ts'
import { photoBytesOf } from '../records/photos.ts'
import type { Server } from '../server-parts.ts'
import { streamName } from './book.ts'
import { ofWorkshop } from './workshops.ts'

type PhotoOf = (digest: Digest) => Promise<Uint8Array | null>

const papers: Readonly<
  Record<
    string,
    { says: string; type: string; make: (job: JobOnPaper, photoOf: PhotoOf) => Promise<Uint8Array | string> }
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
    make: async (job, photoOf) => renderNotice(await noticeOf(job, photoOf)),
  },
  'due.ics': {
    says: 'The next service as a calendar file',
    type: 'text/calendar; charset=utf-8',
    make: async (job) => dueCalendar(duesOf(job)),
  },
}

export function papersRoutes(app: FastifyInstance, { store, clock }: Server): void {
  const routes = app.withTypeProvider<ZodTypeProvider>()
  for (const [name, { says, type, make }] of Object.entries(papers))
    routes.get(
      `/api/workshops/:workshop/jobs/:stream/${name}`,
      {
        config: { permission: 'papers.read' },
        schema: {
          summary: says,
          params: ofWorkshop.extend({ stream: streamName }),
          querystring: z.object({ person: id.optional() }),
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
        const made = await make(job, (digest) => photoBytesOf(store.read, workshop, digest))
        return reply
          .type(type)
          .header('content-disposition', `inline; filename="${job.number}-${name}"`)
          .header('cache-control', 'no-store')
          .send(typeof made === 'string' ? made : Buffer.from(made))
      },
    )
}
