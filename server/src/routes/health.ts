/** Whether the server is ready, and what time it is there. */
import { ready } from '@legwork/contract'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import type { Server } from '../server-parts.ts'

export function healthRoute(app: FastifyInstance, { clock }: Server): void {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/healthz',
    {
      config: { permission: 'open' },
      schema: { summary: 'Ready?', response: { 200: ready } },
    },
    () => ({ ok: true as const, now: clock().toISOString() }),
  )
}
