/** Sheets that a test makes up, put into the shop's registers as any station would. */
import { randomUUID } from 'node:crypto'

/** A sheet as the server gives it; a test changes only the values it names. */
export interface SheetBody {
  id: string
  name: string
  stroke: { value: number }
  stanchion: { value: number }
  lowerVolume: { value: number }
  spacers: { value: number }
  spring: Record<string, { value: number }>
  legs: Record<'left' | 'right', { bathOil: { value: number } }>
  [field: string]: unknown
}

export interface Registers {
  workshop: { id: string }
  people: { body: { id: string } }[]
  riders: { version: number; body: { id: string; name: string } }[]
  sheets: { body: SheetBody }[]
}

/** The registers of the only workshop. */
export async function registersOf(address: string): Promise<Registers> {
  const { workshops } = await (await fetch(`${address}/api/workshops`)).json()
  return (await fetch(`${address}/api/workshops/${workshops[0].id}/registers`)).json()
}

/** Delivers sheets from a station of its own. @throws where one of them is refused */
export async function deliverSheets(address: string, sheets: readonly SheetBody[]): Promise<void> {
  const { workshop, people } = await registersOf(address)
  const post = async (path: string, body: unknown) => {
    const answer = await fetch(`${address}${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    })
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`)
    return answer.json()
  }
  const station = randomUUID()
  await post('/api/stations', { id: station, workshop: workshop.id, name: 'Sheets of a test' })
  const items = sheets.map((body, index) => ({
    is: 'register',
    made: 'online',
    id: randomUUID(),
    stationNo: index + 1,
    person: people[0]?.body.id,
    madeAt: new Date().toISOString(),
    register: 'sheets',
    seenVersion: 0,
    body,
  }))
  const answer = await post(`/api/workshops/${workshop.id}/deliveries`, { station, items, texts: [] })
  const refused = answer.results?.filter(({ status }: { status: string }) => status === 'refused') ?? []
  if (refused.length > 0) throw new Error(JSON.stringify(refused[0]))
}
