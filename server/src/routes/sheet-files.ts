/** Sheets as files: out by their id, in by their text. */
import { id, sheetWritten } from '@legwork/contract'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { file } from '../answers.ts'
import { readSheetAsFile, writeSheetFromFile } from '../records/sheet-files.ts'
import type { Server } from '../server-parts.ts'
import { ofWorkshop } from './workshops.ts'

const fileIn = z.strictObject({
  person: id,
  file: z.string().max(1_000_000),
  elsewhere: z.boolean().default(false),
})

export function sheetFileRoutes(app: FastifyInstance, { store, clock, announcer }: Server): void {
  const routes = app.withTypeProvider<ZodTypeProvider>()
  routes.get(
    '/api/workshops/:workshop/sheets/:sheet/file',
    {
      config: { permission: 'book.read' },
      schema: {
        summary: 'One revision of a sheet as a file (docs/sheet-file.md); the newest unless another is named',
        params: ofWorkshop.extend({ sheet: id }),
        querystring: z.object({ revision: z.string().min(1).max(20).optional() }),
        response: { 200: file('A sheet’s file, as docs/sheet-file.md tells it', 'application/json') },
      },
    },
    async (request, reply) => {
      const { workshop, sheet } = request.params
      const { name, text } = await readSheetAsFile(store, workshop, { sheet, revision: request.query.revision })
      return reply
        .type('application/json; charset=utf-8')
        .header('content-disposition', `attachment; filename*=UTF-8''${encodeURIComponent(name)}.json`)
        .header('cache-control', 'no-store')
        .send(text)
    },
  )
  routes.post(
    '/api/workshops/:workshop/sheets/file',
    {
      config: { permission: 'book.write' },
      schema: {
        summary: 'Read a sheet’s file in: a new sheet, one more revision, or nothing where it is here already',
        params: ofWorkshop,
        body: fileIn,
        response: { 200: sheetWritten },
      },
    },
    async (request) => {
      const { workshop } = request.params
      const answer = await writeSheetFromFile(store, workshop, request.body, clock())
      announcer.announce(workshop)
      return answer
    },
  )
}
