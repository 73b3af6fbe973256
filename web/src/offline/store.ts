/** One store a page: the disk, the memory, and the other pages of this station. */
import type { KeptText } from '@legwork/contract'
import type { Digest } from '@legwork/trade'
import type { Change, OutboxLine, OwnPhoto } from './lines.ts'
import { appendLines, commitChange, commitPhoto, type LocalDb, openLocalDb, readEverything } from './local-db.ts'
import { Memory } from './memory.ts'

export class Store {
  readonly memory: Memory
  readonly workshop: string
  readonly #db: LocalDb
  readonly #others: BroadcastChannel
  readonly #listeners = new Set<() => void>()

  private constructor(workshop: string, db: LocalDb, memory: Memory) {
    this.workshop = workshop
    this.memory = memory
    this.#db = db
    this.#others = new BroadcastChannel(`legwork-changes-${workshop}`)
    // Only our own pages write to this channel, and only changes.
    this.#others.onmessage = (event) => this.#take(event.data as Change)
  }

  static async open(workshop: string): Promise<Store> {
    const db = await openLocalDb(workshop)
    return new Store(workshop, db, new Memory(await readEverything(db)))
  }

  #take(change: Change): void {
    this.memory.apply(change)
    for (const listener of this.#listeners) listener()
  }

  /** Kept on the disk first, then seen in this page and the others. */
  async commit(change: Change): Promise<void> {
    await commitChange(this.#db, change)
    this.#take(change)
    this.#others.postMessage(change)
  }

  /** Puts lines into the outbox with the next numbers. */
  async append(make: (firstNo: number) => readonly OutboxLine[], texts: readonly KeptText[]): Promise<void> {
    const change = await appendLines(this.#db, make, texts)
    this.#take(change)
    this.#others.postMessage(change)
  }

  async keepPhoto(photo: OwnPhoto, bytes: ArrayBuffer): Promise<void> {
    const change = await commitPhoto(this.#db, photo, bytes)
    this.#take(change)
    this.#others.postMessage(change)
  }

  /** A photo's bytes, where they are on this station. */
  async photoBytes(digest: Digest): Promise<ArrayBuffer | null> {
    return (await this.#db.get('photoBytes', digest)) ?? null
  }

  /** What is on the disk, whatever this page has heard of: another page may have written it. */
  async unsentOnDisk(limit: number): Promise<OutboxLine[]> {
    return this.#db.getAll('outbox', undefined, limit)
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  close(): void {
    this.#others.close()
    this.#db.close()
  }
}
