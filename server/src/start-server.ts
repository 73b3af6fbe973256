/** Opens the book and listens. */
import { join } from 'node:path'
import { buildApp } from './app.ts'
import { clockFrom } from './clock.ts'
import { openDataFolder } from './data-folder.ts'
import { lockFolder } from './lock-folder.ts'
import { isLoopback } from './same-place.ts'
import { StartRefused } from './start-refused.ts'
import { openPostgres } from './store/postgres/open-postgres.ts'
import { openSqlite } from './store/sqlite/open-sqlite.ts'

export interface StartOptions {
  /** Folder of the book and its lock. */
  data: string
  host: string
  port: number
  /** Address of a PostgreSQL database; without one the book is a SQLite file in `data`. */
  database?: string
  /** The built pages. */
  pages: string | null
  /** Starts the clock at this moment, for tests (ISO 8601). */
  now?: string
}

export interface Started {
  address: string
  /** For commands that speak to their own server. */
  request: (method: 'GET' | 'POST', path: string, body?: unknown) => Promise<unknown>
  close: () => Promise<void>
}

/**
 * Starts the server.
 *
 * @throws StartRefused, one sentence: a host that is not this machine, a busy port, a folder that cannot be written to,
 *         a second server on the folder, a database of a newer version
 */
export async function startServer(options: StartOptions): Promise<Started> {
  const { data, host, port, database, pages, now } = options
  if (!isLoopback(host))
    throw new StartRefused(
      `LEGWORK_HOST is ${host}; without accounts Legwork listens on this machine alone: use 127.0.0.1.`,
    )
  openDataFolder(data)
  const unlock = lockFolder(data)
  try {
    const store = database ? await openPostgres(database) : await openSqlite(join(data, 'book.sqlite'))
    const app = await buildApp({ store, clock: clockFrom(now), pages, log: true })
    app.addHook('onClose', async () => {
      await store.close()
      unlock()
    })
    await app.listen({ host, port }).catch(async (trouble: NodeJS.ErrnoException) => {
      await app.close()
      if (trouble.code === 'EADDRINUSE')
        throw new StartRefused(`Port ${port} is in use; set LEGWORK_PORT to another, or stop what listens there.`)
      throw trouble
    })
    const address = `http://${host.includes(':') ? `[${host}]` : host}:${port}`
    return {
      address,
      async request(method, path, body) {
        const sent =
          body === undefined ? {} : { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }
        const answer = await fetch(`${address}${path}`, { method, ...sent })
        if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`)
        return answer.json()
      },
      close: () => app.close(),
    }
  } catch (trouble) {
    unlock()
    throw trouble
  }
}
