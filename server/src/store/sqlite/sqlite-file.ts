/** One SQLite file through whatever this runtime has: its own `node:sqlite`, or better-sqlite3 on an older one. */
import { createRequire } from 'node:module'
import type { SqliteDatabase } from 'kysely'

const require = createRequire(import.meta.url)

/** What is used of `node:sqlite`: the types of Node 20 do not have that module yet. */
interface NodeSqlite {
  DatabaseSync: new (
    path: string,
  ) => {
    exec(sql: string): void
    close(): void
    prepare(sql: string): {
      columns(): unknown[]
      all(...values: unknown[]): unknown[]
      run(...values: unknown[]): { changes: number | bigint; lastInsertRowid: number | bigint }
      iterate(...values: unknown[]): IterableIterator<unknown>
    }
  }
}

interface OpenFile extends SqliteDatabase {
  exec(sql: string): void
}

function ownSqlite(): NodeSqlite | null {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
  if (major < 22 || (major === 22 && minor < 13)) return null
  return require('node:sqlite') as NodeSqlite // the module that name stands for
}

/** Opens a file. @throws the driver's error when it cannot be opened */
export function openSqliteFile(path: string): OpenFile {
  const own = ownSqlite()
  if (!own) {
    const BetterSqlite = require('better-sqlite3') as typeof import('better-sqlite3') // the package that name stands for
    const file = new BetterSqlite(path)
    return { prepare: (sql) => file.prepare(sql), close: () => file.close(), exec: (sql) => void file.exec(sql) }
  }
  const file = new own.DatabaseSync(path)
  return {
    exec: (sql) => file.exec(sql),
    close: () => file.close(),
    prepare(sql) {
      const statement = file.prepare(sql)
      const reader = statement.columns().length > 0
      return {
        reader,
        all: (values) => statement.all(...values),
        run: (values) => statement.run(...values),
        iterate: (values) => statement.iterate(...values),
      }
    },
  }
}
