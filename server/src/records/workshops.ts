/** Workshops and stations. */
import { randomBytes } from 'node:crypto'
import type { WorkshopLine } from '@legwork/contract'
import { type Id, newId, type Person } from '@legwork/trade'
import type { Store } from '../store/store.ts'
import { readWorkshop, workshopLine } from './read.ts'
import { writeRegister } from './registers.ts'
import { Trouble } from './trouble.ts'

export const freshId = (now: Date): Id => newId(now.getTime(), randomBytes(10))

export interface NewWorkshop {
  name: string
  home: boolean
  demo: boolean
  person: Omit<Person, 'id'>
}

/** Opens a workshop with its first person. */
export async function openWorkshop(
  store: Store,
  made: NewWorkshop,
  now: Date,
): Promise<{ workshop: WorkshopLine; person: Person }> {
  const at = now.toISOString()
  const fresh = (): Id => freshId(now)
  const id = fresh()
  const person: Person = { id: fresh(), ...made.person }
  await store.write(async (write) => {
    await write
      .insertInto('workshop')
      .values({
        id,
        workshop: id,
        person: person.id,
        station: null,
        name: made.name,
        demo: made.demo ? 1 : 0,
        home: made.home ? 1 : 0,
        last_position: 1,
        created_at: at,
      })
      .execute()
    const item = { is: 'register', made: 'online', id: fresh(), stationNo: 1, person: person.id, madeAt: at } as const
    const outcome = await writeRegister(
      write,
      { ...item, register: 'people', seenVersion: 0, body: person },
      { workshop: id, station: null, person: person.id, position: 1, at },
    )
    if (outcome.status === 'refused') throw new Trouble(422, 'The person cannot be written', outcome.errors)
  })
  const { name, demo, home } = made
  const letterhead = { address: null, phone: null, terms: null }
  return { workshop: { id, name, demo, home, createdAt: at, ...letterhead }, person }
}

/** What stands at the head of its papers; a field that is null is left out there. */
export interface LetterheadChange {
  name: string
  address: string | null
  phone: string | null
  terms: string | null
}

/** @throws Trouble 404 for a workshop that is not here */
export async function changeLetterhead(store: Store, workshop: Id, change: LetterheadChange): Promise<WorkshopLine> {
  return store.write(async (write) => {
    await write.updateTable('workshop').set(change).where('id', '=', workshop).execute()
    return workshopLine(await readWorkshop(write, workshop))
  })
}

/** Signs a station in; the same id again gives the station there is. */
export async function openStation(
  store: Store,
  asked: { id: Id; workshop: Id; name: string },
  now: Date,
): Promise<{ station: { id: Id; workshop: Id; name: string }; deliveredNo: number }> {
  return store.write(async (write) => {
    const shop = await write.selectFrom('workshop').select('id').where('id', '=', asked.workshop).executeTakeFirst()
    if (!shop)
      throw new Trouble(404, 'No such workshop', [
        {
          field: 'workshop',
          code: 'workshop.unknown',
          came: asked.workshop,
          allowed: 'a workshop of this server',
          next: 'Ask for the list of workshops.',
        },
      ])
    const known = await write.selectFrom('station').selectAll().where('id', '=', asked.id).executeTakeFirst()
    if (known && known.workshop !== asked.workshop)
      throw new Trouble(409, 'The station belongs to another workshop', [
        {
          field: 'id',
          code: 'station.elsewhere',
          came: asked.id,
          allowed: 'an id of its own',
          next: 'Sign in under a new id.',
        },
      ])
    if (known)
      return { station: { id: known.id, workshop: known.workshop, name: known.name }, deliveredNo: known.delivered_no }
    await write
      .insertInto('station')
      .values({ ...asked, person: null, station: asked.id, delivered_no: 0, created_at: now.toISOString() })
      .execute()
    return { station: asked, deliveredNo: 0 }
  })
}
