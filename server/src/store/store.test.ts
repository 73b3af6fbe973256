import { sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { StartRefused } from '../start-refused.ts'
import { everyDatabase, type TestDatabase } from './every-database.ts'
import { migrate } from './migrate.ts'
import { migrations } from './migrations/all.ts'
import type { Store } from './store.ts'

const shop = '01900000-0000-7000-8000-000000000001'
const person = '01900000-0000-7000-8000-000000000002'
const station = '01900000-0000-7000-8000-000000000003'
const stream = 'job:01900000-0000-7000-8000-000000000004'
const at = '2026-03-01T09:00:00.000Z'
const hand = { workshop: shop, person, station }
const sheet = { ...hand, id: 'sheet', version: 1, body: '{}', changed_at: at, revision: 'A', stroke: 0.15 }

/** One entry of the first stream, numbered `number` everywhere. */
const entry = (number: number) => ({
  ...hand,
  id: `entry-${number}`,
  position: number,
  stream,
  seq: number,
  station_no: number,
  made_at: at,
  received_at: at,
  kind: 'noted',
  version: 1,
  seen: 0,
  mode: 'now' as const,
  done_at: null,
  body: '{}',
  clock_boot: 'boot',
  clock_reading: 1234.5,
})
const ledgerLine = (id: string, volume: number) => ({
  ...hand,
  id,
  item: 'oil',
  direction: 'in' as const,
  volume,
  pieces: null,
  reason: 'bought',
  stream: null,
  written_at: at,
})

describe.each(everyDatabase)('the store on $kind', ({ kind, create }) => {
  let database: TestDatabase
  let store: Store

  beforeAll(async () => {
    database = await create()
    store = await database.open()
    await store.write(async (write) => {
      const made = { name: 'Shop', demo: 0, home: 0, last_position: 0, created_at: at } as const
      await write
        .insertInto('workshop')
        .values({ id: shop, workshop: shop, person, station: null, ...made })
        .execute()
      await write
        .insertInto('station')
        .values({ ...hand, id: station, name: 'Tablet', delivered_no: 0, created_at: at })
        .execute()
      await write
        .insertInto('people')
        .values({ ...hand, id: person, version: 1, body: '{}', changed_at: at, name: 'Ada' })
        .execute()
      await write
        .insertInto('stream')
        .values({ ...hand, id: stream, head_seq: 1, created_at: at })
        .execute()
      await write.insertInto('entry').values(entry(1)).execute()
      await write.insertInto('ledger').values(ledgerLine('ledger-1', 0.001)).execute()
    })
  })
  afterAll(async () => {
    await store.close()
    await database.drop()
  })

  // ISO 8601 / Gregorian calendar: February 2026 has 28 days, there is no hour 25
  it.each(['2026-02-30T09:00:00.000Z', '2026-03-01T25:00:00.000Z', 'yesterday, about nine', ''])(
    'the database refuses %j as a date and time',
    async (bad) => {
      const row = { ...entry(2), made_at: bad }
      await expect(store.read.insertInto('entry').values(row).execute()).rejects.toThrow(
        /CHECK constraint failed|date\/time|timestamp/,
      )
    },
  )

  it.each(['2026-02-30', 'next week', '2026-13-01'])('the database refuses %j as a day', async (promised) => {
    const row = { ...hand, id: 'visit', version: 1, body: '{}', changed_at: at, promised }
    await expect(store.read.insertInto('visits').values(row).execute()).rejects.toThrow(
      /CHECK constraint failed|date\/time|type date/,
    )
  })

  it('the database refuses a row whose parent is not there', async () => {
    const orphan = /FOREIGN KEY constraint failed|violates foreign key/
    const unit = { ...hand, id: 'unit', version: 1, body: '{}', changed_at: at, label: 'U01', sheet: 'none' }
    await expect(store.read.insertInto('units').values(unit).execute()).rejects.toThrow(orphan)
    const elsewhere = { ...entry(2), stream: 'job:01900000-0000-7000-8000-00000000dead' }
    await expect(store.read.insertInto('entry').values(elsewhere).execute()).rejects.toThrow(orphan)
    const lost = {
      ...hand,
      workshop: 'none',
      id: 'other',
      station: 'other',
      name: 'T',
      delivered_no: 0,
      created_at: at,
    }
    await expect(store.read.insertInto('station').values(lost).execute()).rejects.toThrow(orphan)
    const oil = { ...hand, stream, leg: 'left' as const, volume: 1e-5, entry: 'none' }
    await expect(store.read.insertInto('oil_used').values(oil).execute()).rejects.toThrow(orphan)
  })

  it('the database refuses a negative volume, and a stroke of nothing', async () => {
    const negative = /CHECK constraint failed|violates check/
    const oil = { ...hand, stream, leg: 'left' as const, volume: -1e-6, entry: 'entry-1' }
    await expect(store.read.insertInto('oil_used').values(oil).execute()).rejects.toThrow(negative)
    await expect(store.read.insertInto('ledger').values(ledgerLine('l', -1e-9)).execute()).rejects.toThrow(negative)
    await expect(
      store.read
        .insertInto('sheets')
        .values({ ...sheet, stroke: 0 })
        .execute(),
    ).rejects.toThrow(negative)
  })

  it('takes the same rows without the fault', async () => {
    await store.read.insertInto('sheets').values(sheet).execute()
    const oil = { ...hand, stream, leg: 'left' as const, volume: 1e-5, entry: 'entry-1' }
    await store.read.insertInto('oil_used').values(oil).execute()
    await store.read.insertInto('entry').values(entry(2)).execute()
    const visit = { ...hand, id: 'visit', version: 1, body: '{}', changed_at: at, promised: '2026-02-28' }
    await store.read.insertInto('visits').values(visit).execute()
    const rows = await store.read.selectFrom('oil_used').select('volume').execute()
    expect(rows).toEqual([{ volume: 1e-5 }])
  })

  it.each(['entry', 'ledger'] as const)('%s is append-only for everybody', async (table) => {
    const refusal = /append-only/
    await expect(sql`UPDATE ${sql.table(table)} SET workshop = workshop`.execute(store.read)).rejects.toThrow(refusal)
    await expect(sql`DELETE FROM ${sql.table(table)}`.execute(store.read)).rejects.toThrow(refusal)
    // Each database has one more way to lose rows.
    const other =
      kind === 'sqlite'
        ? sql`INSERT OR REPLACE INTO ${sql.table(table)} SELECT * FROM ${sql.table(table)}`
        : sql`TRUNCATE ${sql.table(table)} CASCADE`
    await expect(other.execute(store.read)).rejects.toThrow(refusal)
  })

  it('refuses the same place in the book twice', async () => {
    const twice = /UNIQUE constraint failed|duplicate key/
    const { seq, position, station_no } = entry(1)
    for (const same of [{ seq }, { position }, { station_no }])
      await expect(
        store.read
          .insertInto('entry')
          .values({ ...entry(9), ...same })
          .execute(),
      ).rejects.toThrow(twice)
  })

  it('gives dates as ISO 8601 text, days as days, and numbers as numbers', async () => {
    const row = await store.read.selectFrom('entry').selectAll().where('seq', '=', 1).executeTakeFirstOrThrow()
    expect(row).toEqual(entry(1))
    const visit = await store.read.selectFrom('visits').select('promised').executeTakeFirstOrThrow()
    expect(visit.promised).toBe('2026-02-28')
  })

  it('has workshop, person and station in every table', async () => {
    const tables = await store.read.introspection.getTables()
    const own = tables.filter((table) => table.name !== 'migration' && (table.schema ?? '') !== 'public')
    expect(own.map((table) => table.name)).toContain('entry')
    for (const table of own)
      expect(
        table.columns.map((column) => column.name),
        table.name,
      ).toEqual(expect.arrayContaining(['workshop', 'person', 'station']))
  })

  it('leaves nothing behind of a migration that fails half-way, and starts again after it', async () => {
    const broken = ['CREATE TABLE half (id TEXT)', 'CREATE TABLE half (id TEXT)']
    const next = [...migrations, { name: '9000-broken', sqlite: broken, postgres: broken }]
    await expect(migrate(store.read, kind, next)).rejects.toThrow(/half/)
    const names = (await store.read.introspection.getTables()).map((table) => table.name)
    expect(names).not.toContain('half')
    await migrate(store.read, kind, migrations)
  })

  it('refuses a database of a newer version in one sentence', async () => {
    await sql`INSERT INTO migration (name) VALUES ('9999-from-later')`.execute(store.read)
    await expect(database.open()).rejects.toThrow(StartRefused)
    await expect(database.open()).rejects.toThrow(/^The database was written by a newer version of Legwork [^\n]*\.$/)
    await sql`DELETE FROM migration WHERE name = '9999-from-later'`.execute(store.read)
  })

  it('undoes a write that ends in an error', async () => {
    const failing = store.write(async (write) => {
      await write.insertInto('ledger').values(ledgerLine('undone', 1)).execute()
      throw new Error('on purpose')
    })
    await expect(failing).rejects.toThrow('on purpose')
    expect(await store.read.selectFrom('ledger').select('id').execute()).toEqual([{ id: 'ledger-1' }])
  })
})

describe('the file', () => {
  it('is a write-ahead log synced at each commit, with foreign keys on and every table strict', async () => {
    const [file] = everyDatabase
    if (!file) throw new Error('SQLite is always there')
    const database = await file.create()
    const store = await database.open()
    const pragma = async (name: string): Promise<unknown> => {
      const { rows } = await sql.raw<Record<string, unknown>>(`PRAGMA ${name}`).execute(store.read)
      return Object.values(rows[0] ?? {})[0]
    }
    expect(await pragma('journal_mode')).toBe('wal')
    // sqlite.org/pragma.html#pragma_synchronous: 2 is FULL
    expect(await pragma('synchronous')).toBe(2)
    expect(await pragma('foreign_keys')).toBe(1)
    const loose = await sql<{
      name: string
    }>`SELECT name FROM pragma_table_list WHERE type = 'table' AND schema = 'main' AND strict = 0 AND name NOT LIKE 'sqlite_%'`.execute(
      store.read,
    )
    expect(loose.rows).toEqual([])
    await store.close()
    await database.drop()
  })
})

// A SQLite file has one server only, held by the lock on its folder (`start-server.test.ts`).
describe.each(everyDatabase.filter(({ kind }) => kind === 'postgres'))('an empty $kind database', ({ create }) => {
  it('is brought to its shape once by servers that start at the same moment', async () => {
    const database = await create()
    const stores = await Promise.all(Array.from({ length: 6 }, () => database.open()))
    for (const store of stores) {
      const { rows } = await sql<{ name: string }>`SELECT name FROM migration ORDER BY name`.execute(store.read)
      expect(rows.map((row) => row.name)).toEqual(migrations.map((migration) => migration.name))
      await store.close()
    }
    await database.drop()
  })
})
