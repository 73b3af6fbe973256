/** What a station's monotonic clock showed when it made an entry; older entries have none. */
import type { Migration } from './migration.ts'

const columns = (real: string): string[] => [
  'ALTER TABLE entry ADD COLUMN clock_boot TEXT',
  `ALTER TABLE entry ADD COLUMN clock_reading ${real} CHECK (clock_reading >= 0) CHECK ((clock_reading IS NULL) = (clock_boot IS NULL))`,
]

export const clocks: Migration = {
  name: '0003-clocks',
  sqlite: columns('REAL'),
  postgres: columns('double precision'),
}
