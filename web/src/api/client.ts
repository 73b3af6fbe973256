/** Asking the server: JSON in and out, a problem document where it refuses. */
import type {
  Delivery,
  DeliveryAnswer,
  EntriesAnswer,
  Problem,
  Ready,
  RegistersAnswer,
  RiderErased,
  SearchAnswer,
  StationOpened,
  WorkshopAnswer,
  WorkshopOpened,
  WorkshopsAnswer,
} from '@legwork/contract'
import type { Digest, Id, Measures, Role } from '@legwork/trade'

/** The contract's schemas are large, and nobody waits for them: they come when the first answer is to be read. */
const shapes = () => import('./shapes.ts')

/** The server answered, and refused. */
export class Refused extends Error {
  override readonly name = 'Refused'
  readonly status: number
  readonly problem: Problem | null

  constructor(status: number, said: Problem | null) {
    super(said?.detail ?? `HTTP ${status}`)
    this.status = status
    this.problem = said
  }
}

async function refusalOf(answer: Response): Promise<Refused> {
  const { problem } = await shapes()
  const said = problem.safeParse(await answer.json().catch(() => null))
  return new Refused(answer.status, said.success ? said.data : null)
}

async function ask(
  method: 'GET' | 'POST' | 'PUT',
  path: string,
  body?: unknown,
  signal?: AbortSignal,
): Promise<Response> {
  const answer = await fetch(path, {
    method,
    headers: body === undefined ? {} : { 'content-type': 'application/json' },
    body: body === undefined ? null : JSON.stringify(body),
    signal: signal ?? null,
  })
  if (!answer.ok) throw await refusalOf(answer)
  return answer
}

/** The server and these pages are built from one contract; what it answers is taken at its word. */
async function json<Answer>(answer: Promise<Response>): Promise<Answer> {
  return (await (await answer).json()) as Answer
}

const inWorkshop = (workshop: Id) => `/api/workshops/${encodeURIComponent(workshop)}`

export interface NewWorkshop {
  name: string
  home: boolean
  person: { name: string; initials: string; role: Role; measures: Measures }
}

/** What stands at the head of the papers; null is left out there. */
export interface Letterhead {
  name: string
  address: string | null
  phone: string | null
  terms: string | null
}

export const api = {
  workshops: () => json<WorkshopsAnswer>(ask('GET', '/api/workshops')),
  startWorkshop: (workshop: NewWorkshop) => json<WorkshopOpened>(ask('POST', '/api/workshops', workshop)),
  letterhead: (workshop: Id, head: Letterhead) =>
    json<WorkshopAnswer>(ask('PUT', `${inWorkshop(workshop)}/letterhead`, head)),
  demo: () => json<WorkshopAnswer>(ask('POST', '/api/demo', {})),
  station: (station: { id: Id; workshop: Id; name: string }) =>
    json<StationOpened>(ask('POST', '/api/stations', station)),
  registers: (workshop: Id) => json<RegistersAnswer>(ask('GET', `${inWorkshop(workshop)}/registers`)),
  entries: (workshop: Id, after: number, limit: number) =>
    json<EntriesAnswer>(ask('GET', `${inWorkshop(workshop)}/entries?after=${after}&limit=${limit}`)),
  deliver: async (workshop: Id, delivery: Delivery): Promise<DeliveryAnswer> => {
    const answer = await json(ask('POST', `${inWorkshop(workshop)}/deliveries`, delivery))
    return (await shapes()).deliveryAnswer.parse(answer)
  },
  /** The same photo again changes nothing. */
  putPhoto: async (
    workshop: Id,
    of: { digest: Digest; person: Id; station: Id },
    bytes: ArrayBuffer,
  ): Promise<void> => {
    const by = `person=${encodeURIComponent(of.person)}&station=${encodeURIComponent(of.station)}`
    const headers = { 'content-type': 'image/jpeg' }
    const answer = await fetch(`${api.photo(workshop, of.digest)}?${by}`, { method: 'PUT', headers, body: bytes })
    if (!answer.ok) throw await refusalOf(answer)
  },
  /** Whether the server has it: `gone` where it was removed. Throws with no network. */
  hasPhoto: async (workshop: Id, digest: Digest): Promise<'here' | 'gone' | 'not-yet'> => {
    const { status } = await fetch(api.photo(workshop, digest), { method: 'HEAD' })
    return status === 410 ? 'gone' : status === 200 ? 'here' : 'not-yet'
  },
  photo: (workshop: Id, digest: Digest) => `${inWorkshop(workshop)}/photos/${digest}`,
  search: (workshop: Id, words: string, signal?: AbortSignal) =>
    json<SearchAnswer>(ask('GET', `${inWorkshop(workshop)}/search?q=${encodeURIComponent(words)}`, undefined, signal)),
  /** Takes the rider's name and the texts and photos of their jobs out, for good. */
  eraseRider: (workshop: Id, rider: Id, by: { person: Id; station: Id }) =>
    json<RiderErased>(ask('POST', `${inWorkshop(workshop)}/riders/${encodeURIComponent(rider)}/erase`, by)),
  /** Server's clock less this station's [ms], by the middle of the asking. */
  clockOffset: async (): Promise<number> => {
    const before = Date.now()
    const answer = await json<Ready>(ask('GET', '/healthz'))
    return Date.parse(answer.now) - (before + Date.now()) / 2
  },
  changes: (workshop: Id, after: number) => `${inWorkshop(workshop)}/changes?after=${after}`,
}
export type Api = typeof api
