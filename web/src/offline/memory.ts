/** All that a station has, in memory: what pages read. Changed only by what is on the disk already. */
import type { KeptText } from '@legwork/contract'
import { liftBody, newestVersion } from '@legwork/contract/entry-versions.ts'
import {
  type AnyBookEntry,
  type AnyEntry,
  type AnyEntryDraft,
  type Digest,
  type Id,
  photosIn,
  type RegisterName,
  type Registers,
  type Stream,
} from '@legwork/trade'
import {
  type Change,
  type KeptRegister,
  keyOf,
  type Meta,
  type OutboxLine,
  type OwnPhoto,
  type RefusedLine,
} from './lines.ts'
import type { Everything } from './local-db.ts'

/** A register's line, with how it stands: still in the outbox or in the shop's book. */
export interface RegisterEntry<R extends RegisterName> {
  body: Registers[R]
  version: number
  kept: boolean
}

/** The server's place in the whole book comes with what it sends, a moment after it took the entry. */
type HeldEntry = AnyBookEntry & { position?: number | undefined }

export class Memory {
  meta: Meta
  readonly outbox = new Map<number, OutboxLine>()
  readonly refused = new Map<number, RefusedLine>()
  readonly #book = new Map<Id, HeldEntry>()
  readonly #registers = new Map<string, KeptRegister>()
  readonly texts = new Map<Digest, KeptText>()
  readonly photos = new Map<Digest, OwnPhoto>()
  #streams = new Map<Stream, readonly AnyEntry[]>()
  #lists = new Map<RegisterName, unknown>()
  #numbers: ReadonlyMap<Stream, string> | null = null
  /** Goes up with every change: what was worked out before it may be old. */
  version = 0

  constructor(all: Everything) {
    this.meta = all.meta
    this.apply({
      entries: all.book,
      texts: all.texts,
      registers: all.registers,
      kept: all.outbox,
      refused: all.refused,
      photos: all.photos,
    })
  }

  apply(change: Change): void {
    for (const entry of change.entries ?? []) this.#hold(entry)
    for (const text of change.texts ?? []) this.texts.set(text.digest, text)
    for (const line of change.registers ?? []) {
      const had = this.#registers.get(line.key)
      if (!had || had.version <= line.version) this.#registers.set(line.key, line)
    }
    for (const line of change.kept ?? []) this.outbox.set(line.stationNo, line)
    for (const number of change.left ?? []) this.outbox.delete(number)
    for (const line of change.refused ?? []) this.refused.set(line.stationNo, line)
    for (const number of change.readAway ?? []) this.refused.delete(number)
    for (const photo of change.photos ?? []) this.photos.set(photo.digest, photo)
    for (const digest of change.photosGone ?? []) this.photos.delete(digest)
    this.meta = { ...this.meta, ...change.meta }
    this.#streams = new Map()
    this.#lists = new Map()
    this.#numbers = null
    this.version += 1
  }

  #hold(entry: HeldEntry): void {
    const position = entry.position ?? this.#book.get(entry.id)?.position
    this.#book.set(entry.id, { ...asNewest(entry), position })
  }

  /** Lines not sent yet, in the station's order. */
  get unsent(): readonly OutboxLine[] {
    return [...this.outbox.values()].sort((a, b) => a.stationNo - b.stationNo)
  }

  #sortStreams(): void {
    const streams = new Map<Stream, AnyEntry[]>()
    const add = (entry: AnyEntry) => streams.set(entry.stream, [...(streams.get(entry.stream) ?? []), entry])
    for (const entry of [...this.#book.values()].sort((a, b) => a.seq - b.seq)) add(entry)
    for (const line of this.unsent)
      if (line.is === 'entry' && !this.#book.has(line.draft.id))
        add({ ...asNewest(line.draft), seq: null, receivedAt: null })
    this.#streams = streams
  }

  /** A stream's entries: the server's order, then this station's own unsent ones. The same array until something changes. */
  entriesOf(stream: Stream): readonly AnyEntry[] {
    if (this.#streams.size === 0) this.#sortStreams()
    return this.#streams.get(stream) ?? none
  }

  get streams(): readonly Stream[] {
    if (this.#streams.size === 0) this.#sortStreams()
    return [...this.#streams.keys()]
  }

  /** J01, J02 … by the order in which jobs reached the shop's book; null for one that is only kept here yet. */
  jobNumber(stream: Stream): string | null {
    if (!this.#numbers) {
      const opened = [...this.#book.values()].flatMap(({ kind, position, stream: of }) =>
        kind === 'job-opened' && position !== undefined ? [{ position, of }] : [],
      )
      const streams = new Set(opened.sort((a, b) => a.position - b.position).map(({ of }) => of))
      this.#numbers = new Map([...streams].map((of, index) => [of, `J${String(index + 1).padStart(2, '0')}`]))
    }
    return this.#numbers.get(stream) ?? null
  }

  /** Photos that an entry names and the server does not have yet, in the order they were taken. */
  get unsentPhotos(): readonly OwnPhoto[] {
    return [...this.photos.values()]
      .filter((photo) => photo.state === 'kept' && this.isNamed(photo))
      .sort((a, b) => a.takenAt.localeCompare(b.takenAt))
  }

  /** Whether an entry names it: one that was taken and not written down yet is still in the hand. */
  isNamed({ stream, digest }: OwnPhoto): boolean {
    return this.entriesOf(stream).some((entry) => photosIn(entry).includes(digest))
  }

  lastSeqOf(stream: Stream): number {
    return this.entriesOf(stream).reduce((last, { seq }) => Math.max(last, seq ?? 0), 0)
  }

  /** A register as it stands here: the server's lines, overwritten by what is still in the outbox. */
  register<R extends RegisterName>(name: R): readonly RegisterEntry<R>[] {
    const had = this.#lists.get(name)
    // A list is stored under the name of its own register only.
    if (had) return had as readonly RegisterEntry<R>[]
    const lines = new Map<string, unknown>()
    for (const { key, register, version, body } of this.#registers.values())
      if (register === name) lines.set(key, { body, version, kept: false })
    for (const line of this.unsent)
      if (line.is === 'register' && line.register === name)
        lines.set(keyOf(name, line.body), { body: line.body, version: line.seenVersion, kept: true })
    // Every line put in above has the register `name`, so its body is of that register.
    const list = [...lines.values()] as readonly RegisterEntry<R>[]
    this.#lists.set(name, list)
    return list
  }

  /** What the server's version will be when everything kept here has reached it; all revisions of a sheet count as one line. */
  versionOf(register: RegisterName, { id }: Registers[RegisterName]): number {
    const sent = [...this.#registers.values()].filter((line) => line.register === register && line.body.id === id)
    const kept = this.unsent.filter(
      (line) => line.is === 'register' && line.register === register && line.body.id === id,
    )
    return Math.max(0, ...sent.map(({ version }) => version)) + kept.length
  }
}

/** What lies on the disk since an older version is read as today's; on the disk, and when it is sent, it stays as it was. */
function asNewest<E extends AnyBookEntry | AnyEntryDraft>(entry: E): E {
  const version = newestVersion(entry.kind)
  return entry.version === version
    ? entry
    : { ...entry, version, body: liftBody(entry.kind, entry.version, entry.body) }
}

const none: readonly AnyEntry[] = []
