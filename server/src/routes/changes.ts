/** Other screens learn of entries and register lines by server-sent events, resumed by the position they had. */
import type { ServerResponse } from 'node:http'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { file } from '../answers.ts'
import { type Change, readChanges, readWorkshop, workshopLine } from '../records/read.ts'
import type { Server } from '../server-parts.ts'
import { ofWorkshop } from './workshops.ts'

const heartbeat = 15_000

function send(raw: ServerResponse, { is, change }: Change): void {
  raw.write(`id: ${change.position}\nevent: ${is}\ndata: ${JSON.stringify(change)}\n\n`)
}

export function changesRoute(app: FastifyInstance, { store, announcer }: Server): void {
  const open = new Set<ServerResponse>()
  app.addHook('preClose', async () => {
    for (const raw of open) raw.end()
  })
  app.withTypeProvider<ZodTypeProvider>().get(
    '/api/workshops/:workshop/changes',
    {
      config: { permission: 'book.read' },
      schema: {
        summary: 'What is new, as it comes (server-sent events)',
        params: ofWorkshop,
        querystring: z.object({ after: z.coerce.number().int().min(0).optional() }),
        response: {
          200: file('Events `entry`, `register` and `workshop`, their data as JSON; never ends', 'text/event-stream'),
        },
      },
    },
    async (request, reply) => {
      const { workshop } = request.params
      const shop = await readWorkshop(store.read, workshop)
      const resumed = Number(request.headers['last-event-id'])
      let position = Number.isInteger(resumed) && resumed > 0 ? resumed : (request.query.after ?? shop.last_position)
      reply.hijack()
      const { raw } = reply
      raw.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store', connection: 'keep-alive' })
      raw.write('retry: 1000\n\n')
      open.add(raw)
      let told = ''
      // What the workshop is called and how: no place in the order of the book, so it is told at every new line.
      const tellWorkshop = async (): Promise<void> => {
        const line = JSON.stringify(workshopLine(await readWorkshop(store.read, workshop)))
        if (line !== told) raw.write(`event: workshop\ndata: ${line}\n\n`)
        told = line
      }
      let reading = false
      let again = false
      const read = async (): Promise<void> => {
        again = true
        if (reading) return
        reading = true
        try {
          while (again && !raw.writableEnded) {
            again = false
            await tellWorkshop()
            for (;;) {
              const changes = await readChanges(store.read, workshop, position)
              for (const change of changes) {
                send(raw, change)
                position = change.change.position
              }
              if (changes.length < 500) break
            }
          }
        } catch (trouble) {
          // The station comes back by itself and resumes from the position it had.
          request.log.error(trouble)
          raw.end()
        } finally {
          reading = false
        }
      }
      const stop = announcer.listen(workshop, () => void read())
      const beat = setInterval(() => raw.write(': here\n\n'), heartbeat)
      raw.on('close', () => {
        stop()
        clearInterval(beat)
        open.delete(raw)
      })
      await read()
    },
  )
}
