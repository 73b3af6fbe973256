/** What a route lets a person do; every route names one, from the first day on. */
export type Permission =
  | 'open'
  | 'calc'
  | 'book.read'
  | 'book.write'
  | 'papers.read'
  | 'photo.read'
  | 'photo.write'
  | 'station.open'
  | 'workshop.open'
  | 'workshop.change'
  | 'rider.erase'

export const permissions: readonly Permission[] = [
  'open',
  'calc',
  'book.read',
  'book.write',
  'papers.read',
  'photo.read',
  'photo.write',
  'station.open',
  'workshop.open',
  'workshop.change',
  'rider.erase',
]

declare module 'fastify' {
  interface FastifyContextConfig {
    permission?: Permission
  }
}
