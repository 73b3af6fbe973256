/** What an act of a story writes, by what its station sees of the job. */
import { type EntryBodies, type JobState, type Leg, planSteps } from '@legwork/trade'
import type { Written } from './job-shop.ts'
import type { Station, Subject } from './station.ts'
import type { Act } from './story.ts'

const psi = 6894.757293168
const reason = 'c'.repeat(64)
const photo = 'b'.repeat(64)
const good = 88
const gauge = (value: number) => ({ value: value * psi, measure: 'Pa', instrument: null, how: 'pumped' }) as const
const metres = (value: number) => ({ value, measure: 'm', instrument: null, how: null }) as const

function setUp(pressure: number): Written {
  const band: [number, number] = [80 * psi, 96 * psi]
  const air = { temperature: 293.15, ambient: 101_325 }
  const rider = { riderMass: 82, frontShare: 0.42, sag: 0.03, load: 351, spacers: 1 }
  return { kind: 'set-up-worked-out', body: { pressure: pressure * psi, band, ...air, ...rider } }
}

function setting(pressure: number): Written {
  const clicks = { rebound: 8, compression: null }
  return {
    kind: 'setting-written',
    body: { pressure: pressure * psi, temperature: 293.15, pump: null, spacers: 1, clicks },
  }
}

function plan({ sheet, service }: Subject): Written {
  const steps = [...planSteps([service], sheet)]
  const agreed: Pick<EntryBodies['plan-agreed'], 'answer' | 'declined' | 'answeredBy'> = {
    answer: 'yes',
    declined: [],
    answeredBy: 'rider',
  }
  return {
    kind: 'plan-agreed',
    body: { services: [service], sheet: { id: sheet.id, revision: sheet.revision }, steps, ...agreed },
  }
}

function tick({ ticks }: Subject, step: string, leg: Leg | null, careless: boolean): Written {
  return {
    kind: 'step-done',
    body: ticks.tickBody(step, leg, careless ? { saidSo: [], reading: null, wrenchSet: null } : {}),
  }
}

const leak = (end: boolean): Written => ({
  kind: 'measured',
  body: { what: end ? 'leak-down-end' : 'leak-down-start', leg: null, phase: 'done', reading: gauge(86) },
})
const length = ({ sheet }: Subject, fine: boolean): Written => ({
  kind: 'measured',
  body: {
    what: 'free-length',
    leg: null,
    phase: 'done',
    reading: metres((sheet.freeLength?.value ?? 0) - (fine ? 0 : 0.014)),
  },
})
const handOver: Written = { kind: 'handed-over', body: { receivedBy: reason, initials: null } }

function next(job: Subject, { next: ahead }: JobState): Written | null {
  switch (ahead.kind) {
    case 'snapshot':
      // The state's own name of the item.
      return {
        kind: 'snapshot-kept',
        body: {
          item: ahead.item as EntryBodies['snapshot-kept']['item'],
          reading: { ...metres(0.1), instrument: job.model.pump },
          photos: ahead.item === 'photos' ? [photo] : [],
          notKnownBecause: null,
        },
      }
    case 'chassis':
      return {
        kind: 'chassis-checked',
        body: { part: ahead.item as EntryBodies['chassis-checked']['part'], verdict: 'sound', found: null },
      } // as above
    case 'plan':
      return plan(job)
    case 'set-up':
      return setUp(good)
    case 'step':
      return ahead.step ? tick(job, ahead.step, ahead.leg, false) : null
    case 'measure':
      return ahead.item === 'free-length' ? length(job, true) : leak(ahead.item === 'leak-down-end')
    case 'setting':
      return setting(good)
    case 'put-back':
      return { kind: 'put-back', body: { item: ahead.item as EntryBodies['put-back']['item'], reading: null } } // as above
    case 'hand-over':
      return handOver
    case 'rule':
      return ahead.item ? { kind: 'ruled', body: { entry: ahead.item, ruling: 'struck', reason } } : null
    default:
      return null
  }
}

function keep({ model }: Subject, { item, how }: Extract<Act, { is: 'keep' }>): Written {
  const of = { item, photos: item === 'photos' && how !== 'not-known' ? [photo] : [] }
  if (how === 'not-known') return { kind: 'snapshot-kept', body: { ...of, reading: null, notKnownBecause: reason } }
  const instrument = how === 'read' ? model.pump : null
  const reading = item === 'pressure' ? { ...gauge(86), instrument, how: 'attached' as const } : metres(0.1)
  return { kind: 'snapshot-kept', body: { ...of, reading, notKnownBecause: null } }
}

export function writtenBy(act: Act, job: Subject, station: Station, state: JobState): Written | null {
  const { people } = job.model
  switch (act.is) {
    case 'next':
      return next(job, state)
    case 'tick': {
      const all = state.steps.flatMap(({ step, legs }) => (legs ?? [null]).map((leg) => ({ step, leg })))
      const one = all[act.which % Math.max(1, all.length)]
      return one ? tick(job, one.step, one.leg, act.careless) : null
    }
    case 'keep':
      return keep(job, act)
    case 'strike': {
      const target = station.known[act.which]
      return target ? { kind: 'struck', body: { entry: target.id, reason } } : null
    }
    case 'rule': {
      const target = state.contested.find((one) => one.ruling === null)
      return target ? { kind: 'ruled', body: { entry: target.entry, ruling: act.ruling, reason } } : null
    }
    case 'take-over': {
      const from = station.hands
      const order = [people.owner, people.technician, people.junior]
      station.hands = order[(order.indexOf(from) + 1) % order.length] ?? people.owner
      return { kind: 'taken-over', body: { from } }
    }
    case 'waive':
      return { kind: 'gate-waived', body: { gate: act.gate, reason } }
    case 'length':
      return length(job, act.good)
    case 'leak':
      return leak(act.end)
    case 'setting':
      return setting(act.other ? 95 : good)
    case 'pressure':
      return setUp(act.over ? 200 : good)
    case 'back':
      return { kind: 'put-back', body: { item: act.item, reading: null } }
    case 'look':
      return {
        kind: 'chassis-checked',
        body: { part: act.part, verdict: act.sound ? 'sound' : 'condemned', found: null },
      }
    case 'plan':
      return plan(job)
    case 'leave':
      return handOver
    case 'stop':
      return { kind: 'stopped', body: { gate: null, why: reason } }
    case 'lift':
      return { kind: 'stop-lifted', body: { why: reason } }
    default:
      return null
  }
}
