import type { JobState, Stream } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { lifeOf, riddenBetween } from './life-of.ts'

const reading = (value: number, measure: string) => ({ value, measure, instrument: null, how: null })

/** Only what is looked at. */
function job(
  name: string,
  opened: string,
  left: string | null,
  more: object = {},
): { stream: Stream; state: JobState } {
  const state = {
    opened: { unit: 'u', rider: 'r1', at: opened },
    handedOver: left === null ? null : { at: left },
    state: left === null ? 'in' : 'handed-over',
    plan: null,
    measured: [],
    snapshot: {},
    steps: [],
    setting: null,
    ...more,
  }
  // A job's state has some thirty fields; a life is told by these.
  return { stream: `job:${name}`, state: state as unknown as JobState }
}
const lowerLegs = { plan: { answer: 'yes', services: ['lower-legs'] } }

describe('the life of a unit', () => {
  it('tells its visits in order of time, with the services that were done', () => {
    const life = lifeOf([
      job('b', '2026-05-20T08:00:00Z', '2026-05-20T17:00:00Z'),
      job('a', '2026-05-02T08:00:00Z', '2026-05-02T17:00:00Z', lowerLegs),
      job('c', '2026-06-03T08:00:00Z', null, lowerLegs),
    ])
    expect(life.visits.map(({ stream, services, until }) => [stream, services.join(), until !== null])).toEqual([
      ['job:a', 'lower-legs', true],
      ['job:b', '', true],
      // Agreed, not handed over: nothing is done yet.
      ['job:c', '', false],
    ])
  })

  it('says no service where the plan was answered with no', () => {
    const no = { plan: { answer: 'no', services: ['lower-legs'] } }
    expect(lifeOf([job('a', '2026-05-02T08:00:00Z', '2026-05-02T17:00:00Z', no)]).visits[0]?.services).toEqual([])
  })

  it('changes owner with the first job of another rider', () => {
    const other = { opened: { unit: 'u', rider: 'r2', at: '2026-04-01T08:00:00Z' } }
    const life = lifeOf([
      job('a', '2026-01-01T08:00:00Z', '2026-01-02T08:00:00Z'),
      job('b', '2026-02-01T08:00:00Z', '2026-02-02T08:00:00Z'),
      job('c', '2026-04-01T08:00:00Z', null, other),
    ])
    expect(life.owners).toEqual([
      { rider: 'r1', from: Date.parse('2026-01-01T08:00:00Z'), until: Date.parse('2026-04-01T08:00:00Z') },
      { rider: 'r2', from: Date.parse('2026-04-01T08:00:00Z'), until: null },
    ])
  })

  it('keeps one row for a quantity and leg, from whichever chapter it was read in', () => {
    const at = '2026-05-02T09:00:00Z'
    const life = lifeOf([
      job('a', '2026-05-02T08:00:00Z', '2026-05-02T17:00:00Z', {
        snapshot: { pressure: { reading: reading(5e5, 'Pa'), at, person: 'p' } },
        measured: [
          { what: 'clearance', leg: 'left', phase: 'during', at, person: 'p', reading: reading(7e-5, 'm') },
          { what: 'clearance', leg: 'right', phase: 'during', at, person: 'p', reading: reading(6e-5, 'm') },
          { what: 'press-force', leg: null, phase: 'done', at, person: 'p', reading: reading(310, 'N') },
          { what: 'leak-down-end', leg: null, phase: 'done', at, person: 'p', reading: reading(5e5, 'Pa') },
          // What a test was taken with, and readings at unlike clicks, are no quantity through the years.
          ...['fill-temperature', 'leak-down-start-temperature', 'leak-down-end-temperature'].map((what) => ({
            what,
            leg: null,
            phase: 'done',
            at,
            person: 'p',
            reading: reading(293.15, 'K'),
          })),
          { what: 'return-timed', leg: null, phase: 'done', at, person: 'p', reading: reading(0.2, 's') },
          { what: 'moving-weight', leg: null, phase: 'done', at, person: 'p', reading: reading(20, 'N') },
        ],
        steps: [
          {
            step: 'foot-off',
            done: { once: null, left: { at, person: 'p', reading: reading(8e-6, 'm³') }, right: null },
          },
        ],
        setting: { pressure: 6e5, pump: 'P1', at: '2026-05-02T16:00:00Z', person: 'p' },
      }),
    ])
    expect(life.tracks.map(({ what, leg, readings }) => [what, leg, readings.map((one) => one.reading.value)])).toEqual(
      [
        // As it came in, then what was set.
        ['pressure', null, [5e5, 6e5]],
        ['clearance', 'left', [7e-5]],
        ['clearance', 'right', [6e-5]],
        ['drained', 'left', [8e-6]],
      ],
    )
  })
})

describe('the life of a coil', () => {
  it('has no pressure of 0 for the setting it left with', () => {
    const left = { pressure: 0, pump: null, at: '2026-05-02T16:00:00Z', person: 'p' }
    const lives = (['coil', 'air'] as const).map((springKind) =>
      lifeOf([
        job('a', '2026-05-02T08:00:00Z', '2026-05-02T17:00:00Z', {
          sheet: { springKind },
          setting: springKind === 'coil' ? left : { ...left, pressure: 6e5 },
        }),
      ]),
    )
    expect(lives.map(({ tracks }) => tracks.map(({ what }) => what))).toEqual([[], ['pressure']])
  })
})

describe('hours ridden', () => {
  const life = lifeOf([
    job('a', '2026-05-02T08:00:00Z', '2026-05-02T12:00:00Z', lowerLegs),
    job('b', '2026-05-16T08:00:00Z', '2026-05-16T12:00:00Z', lowerLegs),
  ])
  // By hand: two weeks at 5 h a week are 10 h; from 16 May to 6 June are three weeks, 15 h.
  it('between one bath and the next, and since the last', () => {
    const now = Date.parse('2026-06-06T12:00:00Z')
    expect(riddenBetween(life, 5, now).map(({ hours }) => hours)).toEqual([10, 15])
  })
  it('are not made up where nobody said how much is ridden', () => {
    expect(riddenBetween(life, null, Date.now())).toEqual([])
    expect(riddenBetween(life, 0, Date.now())).toEqual([])
  })
})
