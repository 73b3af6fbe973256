/** Every calculation over HTTP: the same objects as on the command line. */
import { problem } from '@legwork/contract'
import {
  answerSchema,
  type Calculation,
  calculations,
  describeCalculation,
  runCalculation,
} from '@legwork/contract/calculations/index.ts'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { Trouble } from '../records/trouble.ts'

const named = z.object({ name: z.enum(Object.keys(calculations)) })
const config = { permission: 'calc' } as const
const { $schema: _dialect, ...problemSchema } = z.toJSONSchema(problem)

function answered(name: string, input: unknown): Record<string, unknown> {
  const answer = runCalculation(name, input)
  if (answer.ok) return answer.output
  throw new Trouble(answer.errors[0]?.code === 'unknown-calculation' ? 404 : 422, 'Not calculated', answer.errors)
}

/** What OpenAPI tells of one calculation: its own input, example and answer. */
function told(one: Calculation): object {
  const { title, summary, formula, range, sources, schema, example } = describeCalculation(one)
  return {
    summary: title,
    description: [summary, `Formula: ${formula}`, `Holds: ${range}`, `Sources: ${sources.join('; ')}`].join('\n\n'),
    tags: [one.group],
    body: { ...schema, examples: [example] },
    response: {
      200: { description: 'Worked out, in SI', ...answerSchema(one) },
      422: { description: 'Refused, field by field', ...problemSchema },
    },
  }
}

export function calcRoutes(app: FastifyInstance): void {
  const routes = app.withTypeProvider<ZodTypeProvider>()
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
  for (const one of Object.values(calculations)) {
    app.post(
      `/api/calc/${one.name}`,
      {
        config,
        schema: told(one),
        // The registry reads and refuses the same here as everywhere; what is told of it checks nothing.
        validatorCompiler: () => () => true,
        serializerCompiler: () => JSON.stringify,
      },
      (request) => answered(one.name, request.body),
    )
  }
  routes.post(
    '/api/calc/:name',
    { config, schema: { hide: true, params: z.object({ name: z.string() }), body: z.unknown() } },
    (request) => answered(request.params.name, request.body),
  )
}
