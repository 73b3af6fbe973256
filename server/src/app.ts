/** Builds the server; `start-server.ts` listens. Tests inject. */
import helmet from '@fastify/helmet'
import swagger from '@fastify/swagger'
import Fastify, { type FastifyInstance } from 'fastify'
import { serializerCompiler, validatorCompiler } from 'fastify-type-provider-zod'
import { Announcer } from './announcer.ts'
import type { Clock } from './clock.ts'
import { mustSayItsAnswer, toOpenApi, withRefusals } from './open-api.ts'
import { permissions } from './permissions.ts'
import { useProblems } from './problems.ts'
import { bookRoutes } from './routes/book.ts'
import { calcRoutes } from './routes/calc.ts'
import { changesRoute } from './routes/changes.ts'
import { demoRoute } from './routes/demo.ts'
import { healthRoute } from './routes/health.ts'
import { pagesRoutes } from './routes/pages.ts'
import { papersRoutes } from './routes/papers.ts'
import { photoRoutes } from './routes/photos.ts'
import { sheetFileRoutes } from './routes/sheet-files.ts'
import { workshopRoutes } from './routes/workshops.ts'
import { useSamePlace } from './same-place.ts'
import type { Server } from './server-parts.ts'
import type { Store } from './store/store.ts'

export interface AppOptions {
  store: Store
  clock: Clock
  /** The built pages; none in tests that need no page. */
  pages: string | null
  log?: boolean
}

/** @throws Error for a route that names no permission, or does not say what it answers with */
export async function buildApp(options: AppOptions): Promise<FastifyInstance> {
  const app = Fastify({
    logger: options.log ? { level: 'warn' } : false,
    bodyLimit: 8 * 1024 * 1024,
    forceCloseConnections: true,
  })
  app.setValidatorCompiler(validatorCompiler)
  app.setSerializerCompiler(serializerCompiler)
  app.addHook('onRoute', (route) => {
    const permission = route.config?.permission
    if (!permission || !permissions.includes(permission))
      throw new Error(`the route ${String(route.method)} ${route.url} names no permission`)
    mustSayItsAnswer(route)
  })
  useSamePlace(app)
  useProblems(app)
  await app.register(helmet, {
    contentSecurityPolicy: {
      directives: {
        defaultSrc: ["'self'"],
        styleSrc: ["'self'", "'unsafe-inline'"],
        imgSrc: ["'self'", 'data:', 'blob:'],
        connectSrc: ["'self'"],
        objectSrc: ["'none'"],
        frameAncestors: ["'none'"],
        upgradeInsecureRequests: null,
      },
    },
    strictTransportSecurity: false,
  })
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: { title: 'Legwork', version: '0.1.0', description: 'Bench book and arithmetic for forks and rear shocks.' },
    },
    transform: toOpenApi,
    transformObject: withRefusals,
  })
  const server: Server = { store: options.store, clock: options.clock, announcer: new Announcer() }
  app.addHook('onSend', async (_request, reply) => {
    reply.header('Legwork-Now', options.clock().toISOString())
  })
  healthRoute(app, server)
  workshopRoutes(app, server)
  bookRoutes(app, server)
  changesRoute(app, server)
  papersRoutes(app, server)
  await photoRoutes(app, server)
  sheetFileRoutes(app, server)
  calcRoutes(app)
  demoRoute(app, server)
  app.get('/api/openapi.json', { config: { permission: 'open' }, schema: { hide: true } }, () => app.swagger())
  if (options.pages) await pagesRoutes(app, options.pages)
  return app
}
