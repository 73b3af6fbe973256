/** The jobs of today in the demo, worked through the gates like any job, each as far as it has come. */
import { forkLoad, pressureForSag } from '@legwork/engine'
import {
  type AnyEntry,
  demoDimensions,
  demoRiders,
  demoSheet,
  demoUnits,
  type EntryBodies,
  type EntryKind,
  type Id,
  type JobContext,
  type JobState,
  type Leg,
  legs,
  planSteps,
  procedureSteps,
  type Reading,
  reduceJob,
  type Sheet,
  type StepId,
  type Stream,
  saidSoFor,
  sayMessage,
  springOf,
} from '@legwork/trade'
import type { DemoPlaces } from './carry-over.ts'
import { type DemoStation, freshId } from './demo-station.ts'

const ml = 1e-6
const ambient = 101_325
const roomTemperature = 293.15

export interface DemoShop {
  people: ReadonlyMap<string, Id>
  places: ReadonlyMap<string, DemoPlaces>
  instruments: { pump: Id; wrench: Id; cylinder: Id }
}

interface Begun {
  stream: Stream
  write: <K extends EntryKind>(kind: K, body: EntryBodies[K]) => void
  state: () => JobState
  sheet: Sheet
  text: (text: string) => string
  riderMass: number
  frontShare: number
}

function begin(hand: DemoStation, shop: DemoShop, key: string, asked: string, opened: Date): Begun {
  const place = shop.places.get(key)
  const unit = demoUnits.find((one) => one.key === key)
  if (!place || !unit) throw new Error(`the demo has no unit ${key}`)
  const { key: label, kind, description } = unit
  const sheet = demoSheet(unit, place.sheet)
  const context: JobContext = {
    unit: {
      id: place.unit,
      label,
      kind,
      description,
      serial: null,
      rider: place.rider,
      bike: place.bike,
      sheet: place.sheet,
    },
    sheetAt: () => sheet,
    currentSheet: sheet,
    roleOf: () => 'technician',
  }
  const stream: Stream = `job:${freshId(opened)}`
  const written: AnyEntry[] = []
  let at = opened.getTime()
  const visit = freshId(opened)
  hand.register('visits', { id: visit, rider: place.rider, promised: null, leftWith: null }, opened)
  const write: Begun['write'] = (kind, body) => {
    written.push(hand.entry(stream, kind, body, new Date(at), { mode: 'now' }))
    at += 120_000
  }
  const { unit: unitId, rider: riderId, bike } = place
  write('job-opened', { unit: unitId, rider: riderId, bike, visit, asked: hand.text(asked), spendAllowed: null })
  const rider = demoRiders.find((one) => one.key === unit.rider)
  const { mass: riderMass = 80, frontShare } = rider ?? {}
  return {
    stream,
    write,
    state: () => reduceJob(written, context),
    sheet,
    text: hand.text,
    riderMass,
    frontShare: frontShare ?? 0.42,
  }
}

function snapshotReading(item: string, sheet: Sheet, pressure: number, pump: Id): Reading | null {
  const reading = (value: number, measure: Reading['measure']): Reading => ({
    value,
    measure,
    instrument: null,
    how: null,
  })
  if (item === 'length') return reading((sheet.freeLength?.value ?? 0) - 0.001, 'm')
  if (item === 'ring') return reading(sheet.stroke.value * 0.86, 'm')
  if (item === 'pressure') return { value: pressure, measure: 'Pa', instrument: pump, how: 'attached' }
  if (item === 'rebound') return reading(8, 'clicks')
  if (item === 'compression') return reading(4, 'clicks')
  return null
}

function stepReading(figure: string, leg: Leg | null, sheet: Sheet, shop: DemoShop): Reading | null {
  const side = leg && sheet.legs ? sheet.legs[leg] : null
  if (figure === 'drained')
    return { value: (leg === 'left' ? 8 : 7) * ml, measure: 'm³', instrument: shop.instruments.cylinder, how: null }
  if (figure === 'bath-oil' && side?.bathOil)
    return { value: side.bathOil.value, measure: 'm³', instrument: null, how: null }
  if (figure === 'foot-torque' && side?.footTorque)
    return { value: side.footTorque.value, measure: 'N·m', instrument: shop.instruments.wrench, how: null }
  if (figure === 'clicks') return { value: 8, measure: 'clicks', instrument: null, how: null }
  if (figure === 'travel') return { value: sheet.stroke.value, measure: 'm', instrument: null, how: null }
  if (figure === 'clearance') return { value: 0.08e-3, measure: 'm', instrument: null, how: null }
  return null
}

/** The pressure to start from, by the engine, with the band that 2 points of front share and 1 kg leave. */
function workOut(
  job: Begun,
  bike: { headAngle: number; bikeFrontMass: number; sag: number },
): EntryBodies['set-up-worked-out'] {
  const spacers = job.sheet.spacers?.value ?? 0
  const spring = springOf(job.sheet, { spacers })
  if (spring.kind !== 'air') throw new Error('demo: an air fork is worked on today')
  const wanted = bike.sag / spring.stroke
  const loadOf = (riderMass: number, frontShare: number): number =>
    forkLoad({ riderMass, frontShare, bikeFrontMass: bike.bikeFrontMass, headAngle: bike.headAngle }).load
  const pressureAt = (load: number): number => pressureForSag(spring, { load, sag: wanted, ambient }).pressure
  const { riderMass, frontShare } = job
  const load = loadOf(riderMass, frontShare)
  const pressure = pressureAt(load)
  const spread =
    1.645 *
    Math.hypot(
      pressureAt(loadOf(riderMass, frontShare + 0.02)) - pressure,
      pressureAt(loadOf(riderMass + 1, frontShare)) - pressure,
    )
  return {
    pressure,
    band: [pressure - spread, pressure + spread],
    temperature: roomTemperature,
    ambient,
    riderMass,
    frontShare,
    sag: wanted,
    load,
    spacers,
  }
}

/** Does what the book asks for next, until it asks for `until`: a step with its second leg, or another kind of act. */
function workUntil(job: Begun, until: StepId | 'plan', key: string, shop: DemoShop): void {
  const { pressure = 0, headAngle = 65, bikeFrontMass = 5, sag } = demoDimensions(key)
  for (let line = 0; line < 200; line++) {
    const { next } = job.state()
    if (next.kind === until) return
    if (next.blocked) throw new Error(`demo: ${key} is blocked at ${next.step ?? next.kind}: ${next.blocked.gate}`)
    if (next.kind === 'snapshot' && next.item) {
      const reading = snapshotReading(next.item, job.sheet, pressure * 0.94, shop.instruments.pump)
      // The item is one of the snapshot's: the state asks for nothing else here.
      const item = next.item as EntryBodies['snapshot-kept']['item']
      const notKnownBecause = reading ? null : job.text('no camera at the bench')
      job.write('snapshot-kept', { item, reading, photos: [], notKnownBecause })
    } else if (next.kind === 'chassis' && next.item) {
      // As above: a part of the chassis.
      const part = next.item as EntryBodies['chassis-checked']['part']
      job.write('chassis-checked', { part, verdict: 'sound', found: null })
    } else if (next.kind === 'plan') {
      const services = ['lower-legs']
      const steps = [...planSteps(services, job.sheet)]
      const { id, revision } = job.sheet
      job.write('plan-agreed', {
        services,
        sheet: { id, revision },
        steps,
        answer: 'yes',
        declined: [],
        answeredBy: 'rider',
      })
    } else if (next.kind === 'set-up') {
      job.write('set-up-worked-out', workOut(job, { headAngle, bikeFrontMass, sag }))
    } else if (next.kind === 'step' && next.step) {
      // The first leg is ticked, the second is left for whoever looks around.
      if (next.step === until && next.leg !== legs[0]) return
      const { figure, acts } = procedureSteps[next.step as StepId] // a step of the plan has a procedure
      const reading = stepReading(figure, next.leg, job.sheet, shop)
      const wrenchSet = figure === 'foot-torque' && reading ? (reading.value * 0.245) / 0.275 : null
      job.write('step-done', { step: next.step, leg: next.leg, reading, wrenchSet, saidSo: [...saidSoFor(acts)] })
    } else {
      const contested = job.state().contested.map((one) => `${one.kind} ${one.gate}: ${sayMessage(one.because)}`)
      throw new Error(`demo: ${key} asks for ${next.kind} ${next.item ?? ''} (${contested.join('; ')})`)
    }
  }
  throw new Error(`demo: ${key} never came to ${until}`)
}

/** Writes today's jobs as far as they are. */
export function workToday(hand: DemoStation, shop: DemoShop, now: Date): void {
  const earlier = (minutes: number): Date => new Date(now.getTime() - minutes * 60_000)
  const tomorrow = new Date(now.getTime() + 24 * 3_600_000).toISOString()
  const owner = hand.person
  const by = (name: string): void => {
    hand.person = shop.people.get(name) ?? owner
  }
  by('sunniva')
  const bath = begin(hand, shop, 'U09', 'a bit dry, and the 50 hours are up', earlier(95))
  workUntil(bath, 'foot-torque', 'U09', shop)
  by('ikaika')
  begin(hand, shop, 'U02', 'bath and wipers before the marathon', earlier(20))
  by('sunniva')
  const part = begin(hand, shop, 'U06', 'forty hours in the mud', earlier(190))
  workUntil(part, 'air-out', 'U06', shop)
  const wipers = part.text('wiper kit 35 mm, ordered')
  part.write('waiting', { for: 'part', rest: null, until: tomorrow, why: wipers })
  by('ikaika')
  const answer = begin(hand, shop, 'U03', 'sits a little low', earlier(160))
  workUntil(answer, 'plan', 'U03', shop)
  const quoted = answer.text('quoted by telephone, calls back')
  answer.write('waiting', { for: 'answer', rest: null, until: null, why: quoted })
  hand.person = owner
}
