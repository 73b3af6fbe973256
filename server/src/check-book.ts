/** Opens the book without serving it, and rebuilds its projections. */
import { join } from 'node:path'
import { openDataFolder } from './data-folder.ts'
import { lockFolder } from './lock-folder.ts'
import { type Rebuilt, rebuild } from './records/rebuild.ts'
import { openPostgres } from './store/postgres/open-postgres.ts'
import { openSqlite } from './store/sqlite/open-sqlite.ts'

/** @throws StartRefused where a server has the folder open */
export async function checkBook({ data, database }: { data: string; database?: string }): Promise<Rebuilt> {
  openDataFolder(data)
  const unlock = lockFolder(data)
  try {
    const store = database ? await openPostgres(database) : await openSqlite(join(data, 'book.sqlite'))
    try {
      return await rebuild(store)
    } finally {
      await store.close()
    }
  } finally {
    unlock()
  }
}
