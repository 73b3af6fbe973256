/** Works a job of today through the gates: does what the book asks for next. Every reading is invented. */
import { forkLoad, pressureForSag } from '@legwork/engine'
import {
  demoDimensions,
  type EntryBodies,
  type Id,
  type Leg,
  legs,
  type NextAct,
  planSteps,
  procedureSteps,
  type Reading,
  type Sheet,
  type StepId,
  saidSoFor,
  sayMessage,
  springOf,
  traitsOf,
} from '@legwork/trade'
import { restMinutes } from '@legwork/trade/rests/rest-kinds.ts'
import type { Begun, DemoShop } from './job-of-today.ts'

const ml = 1e-6
const ambient = 101_325
const roomTemperature = 293.15

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

const measured = (
  what: string,
  reading: Reading,
  phase: EntryBodies['measured']['phase'] = 'done',
): EntryBodies['measured'] => ({ what, leg: null, phase, reading })

const gauge = (value: number, instrument: Id): Reading => ({ value, measure: 'Pa', instrument, how: 'attached' })

/** Free length, and what is read at the valve when warm air has settled and ten minutes later. */
function prove(job: Begun, item: string | null, shop: DemoShop): void {
  const { pump, tape } = shop.instruments
  const { setUp } = job.state()
  if (item === 'free-length') {
    const length = (job.sheet.freeLength?.value ?? 0) - 0.0005
    job.write('measured', measured(item, { value: length, measure: 'm', instrument: tape, how: null }))
  } else if (item === 'leak-down-start') {
    job.wait(15)
    job.write('measured', measured(item, gauge(setUp?.pressure ?? 0, pump)))
  } else if (item === 'leak-down-end') {
    job.wait(10)
    // The pump was taken off and put on again: what its hose takes is missing, and nothing else.
    job.write('measured', measured(item, gauge((setUp?.pressure ?? 0) * hoseShare, pump)))
  } else throw new Error(`demo: nobody measures ${item}`)
}

/** What a hose of 5 ml leaves of a chamber of about 187 ml: 187/192. */
const hoseShare = 0.974

function plan(job: Begun): void {
  const services = ['lower-legs']
  const { id, revision } = job.sheet
  const steps = [...planSteps(services, job.sheet)]
  job.write('plan-agreed', {
    services,
    sheet: { id, revision },
    steps,
    answer: 'yes',
    declined: [],
    answeredBy: 'rider',
  })
}

function setting(job: Begun, shop: DemoShop): void {
  const { setUp } = job.state()
  if (!setUp) throw new Error('demo: a setting without a pressure')
  const { pressure, temperature, spacers, sag } = setUp
  // Read from both directions: friction holds it up on the way down, and down on the way up.
  const stroke = job.sheet.stroke.value * sag
  job.write('sag-measured', { fromAbove: stroke - 0.001, fromBelow: stroke + 0.002, instrument: shop.instruments.tape })
  job.write('trail-said', { altitude: 1650, temperature: 285.15 })
  const clicks = {
    rebound: 8,
    compression: traitsOf(job.sheet.kind, job.sheet).snapshot.includes('compression') ? 4 : null,
  }
  job.write('setting-written', { pressure, temperature, pump: shop.instruments.pump, spacers, clicks })
}

/** One line, or a few that belong together; `until` leaves the second leg of its step undone. */
function doNext(job: Begun, next: NextAct, until: Until, key: string, shop: DemoShop): void {
  const { pressure = 0, headAngle = 65, bikeFrontMass = 5, sag } = demoDimensions(key)
  switch (next.kind) {
    case 'snapshot': {
      // The item is one of the snapshot's: the state asks for nothing else here.
      const item = next.item as EntryBodies['snapshot-kept']['item']
      const reading = snapshotReading(item, job.sheet, pressure * 0.94, shop.instruments.pump)
      const notKnownBecause = reading ? null : job.text('no camera at the bench')
      job.write('snapshot-kept', { item, reading, photos: [], notKnownBecause })
      break
    }
    case 'chassis': {
      // As above: a part of the chassis.
      const part = next.item as EntryBodies['chassis-checked']['part']
      job.write('chassis-checked', { part, verdict: 'sound', found: null })
      break
    }
    case 'plan':
      plan(job)
      break
    case 'set-up':
      job.write('set-up-worked-out', workOut(job, { headAngle, bikeFrontMass, sag }))
      break
    case 'step': {
      const step = next.step as StepId // a step of the plan has a procedure
      const { figure, acts, ends } = procedureSteps[step]
      if (ends) job.wait(restMinutes[ends])
      const reading = stepReading(figure, next.leg, job.sheet, shop)
      const wrenchSet = figure === 'foot-torque' && reading ? (reading.value * 0.245) / 0.275 : null
      job.write('step-done', { step, leg: next.leg, reading, wrenchSet, saidSo: [...saidSoFor(acts)] })
      break
    }
    case 'measure':
      prove(job, next.item, shop)
      break
    case 'setting':
      setting(job, shop)
      break
    case 'put-back':
      // As above: a part that goes back on.
      job.write('put-back', { item: next.item as EntryBodies['put-back']['item'], reading: null })
      break
    default: {
      const contested = job.state().contested.map((one) => `${one.kind} ${one.gate}: ${sayMessage(one.because)}`)
      throw new Error(`demo: ${key} asks for ${next.kind} ${next.item ?? until} (${contested.join('; ')})`)
    }
  }
}

/** A step, or another kind of act. */
export type Until = StepId | 'plan' | 'setting' | 'hand-over'

/** Does what the book asks for next, until it asks for `until`: a step with its second leg, or another kind of act. */
export function workUntil(job: Begun, until: Until, key: string, shop: DemoShop): void {
  for (let line = 0; line < 200; line++) {
    const { next } = job.state()
    if (next.kind === until) return
    if (next.blocked) throw new Error(`demo: ${key} is blocked at ${next.step ?? next.kind}: ${next.blocked.gate}`)
    // The first leg is ticked, the second is left for whoever looks around.
    if (next.step === until && next.leg !== legs[0]) return
    doNext(job, next, until, key, shop)
  }
  throw new Error(`demo: ${key} never came to ${until}`)
}
