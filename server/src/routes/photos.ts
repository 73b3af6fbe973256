/** Photos in and out by their digest. */
import { digest, id, photoBytes, photoKept } from '@legwork/contract'
import type { FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'
import { z } from 'zod'
import { file } from '../answers.ts'
import { keepPhoto, readPhoto } from '../records/photos.ts'
import { Trouble } from '../records/trouble.ts'
import type { Server } from '../server-parts.ts'
import { ofWorkshop } from './workshops.ts'

const ofPhoto = ofWorkshop.extend({ digest })

function tooLarge(came: string): Trouble {
  const allowed = `at most ${photoBytes / 1024 / 1024} MB`
  return new Trouble(413, 'The photo is not taken', [
    { field: 'photo', code: 'photo.too-large', came, allowed, next: 'Make it smaller before sending.' },
  ])
}

export async function photoRoutes(app: FastifyInstance, { store, clock }: Server): Promise<void> {
  // A scope of its own: pictures are read as bytes here and nowhere else.
  await app.register(async (scope) => {
    scope.addContentTypeParser('*', { parseAs: 'buffer' }, (_request, body, done) => done(null, body))
    const routes = scope.withTypeProvider<ZodTypeProvider>()
    routes.put(
      '/api/workshops/:workshop/photos/:digest',
      {
        config: { permission: 'photo.write' },
        bodyLimit: photoBytes,
        schema: {
          summary: 'Keep a photo that an entry names; the same again changes nothing',
          consumes: ['image/jpeg'],
          params: ofPhoto,
          body: z
            .unknown()
            .meta({ contentMediaType: 'image/jpeg', description: 'A whole JPEG that tells nothing but the picture' }),
          querystring: z.object({ person: id, station: id }),
          response: { 200: photoKept, 201: photoKept },
        },
        errorHandler: (error, request) => {
          if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE')
            throw tooLarge(`${request.headers['content-length'] ?? 'more'} bytes`)
          throw error
        },
      },
      async (request, reply) => {
        const { workshop, digest: named } = request.params
        const bytes = Buffer.isBuffer(request.body) ? request.body : Buffer.alloc(0)
        const kept = await keepPhoto(store, { workshop, digest: named, ...request.query, bytes }, clock())
        return reply.code(kept.kept === 'now' ? 201 : 200).send(kept)
      },
    )
    routes.get(
      '/api/workshops/:workshop/photos/:digest',
      {
        config: { permission: 'photo.read' },
        schema: {
          summary: 'A photo by its digest',
          params: ofPhoto,
          response: { 200: file('The picture, and nothing but it', 'image/jpeg') },
        },
      },
      async (request, reply) => {
        const { workshop, digest: named } = request.params
        const bytes = await readPhoto(store.read, workshop, named)
        // Asked for anew each time: a removed photo must not come out of a browser's store.
        return reply.type('image/jpeg').header('cache-control', 'no-store').send(bytes)
      },
    )
  })
}
