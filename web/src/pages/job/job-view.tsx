/** What every chapter of one job sees: the job as it stands, its registers, the hand that writes. */
import type {
  AnyEntry,
  Bike,
  Digest,
  EntryBodies,
  EntryCheck,
  EntryKind,
  Id,
  Instrument,
  JobState,
  Person,
  Rider,
  Sheet,
  Stream,
  Unit,
  Visit,
} from '@legwork/trade'
import { createContext, type ReactNode, useContext, useState } from 'react'
import type { Pump, Wrench } from './step-figure.ts'

export interface JobView {
  stream: Stream
  /** J01, J02 …; null until it is in the shop's book. */
  number: string | null
  state: JobState
  entries: readonly AnyEntry[]
  unit: Unit | null
  rider: Rider | null
  /** The bike it belongs on, as far as known: what a pressure to start from is worked out with. */
  bike: Bike | null
  /** Whether it came on it. */
  bikeHere: boolean
  visit: Visit | null
  /** The plan's frozen sheet, before one the unit's current one. */
  sheet: Sheet | null
  people: readonly Person[]
  instruments: readonly Instrument[]
  /** One person at home: no desk, no prices, nobody to hand over to. */
  home: boolean
  hands: Person
  /** Whether every line of it is in the shop’s book: only then has the server papers of it. */
  sent: boolean
  /** The server's address of a paper of this job. */
  paperHref(
    paper: 'hand-over.pdf' | 'label.pdf' | 'notice.pdf' | 'start-card.pdf' | 'due.ics',
    asked?: Readonly<Record<string, number>>,
  ): string
  /** Null where the text was removed or is not here yet. */
  text(digest: Digest): string | null
  /** Writes an entry, its texts beside it; a refusal comes back and nothing is written. */
  write<K extends EntryKind>(kind: K, body: EntryBodies[K]): Promise<EntryCheck>
  /** Puts a text beside the next entry and gives its digest. */
  keepText(text: string): Promise<Digest>
  /** Writes a new revision of the unit's sheet. */
  writeSheet(sheet: Sheet): Promise<void>
}

const Context = createContext<JobView | null>(null)

export function JobViewProvider({ view, children }: { view: JobView; children: ReactNode }) {
  return <Context value={view}>{children}</Context>
}

export function useJobView(): JobView {
  const view = useContext(Context)
  if (!view) throw new Error('useJobView is called outside a job’s page. Put the component inside JobPage.')
  return view
}

/** Writing with what came back: a refusal is shown where it was tried, and goes away with the next try. */
export function useWriting() {
  const { write } = useJobView()
  const [refusal, setRefusal] = useState<Extract<EntryCheck, { ok: false }> | null>(null)
  const tryWrite = async <K extends EntryKind>(kind: K, body: EntryBodies[K]): Promise<boolean> => {
    const check = await write(kind, body)
    setRefusal(check.ok ? null : check)
    return check.ok
  }
  return { write: tryWrite, refusal, clear: () => setRefusal(null) }
}

export function useNameOf(): (person: Id) => string {
  const { people } = useJobView()
  return (person) => people.find((one) => one.id === person)?.name ?? '–'
}

/** What may be taken in hand: what was put away is not offered. */
const atHand = (one: Instrument): boolean => !one.putAway
export const pumpsOf = (instruments: readonly Instrument[]): readonly Pump[] =>
  instruments.filter((one) => one.kind === 'pump').filter(atHand)
export const wrenchesOf = (instruments: readonly Instrument[]): readonly Wrench[] =>
  instruments.filter((one) => one.kind === 'wrench').filter(atHand)
/** Whatever is put on a valve to read it. */
export const gaugesOf = (instruments: readonly Instrument[]) =>
  instruments.filter((one) => one.kind === 'pump' || one.kind === 'gauge').filter(atHand)

/** Whether this person decides about stops, contested entries and gates. */
export const mayDecide = (person: Person): boolean => person.role === 'owner' || person.role === 'technician'
