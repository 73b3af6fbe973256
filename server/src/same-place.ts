/** Only this machine's own pages speak to this server: Host and Origin are checked on every request. */
import type { FastifyInstance } from 'fastify'
import { sendProblem } from './problems.ts'

const loopback = ['127.0.0.1', 'localhost', '[::1]']

/** @example isLoopback('127.0.0.1') // true */
export function isLoopback(host: string): boolean {
  return loopback.includes(host) || host === '::1'
}

/** Name and port that a request was meant for; a Host without a port means HTTP's own. */
function placeOf(host: string): { name: string; port: number } {
  const [, name = '', port = '80'] = /^(\[[^\]]*\]|[^:]*)(?::(\d+))?$/.exec(host) ?? []
  return { name, port: Number(port) }
}

/** Refuses requests for another host or port and writes that come from another page. */
export function useSamePlace(app: FastifyInstance): void {
  app.addHook('onRequest', async (request, reply) => {
    const host = request.headers.host ?? ''
    const { name, port } = placeOf(host)
    // Requests that a test injects come through no socket, so there is no port to compare.
    const ours = request.socket.localPort ?? port
    if (!loopback.includes(name) || port !== ours)
      return sendProblem(reply, 421, 'Wrong host', [
        {
          field: 'Host',
          code: 'host.wrong',
          came: host || 'nothing',
          allowed: loopback.map((one) => `${one}:${ours}`).join(', '),
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
