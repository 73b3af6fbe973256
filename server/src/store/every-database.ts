/** Empty databases for tests: SQLite always, PostgreSQL where LEGWORK_TEST_POSTGRES names one. */
import { randomBytes } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { openPostgres } from './postgres/open-postgres.ts'
import { openSqlite } from './sqlite/open-sqlite.ts'
import type { Store } from './store.ts'

export interface TestDatabase {
  /** Opens it as a server does; a second call is a second server's connection. */
  open: () => Promise<Store>
  /** What LEGWORK_DATABASE would be; null for a file. */
  url: string | null
  /** Takes it away; every store must be closed. */
  drop: () => Promise<void>
}

export interface DatabaseKind {
  kind: Store['kind']
  create: () => Promise<TestDatabase>
}

function createFile(): Promise<TestDatabase> {
  const folder = mkdtempSync(join(tmpdir(), 'legwork-store-'))
  return Promise.resolve({
    open: () => openSqlite(join(folder, 'book.sqlite')),
    url: null,
    drop: async () => rmSync(folder, { recursive: true, force: true }),
  })
}

/** A schema of its own for each test file, so that files may run side by side in one database. */
async function createSchema(url: string): Promise<TestDatabase> {
  const schema = `test_${randomBytes(6).toString('hex')}`
  const run = async (statement: string): Promise<void> => {
    const client = new pg.Client({ connectionString: url })
    await client.connect()
    try {
      await client.query(statement)
    } finally {
      await client.end()
    }
  }
  await run(`CREATE SCHEMA ${schema}`)
  const inside = new URL(url)
  inside.searchParams.set('options', `-c search_path=${schema}`)
  return {
    open: () => openPostgres(inside.href),
    url: inside.href,
    drop: () => run(`DROP SCHEMA ${schema} CASCADE`),
  }
}

const postgres = process.env.LEGWORK_TEST_POSTGRES

/** Included by what there is, so that no test is ever skipped. */
export const everyDatabase: readonly DatabaseKind[] = [
  { kind: 'sqlite', create: createFile },
  ...(postgres ? [{ kind: 'postgres' as const, create: () => createSchema(postgres) }] : []),
]
