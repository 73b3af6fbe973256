/** Every calculation over HTTP: the same objects as on the command line. */
import { setImmediate as aTurn } from 'node:timers/promises'
import {
  type Answer,
  answerSchema,
  type Calculation,
  calculations,
  calculationTold,
  describeCalculation,
  doubtInSteps,
  runCalculation,
} from '@legwork/contract/calculations/index.ts'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { asWritten } from '../answers.ts'
import { Trouble } from '../records/trouble.ts'

const named = z.object({ name: z.enum(Object.keys(calculations)) })
const config = { permission: 'calc' } as const

function answered(answer: Answer): Record<string, unknown> {
  if (answer.ok) return answer.output
  throw new Trouble(answer.errors[0]?.code === 'unknown-calculation' ? 404 : 422, 'Not calculated', answer.errors)
}

/** `doubt` may take seconds: between its steps other requests have their turn. */
async function doubted(input: unknown): Promise<Answer> {
  const steps = doubtInSteps(input)
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value.answer
    await aTurn()
  }
}

/** What OpenAPI tells of one calculation: its own input, example and answer. */
function told(one: Calculation): object {
  const { title, summary, formula, range, sources, schema, example } = describeCalculation(one)
  return {
    summary: title,
    description: [summary, `Formula: ${formula}`, `Holds: ${range}`, `Sources: ${sources.join('; ')}`].join('\n\n'),
    tags: [one.group],
    body: { ...schema, examples: [example] },
    response: { 200: { description: 'Worked out, in SI', ...answerSchema(one) } },
  }
}

export function calcRoutes(app: FastifyInstance): void {
  const routes = app.withTypeProvider<ZodTypeProvider>()
  routes.get(
    '/api/calc',
    {
      config,
      schema: {
        summary: 'The calculations, with schema, docs and example',
        response: { 200: z.object({ calculations: z.array(calculationTold) }) },
      },
      serializerCompiler: asWritten,
    },
    () => ({ calculations: Object.values(calculations).map(describeCalculation) }),
  )
  routes.get(
    '/api/calc/:name',
    {
      config,
      schema: {
        summary: 'One calculation, with schema, docs and example',
        params: named,
        response: { 200: calculationTold },
      },
      serializerCompiler: asWritten,
    },
    (request) => {
      const one = calculations[request.params.name]
      if (!one) throw new Trouble(404, 'No such calculation', [])
      return describeCalculation(one)
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
      async (request) =>
        answered(one.name === 'doubt' ? await doubted(request.body) : runCalculation(one.name, request.body)),
    )
  }
  routes.post(
    '/api/calc/:name',
    { config, schema: { hide: true, params: z.object({ name: z.string() }), body: z.unknown() } },
    (request) => answered(runCalculation(request.params.name, request.body)),
  )
}
