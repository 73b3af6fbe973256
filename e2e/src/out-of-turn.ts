/** A line that another station wrote without the network and that does not fit: the job stops until a person decides. */
import { randomBytes } from 'node:crypto'
import type { EntriesAnswer, RegistersAnswer, WorkshopsAnswer } from '@legwork/contract'
import { newId } from '@legwork/trade'

/** Fills the fork of this job with air before its feet are torqued, as an offline tablet would have entered it. */
export async function fillOutOfTurn(address: string, stream: string, now: string): Promise<void> {
  const fresh = (): string => newId(Date.parse(now), randomBytes(10))
  const ask = async (path: string, body?: object): Promise<unknown> => {
    const headers = { 'content-type': 'application/json' }
    const answer = await fetch(`${address}${path}`, body ? { method: 'POST', headers, body: JSON.stringify(body) } : {})
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`)
    return answer.json()
  }
  // Each has the shape that its route tells.
  const { workshops } = (await ask('/api/workshops')) as WorkshopsAnswer
  const workshop = workshops[0]?.id ?? ''
  const { people, instruments } = (await ask(`/api/workshops/${workshop}/registers`)) as RegistersAnswer
  const { entries } = (await ask(`/api/workshops/${workshop}/streams/${stream}/entries`)) as EntriesAnswer
  const station = fresh()
  await ask('/api/stations', { id: station, workshop, name: 'Tablet without a network' })
  const pump = instruments.find(({ body }) => body.kind === 'pump')?.body.id ?? null
  const body = {
    step: 'fill-target',
    leg: null,
    reading: { value: 500_000, measure: 'Pa', instrument: pump, how: 'pumped' },
    wrenchSet: null,
    saidSo: [],
  }
  const line = {
    is: 'entry',
    made: 'offline',
    id: fresh(),
    stream,
    stationNo: 1,
    person: people[0]?.body.id,
    madeAt: now,
    clock: null,
    kind: 'step-done',
    version: 1,
    seen: entries.length,
    standing: { mode: 'now' },
    body,
  }
  await ask(`/api/workshops/${workshop}/deliveries`, { station, items: [line], texts: [] })
}
