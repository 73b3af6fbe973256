/** Whether the server is ready, and what time it is there. */
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import type { Server } from '../server-parts.ts'

export function healthRoute(app: FastifyInstance, { clock }: Server): void {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/healthz',
    {
      config: { permission: 'open' },
      schema: { summary: 'Ready?', response: { 200: z.object({ ok: z.literal(true), now: z.string() }) } },
    },
    () => ({ ok: true as const, now: clock().toISOString() }),
  )
}
