/** A station at work: writes into its outbox, sends it, follows the server, and says how it stands. */
import type { DeliveryItem } from '@legwork/contract'
import { newestVersion } from '@legwork/contract/entry-versions.ts'
import {
  type AnyEntryDraft,
  type Digest,
  type EntryBodies,
  type EntryKind,
  type Id,
  type Instant,
  type Moment,
  newId,
  type PhotoKind,
  type RegisterName,
  type Registers,
  type Standing,
  type Stream,
} from '@legwork/trade'
import { api } from '../api/client.ts'
import type { PlainPhoto } from '../photos/plain-photo.ts'
import { digestOf, digestOfBytes } from './digest.ts'
import { type Delivering, runFlusher } from './flusher.ts'
import { lead, Naps } from './leader.ts'
import type { OutboxLine, OwnPhoto } from './lines.ts'
import { type Line, runLiveLine } from './live-line.ts'
import { stationClock } from './station-clock.ts'
import type { Store } from './store.ts'

export interface StationStatus {
  line: Line
  delivering: Delivering
  /** Whether the browser promised to keep the store; null while it has not answered. */
  storageKept: boolean | null
}

export interface DraftOptions {
  standing?: Standing
}

type Said =
  | { about: 'status'; status: Pick<StationStatus, 'line' | 'delivering'> }
  | { about: 'ask' }
  | { about: 'poke' }

/** One person's change of one register. */
export interface RegisterWrite<R extends RegisterName> {
  register: R
  body: Registers[R]
}

export class Station {
  readonly store: Store
  readonly id: Id
  readonly workshop: Id
  status: StationStatus = { line: 'closed', delivering: { state: 'idle' }, storageKept: null }
  readonly #stop = new AbortController()
  readonly #naps = new Naps()
  readonly #pages: BroadcastChannel
  readonly #listeners = new Set<() => void>()
  readonly #texts = new Map<Digest, string>()
  #leads = false

  constructor(store: Store, id: Id) {
    this.store = store
    this.id = id
    this.workshop = store.workshop
    this.#pages = new BroadcastChannel(`legwork-pages-${store.workshop}`)
    // Only our own pages write to this channel.
    this.#pages.onmessage = (event) => this.#hear(event.data as Said)
    this.#say({ about: 'ask' })
    globalThis.addEventListener('online', this.#naps.wake)
    void this.#askForStorage()
    void lead(this.workshop, this.#stop.signal, () => this.#lead())
  }

  /** Now by the server's clock. */
  now = (): Instant => new Date(Date.now() + this.store.memory.meta.clockOffset).toISOString()

  newId = (): Id => newId(Math.round(Date.parse(this.now())), crypto.getRandomValues(new Uint8Array(10)))

  #say(said: Said): void {
    this.#pages.postMessage(said)
  }

  #hear(said: Said): void {
    if (said.about === 'status') this.#set(said.status)
    else if (said.about === 'poke') this.#naps.wake()
    else if (this.#leads) this.#say({ about: 'status', status: this.status })
  }

  #set(status: Partial<StationStatus>): void {
    this.status = { ...this.status, ...status }
    for (const listener of this.#listeners) listener()
  }

  #tell(status: Partial<Pick<StationStatus, 'line' | 'delivering'>>): void {
    const wasOpen = this.status.line === 'open'
    this.#set(status)
    const { line, delivering } = this.status
    this.#say({ about: 'status', status: { line, delivering } })
    // The line came back: what waits is sent now, not when its waiting time is over.
    if (!wasOpen && line === 'open') this.#naps.wake()
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  async #askForStorage(): Promise<void> {
    const storage = globalThis.navigator?.storage
    if (!storage?.persist) return this.#set({ storageKept: false })
    this.#set({ storageKept: (await storage.persisted()) || (await storage.persist()) })
  }

  async #lead(): Promise<void> {
    this.#leads = true
    const { store, workshop } = this
    const stopped = this.#stop.signal
    const { sleep } = this.#naps
    const commit = store.commit.bind(store)
    const sending = runFlusher(
      {
        station: this.id,
        read: (limit) => store.unsentOnDisk(limit),
        commit,
        deliver: (delivery) => api.deliver(workshop, delivery),
        photo: async () => {
          for (const photo of store.memory.unsentPhotos) {
            const bytes = await store.photoBytes(photo.digest)
            if (bytes) return { photo, bytes }
          }
          return null
        },
        deliverPhoto: (photo, bytes) => api.putPhoto(workshop, { ...photo, station: this.id }, bytes),
        now: this.now,
        sleep,
      },
      stopped,
      (delivering) => this.#tell({ delivering }),
    )
    const following = runLiveLine(
      {
        workshop,
        api,
        position: () => store.memory.meta.position,
        commit,
        sleep,
        source: (url) => new EventSource(url),
      },
      stopped,
      (line) => this.#tell({ line }),
    )
    await Promise.all([sending, following])
  }

  get #made(): DeliveryItem['made'] {
    return this.status.line === 'open' ? 'online' : 'offline'
  }

  /** Whether nothing tells the server's time here. */
  get offline(): boolean {
    return this.#made === 'offline'
  }

  /** This moment, as a rest asks for it. */
  moment = (): Moment => ({ station: this.id, clock: stationClock(), madeAt: this.now(), receivedAt: null })

  #poke(): void {
    this.#naps.wake()
    this.#say({ about: 'poke' })
  }

  /** Keeps a text beside the entry that will name it, and gives the digest to name it by. */
  keepText = async (text: string): Promise<Digest> => {
    const digest = await digestOf(text)
    this.#texts.set(digest, text)
    return digest
  }

  /**
   * Keeps a plain photo on this station; it is sent once an entry names it.
   *
   * @returns null where a line names it already
   */
  keepPhoto = async (stream: Stream, person: Id, photo: PlainPhoto, of: PhotoKind): Promise<Digest | null> => {
    const digest = await digestOfBytes(photo.bytes)
    const { width, height } = photo
    const own: OwnPhoto = { digest, stream, of, person, takenAt: this.now(), width, height, state: 'kept', says: null }
    const had = this.store.memory.photos.get(digest)
    if (had && this.store.memory.isNamed(had)) return null
    await this.store.keepPhoto(own, photo.bytes)
    return digest
  }

  /** Takes a photo off this station: one that was not written down, or that the server says was removed. */
  dropPhoto = (digest: Digest): Promise<void> => this.store.commit({ photosGone: [digest] })

  #textsNamedIn(body: unknown): { digest: Digest; text: string }[] {
    const written = JSON.stringify(body)
    return [...this.#texts].flatMap(([digest, text]) => (written.includes(digest) ? [{ digest, text }] : []))
  }

  /** A draft as it would be written now; its number is given when it is kept. */
  draft<K extends EntryKind>(
    stream: Stream,
    kind: K,
    body: EntryBodies[K],
    person: Id,
    { standing = { mode: 'now' } }: DraftOptions = {},
  ): AnyEntryDraft {
    const { id: station, workshop } = this
    const common = { id: this.newId(), workshop, stream, station, stationNo: 0, person, madeAt: this.now() }
    // `kind` and `body` come as a pair of one kind; the compiler forgets the pair when it widens to the union.
    const version = newestVersion(kind)
    const clock = stationClock()
    return {
      ...common,
      clock,
      kind,
      version,
      seen: this.store.memory.lastSeqOf(stream),
      standing,
      body,
    } as AnyEntryDraft
  }

  /** Kept when the promise is kept: on this station's disk, numbered, and on its way as soon as there is a network. */
  async keepDraft(draft: AnyEntryDraft): Promise<void> {
    const texts = this.#textsNamedIn(draft.body)
    const made = this.#made
    await this.store.append(
      (stationNo) => [{ is: 'entry', stationNo, made, texts, draft: { ...draft, stationNo } }],
      texts.map((text) => ({ ...text, removedOn: null })),
    )
    this.#poke()
  }

  /** Changes of registers by one person, kept together. */
  async writeRegisters(person: Id, writes: readonly RegisterWrite<RegisterName>[]): Promise<void> {
    const made = this.#made
    const lines = writes.map(({ register, body }) => ({
      is: 'register' as const,
      made,
      texts: [],
      id: this.newId(),
      person,
      madeAt: this.now(),
      register,
      seenVersion: this.store.memory.versionOf(register, body),
      body,
    }))
    const numbered = (firstNo: number): OutboxLine[] =>
      lines.map((line, index) => ({ ...line, stationNo: firstNo + index }))
    await this.store.append(numbered, [])
    this.#poke()
  }

  /** Puts a refused line away after it was read. */
  readAway = (stationNo: number): Promise<void> => this.store.commit({ readAway: [stationNo] })

  setHands = (hands: Id): Promise<void> => this.store.commit({ meta: { hands } })

  close(): void {
    this.#stop.abort()
    this.#naps.wake()
    globalThis.removeEventListener('online', this.#naps.wake)
    this.#pages.close()
    this.store.close()
  }
}
