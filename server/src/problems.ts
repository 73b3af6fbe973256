/** Every refusal leaves the server as a problem document (RFC 9457). */
import { type FieldError, fieldErrors, type Problem } from '@legwork/contract'
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod'
import { Trouble } from './records/trouble.ts'

/** Sends a problem document. */
export function sendProblem(
  reply: FastifyReply,
  status: number,
  title: string,
  errors: readonly FieldError[] = [],
): FastifyReply {
  const detail = errors
    .map((error) => `${error.field} is ${error.came}; allowed: ${error.allowed}. ${error.next}`)
    .join(' ')
  const problem: Problem = {
    type: errors[0] ? `urn:legwork:error:${errors[0].code}` : 'about:blank',
    title,
    status,
    detail: detail || title,
    errors: [...errors],
  }
  return reply.code(status).type('application/problem+json').send(JSON.stringify(problem))
}

function refusedFields(error: FastifyError, request: FastifyRequest): FieldError[] | null {
  if (!hasZodFastifySchemaValidationErrors(error)) return null
  const whole = { body: request.body, params: request.params, querystring: request.query }[
    String(error.validationContext)
  ]
  // The provider takes an issue of the schema apart; put together again it reads as every other.
  const issues = error.validation.map(({ keyword, instancePath, message, params }) => {
    const path = instancePath.split('/').filter((step) => step !== '')
    return { ...params, code: keyword, path, message: message ?? '' }
  })
  return fieldErrors({ issues } as unknown as Parameters<typeof fieldErrors>[0], whole) // only `issues` is read
}

function bodyError(code: string, came: string, allowed: string, next: string): FieldError {
  return { field: 'body', code, came, allowed, next }
}

/** What is wrong with a body before any route sees it. */
function bodyErrors(status: number, request: FastifyRequest): FieldError[] {
  const type = request.headers['content-type'] ?? 'no media type'
  if (status === 400) return [bodyError('body.not-json', 'no JSON', 'JSON (RFC 8259)', 'Send one JSON object.')]
  if (status === 413)
    return [bodyError('body.too-large', 'more than that', 'at most what the route takes', 'Send it in parts.')]
  if (status === 415)
    return [bodyError('body.media-type', type, 'application/json', 'Name the media type of the body.')]
  return []
}

/** Turns whatever a route throws into a problem document; what nobody foresaw is logged and told without its inside. */
export function useProblems(app: FastifyInstance): void {
  app.setNotFoundHandler((request, reply) => {
    const came = `${request.method} ${request.url}`
    const next = 'See `GET /api/openapi.json`.'
    const allowed = 'an address and a method that something answers to'
    return sendProblem(reply, 404, `Nothing at ${came}`, [{ field: 'path', code: 'path.unknown', came, allowed, next }])
  })
  app.setErrorHandler((error: FastifyError, request, reply) => {
    if (error instanceof Trouble) return sendProblem(reply, error.status, error.message, error.errors)
    const fields = refusedFields(error, request)
    if (fields) return sendProblem(reply, 422, 'Not taken', fields)
    const status = error.statusCode ?? 500
    if (status < 500) return sendProblem(reply, status, error.message, bodyErrors(status, request))
    request.log.error(error)
    return sendProblem(reply, 500, 'Something went wrong here; nothing was written')
  })
}
