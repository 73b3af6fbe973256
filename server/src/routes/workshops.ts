/** Workshops, stations, registers. */
import {
  id,
  person,
  registersAnswer,
  stationOpened,
  workshopAnswer,
  workshopOpened,
  workshopsAnswer,
} from '@legwork/contract'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { asWritten } from '../answers.ts'
import { readRegisters, readWorkshops } from '../records/read.ts'
import { changeLetterhead, freshId, openStation, openWorkshop } from '../records/workshops.ts'
import type { Server } from '../server-parts.ts'

const newWorkshop = z.strictObject({
  name: z.string().trim().min(1).max(120),
  home: z.boolean(),
  demo: z.boolean().default(false),
  person: person.omit({ id: true }),
})
/** A station that may lose the answer makes its own id: asked again with it, it is the same station. */
const newStation = z.strictObject({ id: id.optional(), workshop: id, name: z.string().trim().min(1).max(120) })
const said = (most: number) => z.string().trim().min(1).max(most).nullable()
const letterhead = z.strictObject({
  name: z.string().trim().min(1).max(120),
  address: said(200),
  phone: said(60),
  terms: said(600),
})
export const ofWorkshop = z.object({ workshop: id })

export function workshopRoutes(app: FastifyInstance, { store, clock, announcer }: Server): void {
  const routes = app.withTypeProvider<ZodTypeProvider>()
  routes.get(
    '/api/workshops',
    {
      config: { permission: 'open' },
      schema: { summary: 'The workshops of this server', response: { 200: workshopsAnswer } },
    },
    async () => ({
      workshops: await readWorkshops(store.read),
    }),
  )
  routes.post(
    '/api/workshops',
    {
      config: { permission: 'workshop.open' },
      schema: {
        summary: 'Open a workshop with its first person',
        body: newWorkshop,
        response: { 201: workshopOpened },
      },
    },
    async (request, reply) => reply.code(201).send(await openWorkshop(store, request.body, clock())),
  )
  routes.put(
    '/api/workshops/:workshop/letterhead',
    {
      config: { permission: 'workshop.change' },
      schema: {
        summary: 'Write what stands at the head of the papers',
        params: ofWorkshop,
        body: letterhead,
        response: { 200: workshopAnswer },
      },
    },
    async (request) => {
      const workshop = await changeLetterhead(store, request.params.workshop, request.body)
      announcer.announce(workshop.id)
      return { workshop }
    },
  )
  routes.post(
    '/api/stations',
    {
      config: { permission: 'station.open' },
      schema: {
        summary: 'Sign a station in; without an id it is given one',
        body: newStation,
        response: { 200: stationOpened },
      },
    },
    async ({ body: { id: own, ...asked } }) => openStation(store, { ...asked, id: own ?? freshId(clock()) }, clock()),
  )
  routes.get(
    '/api/workshops/:workshop/registers',
    {
      config: { permission: 'book.read' },
      schema: {
        summary: 'Every register, of sheets every revision',
        params: ofWorkshop,
        response: { 200: registersAnswer },
      },
      serializerCompiler: asWritten,
    },
    async (request) => readRegisters(store.read, request.params.workshop),
  )
}
