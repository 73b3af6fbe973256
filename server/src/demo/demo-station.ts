/** A station of the demo: it writes the way every station does, through the delivery route, in its own order. */
import { createHash, randomBytes } from 'node:crypto'
import type { DeliveryAnswer, DeliveryItem } from '@legwork/contract'
import type { AnyEntry, EntryBodies, EntryKind, Id, RegisterName, Registers, Standing, Stream } from '@legwork/trade'
import { newId } from '@legwork/trade'

/** Any HTTP client: a method, a path, a body; throws on an answer that is not 2xx. */
export type Client = (method: 'GET' | 'POST' | 'PUT', path: string, body?: unknown) => Promise<unknown>

export interface DemoStation {
  person: Id
  /** Puts a line into a register. */
  register: <R extends RegisterName>(register: R, body: Registers[R], at: Date) => void
  /** Writes an entry and gives it as the station has it before delivery. */
  entry: <K extends EntryKind>(stream: Stream, kind: K, body: EntryBodies[K], at: Date, standing: Standing) => AnyEntry
  /** The digest of a text, which goes along with the next delivery. */
  text: (text: string) => string
  /** Delivers what is waiting. @throws when anything of it was refused */
  deliver: () => Promise<void>
}

export const freshId = (at: Date): Id => newId(at.getTime(), randomBytes(10))

/** Registers a station and gives its hand; `owner` writes until `person` is set to somebody else. */
export async function openDemoStation(client: Client, workshop: Id, owner: Id, now: Date): Promise<DemoStation> {
  const station = freshId(now)
  await client('POST', '/api/stations', { id: station, workshop, name: 'Demo tablet' })
  let stationNo = 0
  let items: DeliveryItem[] = []
  const texts = new Map<string, string>()
  const seen = new Map<Stream, number>()
  const hand: DemoStation = {
    person: owner,
    register(register, body, at) {
      stationNo += 1
      items.push({
        is: 'register',
        made: 'online',
        id: freshId(at),
        stationNo,
        person: hand.person,
        madeAt: at.toISOString(),
        register,
        seenVersion: 0,
        body,
      })
    },
    entry(stream, kind, body, at, standing) {
      stationNo += 1
      const id = freshId(at)
      const head = seen.get(stream) ?? 0
      const line = {
        id,
        stream,
        stationNo,
        person: hand.person,
        madeAt: at.toISOString(),
        kind,
        version: 1,
        seen: head,
      }
      // One tablet that was on all day: it can tell how long something has rested.
      const clock = { boot: station, reading: at.getTime() }
      items.push({ is: 'entry', made: 'online', ...line, clock, standing, body })
      seen.set(stream, head + 1)
      // `kind` and `body` belong together by the signature; the union does not keep that.
      return { ...line, clock, workshop, station, standing, body, seq: null, receivedAt: null } as AnyEntry
    },
    text(text) {
      const digest = createHash('sha256').update(text).digest('hex')
      texts.set(digest, text)
      return digest
    },
    async deliver() {
      const waiting = items
      items = []
      const sent = [...texts].map(([digest, text]) => ({ digest, text }))
      texts.clear()
      for (let from = 0; from < waiting.length; from += 200) {
        const part = waiting.slice(from, from + 200)
        // The route's answer has this shape by its schema.
        const answer = (await client('POST', `/api/workshops/${workshop}/deliveries`, {
          station,
          items: part,
          texts: from === 0 ? sent : [],
        })) as DeliveryAnswer
        const refused = answer.results.find((result) => result.status === 'refused')
        if (refused) {
          const item = part.find((sentItem) => sentItem.id === refused.id)
          throw new Error(`demo: refused ${JSON.stringify(item)}: ${JSON.stringify(refused.errors)}`)
        }
      }
    },
  }
  return hand
}
