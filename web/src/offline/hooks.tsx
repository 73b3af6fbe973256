/** What pages read of their station: its registers, a job's book, whose hands are on, how it stands. */
import {
  type AnyEntry,
  checkEntry,
  type Digest,
  type EntryBodies,
  type EntryCheck,
  type EntryKind,
  type Id,
  type JobContext,
  type JobState,
  type Person,
  type RegisterName,
  type Registers,
  reduceJob,
  type Sheet,
  type Stream,
} from '@legwork/trade'
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState, useSyncExternalStore } from 'react'
import type { RegisterEntry } from './memory.ts'
import type { DraftOptions, Station, StationStatus } from './station.ts'

const Context = createContext<Station | null>(null)

export function StationProvider({ station, children }: { station: Station; children: ReactNode }) {
  return <Context value={station}>{children}</Context>
}

export function useStation(): Station {
  const station = useContext(Context)
  if (!station) throw new Error('useStation is called outside a station. Put the component inside StationProvider.')
  return station
}

/** Redraws with every change of the store; gives its number. */
function useStoreVersion(): number {
  const { store } = useStation()
  return useSyncExternalStore(store.subscribe, () => store.memory.version)
}

/** `unsent` counts lines and photos. */
export function useStationStatus(): StationStatus & { unsent: number; unsentPhotos: number; refused: number } {
  const station = useStation()
  useStoreVersion()
  const status = useSyncExternalStore(station.subscribe, () => station.status)
  const { outbox, refused, unsentPhotos } = station.store.memory
  const photos = unsentPhotos.length
  return { ...status, unsent: outbox.size + photos, unsentPhotos: photos, refused: refused.size }
}

/** Now by the server's clock, moving on each minute. */
export function useNow(): string {
  const station = useStation()
  const [now, setNow] = useState(station.now)
  useEffect(() => {
    const timer = setInterval(() => setNow(station.now()), 60_000)
    return () => clearInterval(timer)
  }, [station])
  return now
}

const bodies = <R extends RegisterName>(lines: readonly RegisterEntry<R>[]): readonly Registers[R][] =>
  lines.map(({ body }) => body)

/** As a person looks them up: names with their accents, U2 before U10. */
const inOrder = new Intl.Collator('en-GB', { numeric: true })
const byName = <R extends 'people' | 'riders' | 'bikes' | 'sheets' | 'instruments'>(
  lines: readonly RegisterEntry<R>[],
): readonly Registers[R][] => bodies(lines).toSorted((one, other) => inOrder.compare(one.name, other.name))

export type AllRegisters = { [R in RegisterName]: readonly Registers[R][] }

export function useRegisters(): AllRegisters {
  const { memory } = useStation().store
  const version = useStoreVersion()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the memory changes in place; its version says when
  return useMemo(
    () => ({
      people: byName(memory.register('people')),
      riders: byName(memory.register('riders')),
      bikes: byName(memory.register('bikes')),
      units: bodies(memory.register('units')).toSorted((one, other) => inOrder.compare(one.label, other.label)),
      sheets: byName(memory.register('sheets')),
      instruments: byName(memory.register('instruments')),
      visits: bodies(memory.register('visits')),
    }),
    [memory, version],
  )
}

/** Whose hands are on; the owner's until somebody says so. */
export function useHands(): { person: Person | null; setHands: (id: Id) => Promise<void> } {
  const station = useStation()
  const { people } = useRegisters()
  const chosen = people.find(({ id }) => id === station.store.memory.meta.hands)
  return {
    person: chosen ?? people.find(({ role }) => role === 'owner') ?? people[0] ?? null,
    setHands: station.setHands,
  }
}

/** Whether one person works here at home: no desk, no prices, nobody to hand over to. */
export function useHome(): boolean {
  const station = useStation()
  useStoreVersion()
  return station.store.memory.meta.workshop?.home ?? false
}

/** The newest revision of a sheet: the one its register wrote last. */
export function currentSheet(lines: readonly RegisterEntry<'sheets'>[], id: Id): Sheet | null {
  const revisions = lines.filter(({ body }) => body.id === id)
  const newest = revisions.reduce<RegisterEntry<'sheets'> | null>(
    (last, line) => (last === null || line.kept || line.version > last.version ? line : last),
    null,
  )
  return newest?.body ?? null
}

/** The sheet of a unit as it is now; null where it is not here. */
export function useNewestSheet(id: Id | undefined): Sheet | null {
  const { memory } = useStation().store
  useStoreVersion()
  return id === undefined ? null : currentSheet(memory.register('sheets'), id)
}

/** What the entries of a job do not say themselves, from the registers as they are here. */
export function contextOf(station: Station, entries: readonly AnyEntry[], now: string, by: Id | null): JobContext {
  const { memory } = station.store
  const opened = entries.find((entry) => entry.kind === 'job-opened')
  const unit = memory.register('units').find(({ body }) => body.id === opened?.body.unit)?.body ?? null
  const sheets = memory.register('sheets')
  return {
    unit,
    sheetAt: (id, revision) => sheets.find(({ body }) => body.id === id && body.revision === revision)?.body,
    currentSheet: unit ? currentSheet(sheets, unit.sheet) : null,
    roleOf: (person) => memory.register('people').find(({ body }) => body.id === person)?.body.role ?? null,
    now,
    offline: station.offline,
    ...(by ? { by } : {}),
  }
}

export interface JobHere {
  stream: Stream
  state: JobState
  /** The server's order, then this station's own unsent ones (`seq` null: kept here). */
  entries: readonly AnyEntry[]
  /** Null where the text was removed or is not here yet. */
  text: (digest: Digest) => string | null
  keepText: (text: string) => Promise<Digest>
  /** Checked by the same rules as the server's, then kept; a refusal comes back and nothing is written. */
  write: <K extends EntryKind>(kind: K, body: EntryBodies[K], options?: DraftOptions) => Promise<EntryCheck>
  /** Whether every entry of it is in the shop's book. */
  sent: boolean
  /** J01, J02 …; null until it is in the shop's book. */
  number: string | null
}

export function useJob(stream: Stream): JobHere {
  const station = useStation()
  const version = useStoreVersion()
  const now = useNow()
  const { person } = useHands()
  const entries = station.store.memory.entriesOf(stream)
  const by = person?.id ?? null
  // biome-ignore lint/correctness/useExhaustiveDependencies: registers change in place; the version says when
  const state = useMemo(
    () => reduceJob(entries, contextOf(station, entries, now, by)),
    [station, entries, now, by, version],
  )
  const write: JobHere['write'] = async (kind, body, options) => {
    if (!by) throw new Error('Nobody’s hands are on: a station is joined with a person.')
    const draft = station.draft(stream, kind, body, by, options)
    // Asked of the book as it is now, not as it was when the page was drawn.
    const known = station.store.memory.entriesOf(stream)
    const context = contextOf(station, known, station.now(), by)
    const check = checkEntry(reduceJob(known, context), draft, context)
    if (check.ok) await station.keepDraft(draft)
    return check
  }
  return {
    stream,
    state,
    entries,
    text: (digest) => station.store.memory.texts.get(digest)?.text ?? null,
    keepText: station.keepText,
    write,
    sent: entries.every(({ seq }) => seq !== null),
    number: station.store.memory.jobNumber(stream),
  }
}

/** Jobs of one visit, or of one unit; with null for it, none. */
export type JobsOf = { visit: Id | null } | { unit: Id | null }

function isOf(entries: readonly AnyEntry[], of: JobsOf): boolean {
  const opened = entries.find((entry) => entry.kind === 'job-opened')?.body
  if (!opened) return false
  return 'visit' in of ? opened.visit === of.visit : opened.unit === of.unit
}

/** Every job here, as it adds up now; or those of one visit or unit, without adding up the others. */
export function useJobs(
  of: JobsOf | null = null,
): readonly { stream: Stream; state: JobState; entries: readonly AnyEntry[] }[] {
  const station = useStation()
  const version = useStoreVersion()
  const now = useNow()
  // biome-ignore lint/correctness/useExhaustiveDependencies: the memory changes in place; its version says when
  return useMemo(() => {
    const { memory } = station.store
    return memory.streams
      .filter((stream) => stream.startsWith('job:') && (of === null || isOf(memory.entriesOf(stream), of)))
      .map((stream) => {
        const entries = memory.entriesOf(stream)
        return { stream, entries, state: reduceJob(entries, contextOf(station, entries, now, null)) }
      })
  }, [station, version, now, JSON.stringify(of)])
}

/** Writes register lines in the name of whoever's hands are on. */
export function useWriteRegister(): <R extends RegisterName>(
  name: R,
  ...lines: readonly Registers[R][]
) => Promise<void> {
  const station = useStation()
  const { person } = useHands()
  return async (name, ...lines) => {
    const by = person?.id
    if (!by) throw new Error('Nobody’s hands are on: a station is joined with a person.')
    await station.writeRegisters(
      by,
      lines.map((body) => ({ register: name, body })),
    )
  }
}
