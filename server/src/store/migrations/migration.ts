/** One step of the database's shape; the list in `all.ts` is only ever added to. */
export interface Migration {
  name: string
  sqlite: readonly string[]
  postgres: readonly string[]
}
