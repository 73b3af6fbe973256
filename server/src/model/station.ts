/** A station of the model: what it has of the book, what it keeps, and its clocks. */
import type { AnyBookEntry, Id, Sheet } from '@legwork/trade'
import type { WrittenJob } from '@legwork/trade/journal/written-job.ts'
import type { EntryLine } from '../shop-for-tests.ts'
import type { ModelShop } from './job-shop.ts'

export interface Station {
  id: Id
  no: number
  boot: Id
  /** When its page was loaded, in true time [ms]. */
  loadedAt: number
  /** How far its time of day is off [ms]. */
  off: number
  hands: Id
  /** Made without the network; nothing of it is in the book. */
  kept: EntryLine[]
  /** What it has of the book. */
  known: readonly AnyBookEntry[]
}

/** What an act needs to know of its job, beside what its station sees. */
export interface Subject {
  readonly model: ModelShop
  readonly sheet: Sheet
  readonly service: string
  /** For ticks that say everything they should. */
  readonly ticks: WrittenJob
}

/** A station whose page was just loaded, in the owner's hands. */
export function loadedStation({ shop, people }: ModelShop, id: Id, no = 0): Station {
  return {
    id,
    no,
    boot: shop.freshId(),
    loadedAt: shop.now.getTime(),
    off: 0,
    hands: people.owner,
    kept: [],
    known: [],
  }
}
