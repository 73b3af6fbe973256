/** A unit's life as its jobs tell it: when it was here and for what, who brought it, what was read on it. Pure. */
import type { Id, JobStanding, JobState, Leg, Reading, ServiceId, Stream } from '@legwork/trade'
import { isServiceId } from '@legwork/trade'

export interface LifeVisit {
  stream: Stream
  /** Opened, handed over [ms]; null while it is here. */
  from: number
  until: number | null
  state: JobStanding
  /** Done and handed over, in the order agreed. */
  services: readonly ServiceId[]
  rider: Id | null
  readings: readonly LifeReading[]
}

export interface LifeReading {
  what: string
  leg: Leg | null
  /** [ms] */
  at: number
  reading: Reading
  /** As it came in, or after the work. */
  phase: 'received' | 'during' | 'done'
  person: Id
}

/** One quantity through the years, by leg. */
export interface LifeTrack {
  what: string
  leg: Leg | null
  /** In order of time; all in one measure. */
  readings: readonly LifeReading[]
}

/** From the first job of a rider to the first of the next [ms]; the last one is still the owner. */
export interface LifeOwner {
  rider: Id | null
  from: number
  until: number | null
}

export interface Life {
  visits: readonly LifeVisit[]
  tracks: readonly LifeTrack[]
  owners: readonly LifeOwner[]
}

/** Names under which the same quantity is entered in different chapters. */
const oneName: Readonly<Record<string, string>> = {
  'pressure-attached': 'pressure',
  'leak-down-start': 'pressure',
  length: 'free-length',
}

/** Parts of a longer test, what it was taken with, or a limit: none of them says by itself how the unit was. */
const notAlone: ReadonlySet<string> = new Set([
  'fill-temperature',
  'leak-down-end',
  'leak-down-end-temperature',
  'leak-down-start-temperature',
  'maximum-pressure',
  'moving-weight',
  'press-force',
  'press-pressure',
  'press-temperature',
  // At whatever clicks, from and to whatever mark; what they come to is the return time.
  'return-timed',
])

function readingsOf(state: JobState): readonly LifeReading[] {
  const read: LifeReading[] = state.measured
    .filter(({ what }) => !notAlone.has(what))
    .map(({ what, leg, at, reading, phase, person }) => ({
      what: oneName[what] ?? what,
      leg,
      at: Date.parse(at),
      reading,
      phase,
      person,
    }))
  for (const item of ['length', 'pressure'] as const) {
    const kept = state.snapshot[item]
    if (kept?.reading)
      read.push({
        what: oneName[item] ?? item,
        leg: null,
        at: Date.parse(kept.at),
        reading: kept.reading,
        phase: 'received',
        person: kept.person,
      })
  }
  const drained = state.steps.find(({ step }) => step === 'foot-off')
  for (const leg of ['left', 'right'] as const) {
    const done = drained?.done[leg]
    if (done?.reading?.measure === 'm³')
      read.push({
        what: 'drained',
        leg,
        at: Date.parse(done.at),
        reading: done.reading,
        phase: 'during',
        person: done.person,
      })
  }
  const { setting } = state
  if (setting && state.sheet?.springKind !== 'coil')
    read.push({
      what: 'pressure',
      leg: null,
      at: Date.parse(setting.at),
      reading: { value: setting.pressure, measure: 'Pa', instrument: setting.pump, how: 'pumped' },
      phase: 'done',
      person: setting.person,
    })
  return read.sort((one, other) => one.at - other.at)
}

/**
 * What the jobs of one unit add up to.
 *
 * @param jobs  of this unit, in any order; those called off count as a visit without a service
 */
export function lifeOf(jobs: readonly { stream: Stream; state: JobState }[]): Life {
  const visits = jobs
    .flatMap(({ stream, state }): LifeVisit[] => {
      const { opened, handedOver, plan } = state
      if (!opened) return []
      const done = handedOver !== null && plan !== null && plan.answer !== 'no'
      return [
        {
          stream,
          from: Date.parse(opened.at),
          until: handedOver ? Date.parse(handedOver.at) : null,
          state: state.state,
          services: done ? plan.services.filter(isServiceId) : [],
          rider: opened.rider,
          readings: readingsOf(state),
        },
      ]
    })
    .sort((one, other) => one.from - other.from)

  const tracks = new Map<string, LifeReading[]>()
  for (const reading of visits.flatMap(({ readings }) => readings)) {
    const name = `${reading.what} ${reading.leg ?? ''} ${reading.reading.measure}`
    tracks.set(name, [...(tracks.get(name) ?? []), reading])
  }

  const owners: LifeOwner[] = []
  for (const { rider, from } of visits) {
    const last = owners.at(-1)
    if (last?.rider === rider) continue
    if (last) last.until = from
    owners.push({ rider, from, until: null })
  }
  return {
    visits,
    owners,
    tracks: [...tracks.values()]
      .flatMap((readings): LifeTrack[] =>
        readings[0] ? [{ what: readings[0].what, leg: readings[0].leg, readings }] : [],
      )
      .sort((one, other) => other.readings.length - one.readings.length || one.what.localeCompare(other.what)),
  }
}

const week = 7 * 86_400_000

export interface Ridden {
  /** [ms] */
  from: number
  until: number
  /** [h] */
  hours: number
}

/**
 * Hours ridden between one service of the lower legs and the next, and from the last to now: weeks · hours a week.
 *
 * @param hoursPerWeek  as the rider says [h]; null where nobody said, and then nothing is reckoned
 * @param now           [ms]
 * @source the rider's own word; nothing is measured
 */
export function riddenBetween(life: Life, hoursPerWeek: number | null, now: number): readonly Ridden[] {
  if (hoursPerWeek === null || !(hoursPerWeek > 0)) return []
  const done = life.visits.flatMap(({ services, until }) =>
    services.includes('lower-legs') && until !== null ? [until] : [],
  )
  return done.map((from, index) => {
    const until = Math.max(from, done[index + 1] ?? now)
    return { from, until, hours: ((until - from) / week) * hoursPerWeek }
  })
}
