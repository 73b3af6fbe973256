/** The demo workshop, made by calling the API and nothing else. */
import {
  type Bike,
  demoDimensions,
  demoJobs,
  demoLetterhead,
  demoPeople,
  demoRiders,
  demoSheet,
  demoUnits,
  demoWorkshopName,
  type Id,
  type Person,
} from '@legwork/trade'
import { carryOver, type DemoPlaces } from './carry-over.ts'
import { type Client, type DemoStation, freshId, openDemoStation } from './demo-station.ts'
import type { DemoInstruments } from './job-of-today.ts'
import { workToday } from './work-today.ts'

const ml = 1e-6

function putInstruments(hand: DemoStation, now: Date): DemoInstruments {
  const made = {
    pump: freshId(now),
    wrench: freshId(now),
    cylinder: freshId(now),
    tape: freshId(now),
    scale: freshId(now),
    thermometer: freshId(now),
  }
  const pump = { kind: 'pump', hoseVolume: 5 * ml, resolution: 6894.757293168 } as const
  hand.register('instruments', { ...pump, id: made.pump, name: 'P1', note: 'checked', offset: 0 }, now)
  hand.register('instruments', { ...pump, id: freshId(now), name: 'P2', note: 'reads 4 % high', offset: 0.04 }, now)
  const wrench = { kind: 'wrench', class: 0.04, adapterLength: 0 } as const
  hand.register(
    'instruments',
    { ...wrench, id: freshId(now), name: 'W1', note: null, low: 10, high: 60, length: 0.33 },
    now,
  )
  hand.register(
    'instruments',
    {
      ...wrench,
      id: made.wrench,
      name: 'W2',
      note: 'with a 30 mm adapter',
      low: 2,
      high: 15,
      length: 0.245,
      adapterLength: 0.03,
      class: 0.06,
    },
    now,
  )
  hand.register('instruments', { kind: 'tape', id: made.tape, name: 'Tape', note: null, resolution: 0.001 }, now)
  hand.register(
    'instruments',
    { kind: 'measuring-cylinder', id: made.cylinder, name: 'Cylinder 25 ml', note: null, resolution: 0.5 * ml },
    now,
  )
  hand.register(
    'instruments',
    { kind: 'thermometer', id: made.thermometer, name: 'T1', note: null, resolution: 0.5 },
    now,
  )
  hand.register(
    'instruments',
    { kind: 'scale', id: made.scale, name: 'Luggage scale', note: null, resolution: 0.1 },
    now,
  )
  return made
}

/**
 * Builds the demo workshop.
 *
 * @param client  speaks to the server under the workshop's address
 * @param now     the server's clock: the month ends 1 to 7 days before
 * @returns the workshop's id
 * @throws when the server refuses any line of it
 */
export async function buildDemo(client: Client, now: Date): Promise<Id> {
  const [ownerData, ...others] = demoPeople
  if (!ownerData) throw new Error('the demo has no people')
  const { key: _key, ...owner } = ownerData
  // The route's answer has this shape by its schema.
  const made = (await client('POST', '/api/workshops', {
    name: demoWorkshopName,
    home: false,
    demo: true,
    person: owner,
  })) as { workshop: { id: Id }; person: Person }
  const workshop = made.workshop.id
  await client('PUT', `/api/workshops/${workshop}/letterhead`, demoLetterhead)
  const people = new Map<string, Id>([[ownerData.key, made.person.id]])
  const hand = await openDemoStation(client, workshop, made.person.id, now)
  for (const { key, ...person } of others) {
    const id = freshId(now)
    people.set(key, id)
    hand.register('people', { id, ...person }, now)
  }
  const instruments = putInstruments(hand, now)
  const riders = new Map<string, Id>()
  for (const { key, rides: _rides, ...rider } of demoRiders) {
    const id = freshId(now)
    riders.set(key, id)
    hand.register('riders', { id, ...rider, contact: null }, now)
  }
  const places = new Map<string, DemoPlaces>()
  for (const unit of demoUnits) {
    const rider = riders.get(unit.rider)
    if (!rider) throw new Error(`the demo has no rider ${unit.rider}`)
    const dimensions = demoDimensions(unit.key)
    const [bike, sheet, id] = [freshId(now), freshId(now), freshId(now)]
    const frame: Bike = {
      id: bike,
      rider,
      name: unit.kind.startsWith('fork') ? 'Bike with this fork' : 'Bike with this shock',
      headAngle: dimensions.headAngle ?? null,
      frontMass: dimensions.bikeFrontMass ?? null,
      leverage: dimensions.leverage ?? null,
      rearSprungMass: dimensions.rearSprungMass ?? null,
    }
    hand.register('bikes', frame, now)
    const sheetLine = demoSheet(unit, sheet)
    hand.register('sheets', sheetLine, now)
    const { key: label, kind, description } = unit
    hand.register('units', { id, label, kind, description, serial: null, rider, bike, sheet }, now)
    places.set(unit.key, {
      unit: id,
      rider,
      bike,
      sheet,
      revision: sheetLine.revision,
      pump: instruments.pump,
      spacers: sheetLine.spacers?.value ?? 0,
    })
  }
  await hand.deliver()
  for (const job of demoJobs) {
    const place = places.get(job.unit)
    if (!place) throw new Error(`the demo has no unit ${job.unit}`)
    carryOver(hand, job, place, now)
  }
  await hand.deliver()
  workToday(hand, { people, places, instruments }, now)
  await hand.deliver()
  return workshop
}
