/** What `/api/openapi.json` tells of each route. */
import type { SwaggerTransform } from '@fastify/swagger'
import { jsonSchemaTransform } from 'fastify-type-provider-zod'
import { z } from 'zod'

/** Zod schemas become JSON Schema; a route that brings JSON Schema, as the calculations do, keeps it. */
export const toOpenApi: SwaggerTransform = (route) => {
  const { schema, url } = route
  const isPlain = schema?.body !== undefined && !(schema.body instanceof z.ZodType)
  return isPlain ? { schema, url } : jsonSchemaTransform(route)
}
