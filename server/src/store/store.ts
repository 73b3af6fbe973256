/** The book on a database: readers take a `Reader`, writers a `Writer`, so that what can write shows in the type. */
import type { Kysely, Transaction } from 'kysely'
import type { Tables } from './tables.ts'

export type Reader = Kysely<Tables>
export type Writer = Transaction<Tables>

export interface Store {
  kind: 'sqlite' | 'postgres'
  read: Reader
  /** One transaction; writers of one store come one after the other. */
  write: <T>(work: (writer: Writer) => Promise<T>) => Promise<T>
  close: () => Promise<void>
}
