/** What stands at the head of a workshop's papers; each is null until somebody says it. */
import type { Migration } from './migration.ts'

const columns = (['address', 'phone', 'terms'] as const).map(
  (column) => `ALTER TABLE workshop ADD COLUMN ${column} TEXT CHECK (length(${column}) > 0)`,
)

export const letterhead: Migration = { name: '0004-letterhead', sqlite: columns, postgres: columns }
