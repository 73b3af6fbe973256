/** Opens the book for a command, without serving it: the same routes, asked in this process. */
import { join } from 'node:path'
import { buildApp } from './app.ts'
import { clockFrom } from './clock.ts'
import { openDataFolder } from './data-folder.ts'
import { lockFolder } from './lock-folder.ts'
import { openPostgres } from './store/postgres/open-postgres.ts'
import { openSqlite } from './store/sqlite/open-sqlite.ts'

export interface OpenedBook {
  ask: (method: 'GET' | 'POST', path: string, body?: object) => Promise<{ status: number; text: string }>
  close: () => Promise<void>
}

/** @throws FolderInUse where a server has the folder open; StartRefused for what else keeps it from opening */
export async function openBook(options: { data: string; database?: string; now?: string }): Promise<OpenedBook> {
  const { data, database, now } = options
  openDataFolder(data)
  const unlock = lockFolder(data)
  try {
    const store = database ? await openPostgres(database) : await openSqlite(join(data, 'book.sqlite'))
    const app = await buildApp({ store, clock: clockFrom(now), pages: null })
    return {
      async ask(method, url, body) {
        const sent = body === undefined ? {} : { payload: body }
        const answer = await app.inject({ method, url, headers: { host: '127.0.0.1' }, ...sent })
        return { status: answer.statusCode, text: answer.body }
      },
      async close() {
        await app.close()
        await store.close()
        unlock()
      },
    }
  } catch (trouble) {
    unlock()
    throw trouble
  }
}
