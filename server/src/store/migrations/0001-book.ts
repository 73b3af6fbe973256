/** The first tables: book, registers, ledger and what is worked out of them. */
import type { Migration } from './migration.ts'

/** What the two databases write differently. */
interface Writing {
  instant: (column: string, nullable?: boolean) => string
  day: (column: string) => string
  json: string
  real: string
  whole: string
  truth: (column: string) => string
  end: string
}

const sqlite: Writing = {
  instant: (column, nullable = false) =>
    `${column} TEXT ${nullable ? '' : 'NOT NULL '}CHECK (${nullable ? `${column} IS NULL OR ` : ''}strftime('%Y-%m-%dT%H:%M:%fZ', ${column}) IS ${column})`,
  day: (column) => `${column} TEXT CHECK (${column} IS NULL OR date(${column}) IS ${column})`,
  json: 'TEXT',
  real: 'REAL',
  whole: 'INTEGER',
  truth: (column) => `${column} INTEGER NOT NULL CHECK (${column} IN (0, 1))`,
  end: ' STRICT',
}
const postgres: Writing = {
  instant: (column, nullable = false) => `${column} timestamptz(3)${nullable ? '' : ' NOT NULL'}`,
  day: (column) => `${column} date`,
  json: 'text',
  real: 'double precision',
  whole: 'integer',
  truth: (column) => `${column} integer NOT NULL CHECK (${column} IN (0, 1))`,
  end: '',
}

const registers = ['people', 'riders', 'bikes', 'units', 'sheets', 'instruments', 'visits'] as const

/** Columns of a register that the database itself watches. */
const watched: { readonly [register: string]: (w: Writing) => string } = {
  people: () => 'name TEXT NOT NULL',
  riders: (w) => `name TEXT NOT NULL, mass ${w.real} CHECK (mass IS NULL OR (mass > 0 AND mass < 400))`,
  bikes: (w) => `head_angle ${w.real} CHECK (head_angle IS NULL OR (head_angle > 0 AND head_angle < 90))`,
  units: () =>
    'label TEXT NOT NULL, sheet TEXT NOT NULL, FOREIGN KEY (workshop, sheet) REFERENCES sheets (workshop, id)',
  sheets: (w) => `revision TEXT NOT NULL, stroke ${w.real} NOT NULL CHECK (stroke > 0)`,
  instruments: (w) => `hose_volume ${w.real} CHECK (hose_volume IS NULL OR hose_volume >= 0)`,
  visits: (w) => w.day('promised'),
}

const order = ['people', 'riders', 'bikes', 'sheets', 'units', 'instruments', 'visits'] as const

function tables(w: Writing): string[] {
  const hand = (required: boolean): string => {
    const not = required ? ' NOT NULL' : ''
    return `workshop TEXT NOT NULL REFERENCES workshop (id), person TEXT${not}, station TEXT${not} REFERENCES station (id)`
  }
  return [
    `CREATE TABLE workshop (id TEXT PRIMARY KEY, workshop TEXT NOT NULL CHECK (workshop = id), person TEXT, station TEXT, name TEXT NOT NULL CHECK (length(name) > 0), ${w.truth('demo')}, ${w.truth('home')}, last_position ${w.whole} NOT NULL CHECK (last_position >= 0), ${w.instant('created_at')})${w.end}`,
    `CREATE TABLE station (id TEXT PRIMARY KEY, workshop TEXT NOT NULL REFERENCES workshop (id), person TEXT, station TEXT NOT NULL CHECK (station = id), name TEXT NOT NULL, delivered_no ${w.whole} NOT NULL CHECK (delivered_no >= 0), ${w.instant('created_at')})${w.end}`,
    ...order.map(
      (register) =>
        `CREATE TABLE ${register} (${hand(false)}, id TEXT NOT NULL, version ${w.whole} NOT NULL CHECK (version > 0), body ${w.json} NOT NULL, ${w.instant('changed_at')}, ${watched[register]?.(w).replace(/, FOREIGN/, ', PRIMARY KEY (workshop, id), FOREIGN') ?? ''}${register === 'units' ? '' : ', PRIMARY KEY (workshop, id)'})${w.end}`,
    ),
    `CREATE TABLE register_history (${hand(false)}, register TEXT NOT NULL CHECK (register IN (${registers.map((r) => `'${r}'`).join(', ')})), id TEXT NOT NULL, version ${w.whole} NOT NULL, change_id TEXT NOT NULL, position ${w.whole} NOT NULL, body ${w.json} NOT NULL, ${w.instant('changed_at')}, PRIMARY KEY (workshop, register, id, version), UNIQUE (workshop, position), UNIQUE (change_id))${w.end}`,
    `CREATE TABLE stream (${hand(true)}, id TEXT NOT NULL, head_seq ${w.whole} NOT NULL CHECK (head_seq >= 0), ${w.instant('created_at')}, PRIMARY KEY (workshop, id))${w.end}`,
    `CREATE TABLE entry (${hand(true)}, id TEXT PRIMARY KEY, position ${w.whole} NOT NULL, stream TEXT NOT NULL, seq ${w.whole} NOT NULL CHECK (seq > 0), station_no ${w.whole} NOT NULL CHECK (station_no > 0), ${w.instant('made_at')}, ${w.instant('received_at')}, kind TEXT NOT NULL, version ${w.whole} NOT NULL CHECK (version > 0), seen ${w.whole} NOT NULL CHECK (seen >= 0), mode TEXT NOT NULL CHECK (mode IN ('now', 'late', 'carried-over')), ${w.instant('done_at', true)}, body ${w.json} NOT NULL, CHECK ((mode = 'now') = (done_at IS NULL)), UNIQUE (workshop, position), UNIQUE (workshop, stream, seq), UNIQUE (station, station_no), FOREIGN KEY (workshop, stream) REFERENCES stream (workshop, id), FOREIGN KEY (workshop, person) REFERENCES people (workshop, id))${w.end}`,
    `CREATE TABLE entry_text (${hand(false)}, digest TEXT NOT NULL CHECK (length(digest) = 64), content TEXT, ${w.instant('kept_at')}, ${w.instant('removed_at', true)}, CHECK ((content IS NULL) = (removed_at IS NOT NULL)), PRIMARY KEY (workshop, digest))${w.end}`,
    `CREATE TABLE refusal (${hand(true)}, id TEXT NOT NULL, station_no ${w.whole} NOT NULL, errors ${w.json} NOT NULL, ${w.instant('refused_at')}, PRIMARY KEY (station, station_no))${w.end}`,
    `CREATE TABLE ledger (${hand(true)}, id TEXT PRIMARY KEY, item TEXT NOT NULL CHECK (length(item) > 0), direction TEXT NOT NULL CHECK (direction IN ('in', 'out')), volume ${w.real} CHECK (volume IS NULL OR volume >= 0), pieces ${w.whole} CHECK (pieces IS NULL OR pieces >= 0), reason TEXT NOT NULL, stream TEXT, ${w.instant('written_at')}, CHECK ((volume IS NULL) <> (pieces IS NULL)), FOREIGN KEY (workshop, stream) REFERENCES stream (workshop, id))${w.end}`,
    `CREATE TABLE job_card (${hand(true)}, stream TEXT NOT NULL, number ${w.whole} NOT NULL CHECK (number > 0), card ${w.json} NOT NULL, PRIMARY KEY (workshop, stream), FOREIGN KEY (workshop, stream) REFERENCES stream (workshop, id))${w.end}`,
    `CREATE TABLE oil_used (${hand(true)}, stream TEXT NOT NULL, leg TEXT NOT NULL CHECK (leg IN ('left', 'right')), volume ${w.real} NOT NULL CHECK (volume >= 0), entry TEXT NOT NULL REFERENCES entry (id), PRIMARY KEY (workshop, stream, leg), FOREIGN KEY (workshop, stream) REFERENCES stream (workshop, id))${w.end}`,
    `CREATE TABLE search_word (${hand(false)}, kind TEXT NOT NULL CHECK (kind IN ('unit', 'rider', 'job')), target TEXT NOT NULL, word TEXT NOT NULL, PRIMARY KEY (workshop, kind, target, word))${w.end}`,
    'CREATE INDEX search_word_word ON search_word (workshop, word)',
  ]
}

/** What was written stays written: the database refuses to change or take it out. */
const frozen = ['entry', 'ledger'] as const

export const book: Migration = {
  name: '0001-book',
  sqlite: [
    ...tables(sqlite),
    ...frozen.flatMap((table) =>
      (['UPDATE', 'DELETE'] as const).map(
        (act) =>
          `CREATE TRIGGER ${table}_no_${act.toLowerCase()} BEFORE ${act} ON ${table} BEGIN SELECT RAISE(ABORT, '${table} is append-only'); END`,
      ),
    ),
  ],
  postgres: [
    ...tables(postgres),
    `CREATE FUNCTION append_only() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION '% is append-only', TG_TABLE_NAME; END $$`,
    ...frozen.flatMap((table) => [
      `CREATE TRIGGER ${table}_append_only BEFORE UPDATE OR DELETE ON ${table} FOR EACH ROW EXECUTE FUNCTION append_only()`,
      `CREATE TRIGGER ${table}_no_truncate BEFORE TRUNCATE ON ${table} FOR EACH STATEMENT EXECUTE FUNCTION append_only()`,
    ]),
  ],
}
