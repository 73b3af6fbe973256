/** The embedded database: one file, its log synced to disk before a commit returns. */
import { Kysely, SqliteDialect } from 'kysely'
import { inTurn } from '../in-turn.ts'
import { migrate } from '../migrate.ts'
import { migrations } from '../migrations/all.ts'
import type { Store } from '../store.ts'
import type { Tables } from '../tables.ts'
import { openSqliteFile } from './sqlite-file.ts'

/** @throws StartRefused for a database of a newer version; the driver's error for a file that is none */
export async function openSqlite(path: string): Promise<Store> {
  const file = openSqliteFile(path)
  file.exec('PRAGMA journal_mode = WAL')
  file.exec('PRAGMA synchronous = FULL')
  file.exec('PRAGMA foreign_keys = ON')
  // INSERT OR REPLACE deletes rows, and asks their triggers only with this on.
  file.exec('PRAGMA recursive_triggers = ON')
  file.exec('PRAGMA busy_timeout = 5000')
  const read = new Kysely<Tables>({ dialect: new SqliteDialect({ database: file }) })
  try {
    await migrate(read, 'sqlite', migrations)
  } catch (trouble) {
    await read.destroy()
    throw trouble
  }
  const turn = inTurn()
  return {
    kind: 'sqlite',
    read,
    write: (work) => turn(() => read.transaction().execute(work)),
    close: () => read.destroy(),
  }
}
