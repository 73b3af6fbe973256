/** What `/api/openapi.json` tells: every route, what it answers with, and how it refuses. */
import type { SwaggerTransform, SwaggerTransformObject } from '@fastify/swagger'
import { problem } from '@legwork/contract'
import type { RouteOptions } from 'fastify'
import { jsonSchemaTransform, jsonSchemaTransformObject } from 'fastify-type-provider-zod'
import { z } from 'zod'

/** Zod schemas become JSON Schema; a route that brings JSON Schema, as the calculations do, keeps it. */
export const toOpenApi: SwaggerTransform = (route) => {
  const { schema, url } = route
  const isPlain = schema?.body !== undefined && !(schema.body instanceof z.ZodType)
  return isPlain ? { schema, url } : jsonSchemaTransform(route)
}

/** @throws Error for a route that is told of and says nothing of its answer */
export function mustSayItsAnswer({ schema, method, url }: Pick<RouteOptions, 'schema' | 'method' | 'url'>): void {
  // A HEAD that comes with a GET answers with the same head and nothing else.
  if (method === 'HEAD' || schema?.hide) return
  if (!schema?.response) throw new Error(`the route ${String(method)} ${url} does not say what it answers with`)
}

const { $schema: _dialect, ...problemSchema } = z.toJSONSchema(problem)
const asProblem = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
})
/** RFC 9457: every route refuses in this form. */
const refusals = {
  Refused: asProblem('Refused; nothing was written. Field by field: what came, what is allowed, what to do.'),
  Failed: asProblem('Something went wrong here; nothing was written.'),
}

type Part = Record<string, unknown>
const isPart = (value: unknown): value is Part => typeof value === 'object' && value !== null

/** Names of the schemas that this part refers to, by itself or through others. */
function namesIn(part: unknown, schemas: Part, found = new Set<string>()): Set<string> {
  if (Array.isArray(part)) for (const one of part) namesIn(one, schemas, found)
  else if (isPart(part))
    for (const [key, value] of Object.entries(part)) {
      const name = key === '$ref' && typeof value === 'string' ? value.split('#/components/schemas/')[1] : undefined
      if (name === undefined) namesIn(value, schemas, found)
      else if (!found.has(name)) namesIn(schemas[name], schemas, found.add(name))
    }
  return found
}

/** Adds to every route how it refuses, and leaves out schemas that nothing refers to. */
export const withRefusals: SwaggerTransformObject = (route) => {
  const told: Part = { ...jsonSchemaTransformObject(route) }
  const paths = isPart(told.paths) ? told.paths : {}
  for (const operation of Object.values(paths).flatMap((path) => (isPart(path) ? Object.values(path) : [])))
    if (isPart(operation) && isPart(operation.responses)) {
      for (const answer of Object.values(operation.responses))
        if (isPart(answer) && answer.description === 'Default Response') answer.description = operation.summary
      operation.responses = {
        ...operation.responses,
        '4XX': { $ref: '#/components/responses/Refused' },
        '5XX': { $ref: '#/components/responses/Failed' },
      }
    }
  const components = isPart(told.components) ? told.components : {}
  const schemas: Part = { ...(isPart(components.schemas) ? components.schemas : {}), Problem: problemSchema }
  const used = namesIn([paths, refusals], schemas)
  // Still the document that came in: paths and head are untouched, components have the shape that the swagger plugin wrote.
  return {
    ...told,
    components: {
      ...components,
      responses: refusals,
      schemas: Object.fromEntries(Object.entries(schemas).filter(([name]) => used.has(name))),
    },
  } as ReturnType<SwaggerTransformObject>
}
