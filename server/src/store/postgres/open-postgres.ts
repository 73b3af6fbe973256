/** PostgreSQL, for a shop that has outgrown one file. */
import { Kysely, PostgresDialect } from 'kysely'
import pg from 'pg'
import { StartRefused } from '../../start-refused.ts'
import { migrate } from '../migrate.ts'
import { migrations } from '../migrations/all.ts'
import type { Store } from '../store.ts'
import type { Tables } from '../tables.ts'

const timestamptz = 1184
const date = 1082
const bigint = 20

/** Types as the other database gives them: ISO 8601 text for dates, numbers for counts. */
const types: pg.CustomTypesConfig = {
  getTypeParser(oid, format) {
    if (oid === timestamptz) return (text: string) => new Date(text).toISOString()
    if (oid === date) return (text: string) => text
    if (oid === bigint) return Number
    return pg.types.getTypeParser(oid, format)
  },
}

/** @throws StartRefused when the database does not answer or is of a newer version */
export async function openPostgres(url: string): Promise<Store> {
  const pool = new pg.Pool({ connectionString: url, max: 8, types })
  // A connection lost while idle is replaced at the next query; without a listener it would end the process.
  pool.on('error', () => undefined)
  const read = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
  try {
    await pool.query('SELECT 1').catch((trouble: Error) => {
      throw new StartRefused(`The database at ${new URL(url).host} does not answer (${trouble.message}).`)
    })
    await migrate(read, 'postgres', migrations)
  } catch (trouble) {
    await read.destroy()
    throw trouble
  }
  return { kind: 'postgres', read, write: (work) => read.transaction().execute(work), close: () => read.destroy() }
}
