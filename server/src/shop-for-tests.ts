/** A shop for tests: the server over an empty database, one owner, and stations that deliver. */
import { randomBytes } from 'node:crypto'
import type { DeliveryAnswer, DeliveryItem } from '@legwork/contract'
import { type EntryBodies, type EntryKind, type Id, newId, type RegisterName, type Registers } from '@legwork/trade'
import type { FastifyInstance } from 'fastify'
import { buildApp } from './app.ts'
import type { DatabaseKind } from './store/every-database.ts'
import type { Store } from './store/store.ts'

export type EntryLine = Extract<DeliveryItem, { is: 'entry' }>
export type RegisterLine = Extract<DeliveryItem, { is: 'register' }>

export const headers = { host: '127.0.0.1' }
const measures = { pressure: 'psi', torque: 'N·m', temperature: '°C', length: 'mm' }

export class Shop {
  readonly app: FastifyInstance
  readonly store: Store
  readonly workshop: Id
  readonly owner: Id
  readonly close: () => Promise<void>
  /** The server's clock. */
  now: Date

  private constructor(
    of: Pick<Shop, 'app' | 'store' | 'workshop' | 'owner' | 'close' | 'now'>,
    follow: (clock: () => Date) => void,
  ) {
    this.app = of.app
    this.store = of.store
    this.workshop = of.workshop
    this.owner = of.owner
    this.close = of.close
    this.now = of.now
    follow(() => this.now)
  }

  static async open({ create }: Pick<DatabaseKind, 'create'>, now = new Date('2026-06-03T10:00:00Z')): Promise<Shop> {
    const database = await create()
    const store = await database.open()
    let clock = (): Date => now
    const app = await buildApp({ store, clock: () => clock(), pages: null })
    const person = { name: 'Odalys', initials: 'O.', role: 'owner', measures }
    const payload = { name: 'Shop', home: false, person }
    const made = await app.inject({ method: 'POST', url: '/api/workshops', headers, payload })
    const close = async () => {
      await app.close()
      await store.close()
      await database.drop()
    }
    const { workshop, person: owner } = made.json<{ workshop: { id: Id }; person: { id: Id } }>()
    return new Shop({ app, store, workshop: workshop.id, owner: owner.id, close, now }, (follow) => {
      clock = follow
    })
  }

  freshId = (): Id => newId(this.now.getTime(), randomBytes(10))

  async station(): Promise<Id> {
    const id = this.freshId()
    await this.app.inject({
      method: 'POST',
      url: '/api/stations',
      headers,
      payload: { id, workshop: this.workshop, name: 'Tablet' },
    })
    return id
  }

  async post(station: Id, items: readonly DeliveryItem[], texts: readonly object[] = []) {
    const url = `/api/workshops/${this.workshop}/deliveries`
    return this.app.inject({ method: 'POST', url, headers, payload: { station, items, texts } })
  }

  /** @throws where the whole delivery is refused */
  async deliver(station: Id, items: readonly DeliveryItem[]): Promise<DeliveryAnswer> {
    const answer = await this.post(station, items)
    if (answer.statusCode !== 200) throw new Error(answer.body)
    return answer.json()
  }

  /** An entry made online at the server's time, unless told otherwise. */
  entry<K extends EntryKind>(
    stationNo: number,
    stream: string,
    kind: K,
    body: EntryBodies[K],
    how: Partial<EntryLine> = {},
  ): EntryLine {
    return {
      is: 'entry',
      made: 'online',
      id: this.freshId(),
      stream,
      stationNo,
      person: this.owner,
      madeAt: this.now.toISOString(),
      kind,
      version: 1,
      seen: 0,
      standing: { mode: 'now' },
      body,
      ...how,
    }
  }

  register<R extends RegisterName>(
    stationNo: number,
    register: R,
    body: Registers[R],
    how: Partial<RegisterLine> = {},
  ): RegisterLine {
    return {
      is: 'register',
      made: 'online',
      id: this.freshId(),
      stationNo,
      person: this.owner,
      madeAt: this.now.toISOString(),
      register,
      seenVersion: 0,
      body,
      ...how,
    }
  }
}
