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
  return error.validation.flatMap((line) => {
    const { issue } = line.params
    return issue ? fieldErrors({ issues: [issue] } as Parameters<typeof fieldErrors>[0], whole) : [] // only `issues` is read
  })
}

/** Turns whatever a route throws into a problem document; what nobody foresaw is logged and told without its inside. */
export function useProblems(app: FastifyInstance): void {
  app.setNotFoundHandler((request, reply) => sendProblem(reply, 404, `Nothing at ${request.method} ${request.url}`))
  app.setErrorHandler((error: FastifyError, request, reply) => {
    if (error instanceof Trouble) return sendProblem(reply, error.status, error.message, error.errors)
    const fields = refusedFields(error, request)
    if (fields) return sendProblem(reply, 422, 'Not taken', fields)
    const status = error.statusCode ?? 500
    if (status < 500) return sendProblem(reply, status, error.message)
    request.log.error(error)
    return sendProblem(reply, 500, 'Something went wrong here; nothing was written')
  })
}
