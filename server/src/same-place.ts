/** Only this machine's own pages speak to this server: Host and Origin are checked on every request. */
import type { FastifyInstance } from 'fastify'
import { sendProblem } from './problems.ts'

const loopback = ['127.0.0.1', 'localhost', '[::1]']

/** @example isLoopback('127.0.0.1') // true */
export function isLoopback(host: string): boolean {
  return loopback.includes(host) || host === '::1'
}

function hostname(host: string): string {
  return host.startsWith('[') ? host.slice(0, host.indexOf(']') + 1) : (host.split(':')[0] ?? '')
}

/** Refuses requests for another host and writes that come from another page. */
export function useSamePlace(app: FastifyInstance): void {
  app.addHook('onRequest', async (request, reply) => {
    const host = request.headers.host ?? ''
    if (!loopback.includes(hostname(host)))
      return sendProblem(reply, 421, 'Wrong host', [
        {
          field: 'Host',
          code: 'host.wrong',
          came: host || 'nothing',
          allowed: loopback.join(', '),
          next: 'Open Legwork by its own address.',
        },
      ])
    const { origin } = request.headers
    if (origin !== undefined && origin !== `http://${host}`)
      return sendProblem(reply, 403, 'Wrong origin', [
        {
          field: 'Origin',
          code: 'origin.wrong',
          came: origin,
          allowed: `http://${host}`,
          next: 'Use Legwork’s own pages.',
        },
      ])
    return undefined
  })
}
