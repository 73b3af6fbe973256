/** The book: deliveries in, entries and what they add up to out; the ledger; search; erasing a rider. */
import { delivery, deliveryAnswer, entriesAnswer, id, jobsAnswer, riderErased, searchAnswer } from '@legwork/contract'
import type { Stream } from '@legwork/trade'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { asWritten } from '../answers.ts'
import { append } from '../records/append.ts'
import { eraseRider } from '../records/erase-rider.ts'
import { ledgerLine, ledgerLines, readLedger, writeLedger } from '../records/ledger.ts'
import { readEntries, readJobCards, readStreamEntries, search } from '../records/read.ts'
import type { Server } from '../server-parts.ts'
import { ofWorkshop } from './workshops.ts'

export const streamName = z
  .string()
  .regex(/^(job|unit):[0-9a-f-]{36}$/)
  // The pattern is the type's.
  .transform((text) => text as Stream)
const after = z.coerce.number().int().min(0).default(0)

export function bookRoutes(app: FastifyInstance, { store, clock, announcer }: Server): void {
  const routes = app.withTypeProvider<ZodTypeProvider>()
  routes.post(
    '/api/workshops/:workshop/deliveries',
    {
      config: { permission: 'book.write' },
      schema: {
        summary: 'Deliver entries and register lines in the station’s order',
        params: ofWorkshop,
        body: delivery,
        response: { 200: deliveryAnswer },
      },
    },
    async (request) => {
      const answer = await append(store, request.params.workshop, request.body, clock())
      announcer.announce(request.params.workshop)
      return answer
    },
  )
  routes.get(
    '/api/workshops/:workshop/entries',
    {
      config: { permission: 'book.read' },
      schema: {
        summary: 'Entries of all streams after a position',
        params: ofWorkshop,
        querystring: z.object({ after, limit: z.coerce.number().int().min(1).max(2000).default(1000) }),
        response: { 200: entriesAnswer },
      },
      serializerCompiler: asWritten,
    },
    async (request) => readEntries(store.read, request.params.workshop, request.query.after, request.query.limit),
  )
  routes.get(
    '/api/workshops/:workshop/streams/:stream/entries',
    {
      config: { permission: 'book.read' },
      schema: {
        summary: 'Entries of one stream',
        params: ofWorkshop.extend({ stream: streamName }),
        querystring: z.object({ after }),
        response: { 200: entriesAnswer },
      },
      serializerCompiler: asWritten,
    },
    async (request) =>
      readStreamEntries(store.read, request.params.workshop, request.params.stream, request.query.after),
  )
  routes.get(
    '/api/workshops/:workshop/jobs',
    {
      config: { permission: 'book.read' },
      schema: { summary: 'Job cards', params: ofWorkshop, response: { 200: jobsAnswer } },
      serializerCompiler: asWritten,
    },
    async (request) => readJobCards(store.read, request.params.workshop),
  )
  routes.get(
    '/api/workshops/:workshop/search',
    {
      config: { permission: 'book.read' },
      schema: {
        summary: 'Units, riders and jobs by the beginnings of words',
        params: ofWorkshop,
        querystring: z.object({ q: z.string().max(200) }),
        response: { 200: searchAnswer },
      },
    },
    async (request) => ({ hits: await search(store.read, request.params.workshop, request.query.q) }),
  )
  routes.get(
    '/api/workshops/:workshop/ledger',
    {
      config: { permission: 'book.read' },
      schema: { summary: 'Ins and outs of the store', params: ofWorkshop, response: { 200: ledgerLines } },
    },
    async (request) => ({ lines: await readLedger(store.read, request.params.workshop) }),
  )
  routes.post(
    '/api/workshops/:workshop/ledger',
    {
      config: { permission: 'book.write' },
      schema: { summary: 'Write an in or out', params: ofWorkshop, body: ledgerLine, response: { 201: ledgerLine } },
    },
    async (request, reply) =>
      reply.code(201).send(await writeLedger(store, request.params.workshop, request.body, clock())),
  )
  routes.post(
    '/api/workshops/:workshop/riders/:rider/erase',
    {
      config: { permission: 'rider.erase' },
      schema: {
        summary: 'Take a rider’s name and the texts of their jobs out, for good',
        params: ofWorkshop.extend({ rider: id }),
        body: z.strictObject({ person: id, station: id }),
        response: { 200: riderErased },
      },
    },
    async (request) => {
      const { workshop, rider } = request.params
      const erased = await eraseRider(store, workshop, rider, request.body, clock())
      announcer.announce(workshop)
      return erased
    },
  )
}
