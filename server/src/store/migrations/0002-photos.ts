/** Photos, beside the entries that name them by digest; an erased one leaves its digest and the day. */
import type { Migration } from './migration.ts'

function table(bytes: string, instant: (column: string, nullable: boolean) => string, end: string): string {
  const hand =
    'workshop TEXT NOT NULL REFERENCES workshop (id), person TEXT NOT NULL, station TEXT NOT NULL REFERENCES station (id)'
  return `CREATE TABLE photo (${hand}, digest TEXT NOT NULL CHECK (length(digest) = 64), content ${bytes} CHECK (content IS NULL OR length(content) <= 4194304), ${instant('kept_at', false)}, ${instant('removed_at', true)}, CHECK ((content IS NULL) = (removed_at IS NOT NULL)), PRIMARY KEY (workshop, digest), FOREIGN KEY (workshop, person) REFERENCES people (workshop, id))${end}`
}

const iso = (column: string, nullable: boolean): string =>
  `${column} TEXT ${nullable ? '' : 'NOT NULL '}CHECK (${nullable ? `${column} IS NULL OR ` : ''}strftime('%Y-%m-%dT%H:%M:%fZ', ${column}) IS ${column})`

export const photos: Migration = {
  name: '0002-photos',
  sqlite: [table('BLOB', iso, ' STRICT')],
  postgres: [table('bytea', (column, nullable) => `${column} timestamptz(3)${nullable ? '' : ' NOT NULL'}`, '')],
}
