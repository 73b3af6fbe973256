/** Brings a database to this version's shape, one migration a transaction. */
import { type Kysely, sql } from 'kysely'
import { StartRefused } from '../start-refused.ts'
import type { Migration } from './migrations/migration.ts'
import type { Store } from './store.ts'
import type { Tables } from './tables.ts'

/** Any number will do, as long as every server takes the same one. */
const turn = 4_720_001

/**
 * Two servers that start at once on one PostgreSQL take turns; a SQLite file has one server only.
 *
 * @throws StartRefused for a database that a newer version has written
 */
export async function migrate(
  database: Kysely<Tables>,
  kind: Store['kind'],
  migrations: readonly Migration[],
): Promise<void> {
  if (kind === 'sqlite') return bring(database, kind, migrations)
  await database.connection().execute(async (connection) => {
    await sql`SELECT pg_advisory_lock(${turn})`.execute(connection)
    try {
      await bring(connection, kind, migrations)
    } finally {
      await sql`SELECT pg_advisory_unlock(${turn})`.execute(connection)
    }
  })
}

async function bring(database: Kysely<Tables>, kind: Store['kind'], migrations: readonly Migration[]): Promise<void> {
  await sql`CREATE TABLE IF NOT EXISTS migration (name TEXT PRIMARY KEY)${sql.raw(kind === 'sqlite' ? ' STRICT' : '')}`.execute(
    database,
  )
  const known = (await sql<{ name: string }>`SELECT name FROM migration`.execute(database)).rows.map((row) => row.name)
  const newer = known.find((name) => !migrations.some((migration) => migration.name === name))
  if (newer !== undefined)
    throw new StartRefused(
      `The database was written by a newer version of Legwork (it has ${newer}); start that version, or restore a backup.`,
    )
  for (const migration of migrations) {
    if (known.includes(migration.name)) continue
    await database.transaction().execute(async (transaction) => {
      for (const statement of migration[kind]) await sql.raw(statement).execute(transaction)
      await sql`INSERT INTO migration (name) VALUES (${migration.name})`.execute(transaction)
    })
  }
}
