/** The demo workshop, made once, by the same routes everybody uses. */
import { workshopAnswer } from '@legwork/contract'
import type { FastifyInstance, InjectOptions } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { buildDemo } from '../demo/build-demo.ts'
import type { Client } from '../demo/demo-station.ts'
import { readWorkshops } from '../records/read.ts'
import type { Server } from '../server-parts.ts'

function clientOf(app: FastifyInstance): Client {
  return async (method, path, body) => {
    const options: InjectOptions = { method, url: path, headers: { host: '127.0.0.1' } }
    if (body !== undefined) options.payload = body as object // every body of the demo is an object
    const answer = await app.inject(options)
    if (answer.statusCode >= 300) throw new Error(`${method} ${path}: ${answer.statusCode} ${answer.body}`)
    return answer.json()
  }
}

export function demoRoute(app: FastifyInstance, { store, clock }: Server): void {
  let making: Promise<void> | null = null
  app.withTypeProvider<ZodTypeProvider>().post(
    '/api/demo',
    {
      config: { permission: 'workshop.open' },
      schema: { summary: 'Make the demo workshop, or give the one there is', response: { 200: workshopAnswer } },
    },
    async () => {
      const find = async () => (await readWorkshops(store.read)).find((workshop) => workshop.demo)
      if (!(await find())) {
        making ??= buildDemo(clientOf(app), clock()).then(() => undefined)
        await making.finally(() => {
          making = null
        })
      }
      const workshop = await find()
      if (!workshop) throw new Error('the demo was built, and no workshop is the demo')
      return { workshop }
    },
  )
}
