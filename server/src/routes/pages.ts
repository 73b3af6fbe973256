/** The built pages: assets by their hash, everything else the one page of the app. */
import fastifyStatic from '@fastify/static'
import type { FastifyInstance } from 'fastify'
import { sendProblem } from '../problems.ts'

export async function pagesRoutes(app: FastifyInstance, folder: string): Promise<void> {
  await app.register(async (pages) => {
    await pages.register(fastifyStatic, {
      root: folder,
      wildcard: false,
      serve: false,
      cacheControl: false,
      // The build writes each file once more as Brotli and gzip.
      preCompressed: true,
    })
    pages.get('/*', { config: { permission: 'open' }, schema: { hide: true } }, async (request, reply) => {
      const path = decodeURIComponent(request.url.split('?')[0] ?? '/')
      if (path.startsWith('/api/')) return sendProblem(reply, 404, `Nothing at ${path}`)
      const name = path.slice(1)
      if (name !== '' && /\.[a-z0-9]+$/.test(name)) {
        const kept = name.startsWith('assets/')
        reply.header('cache-control', kept ? 'public, max-age=31536000, immutable' : 'no-cache')
        return reply.sendFile(name)
      }
      reply.header('cache-control', 'no-cache')
      return reply.sendFile('index.html')
    })
  })
}
