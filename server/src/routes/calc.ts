/** Every calculation over HTTP: the same objects as on the command line. */
import { calculations, describeCalculation, runCalculation } from '@legwork/contract/calculations/index.ts'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { Trouble } from '../records/trouble.ts'

const named = z.object({ name: z.enum(Object.keys(calculations)) })

export function calcRoutes(app: FastifyInstance): void {
  const routes = app.withTypeProvider<ZodTypeProvider>()
  const config = { permission: 'calc' } as const
  routes.get('/api/calc', { config, schema: { summary: 'The calculations, with schema, docs and example' } }, () => ({
    calculations: Object.values(calculations).map(describeCalculation),
  }))
  routes.get(
    '/api/calc/:name',
    { config, schema: { summary: 'One calculation, with schema, docs and example', params: named } },
    (request) => {
      const one = calculations[request.params.name]
      return one ? describeCalculation(one) : {}
    },
  )
  routes.post(
    '/api/calc/:name',
    { config, schema: { summary: 'Calculate', params: z.object({ name: z.string() }), body: z.unknown() } },
    (request) => {
      const answer = runCalculation(request.params.name, request.body)
      if (answer.ok) return answer.output
      throw new Trouble(answer.errors[0]?.code === 'unknown-calculation' ? 404 : 422, 'Not calculated', answer.errors)
    },
  )
}
