import { type Bike, demoSheet, demoUnits, type JobState, type MeasuredEntry } from '@legwork/trade'
import { describe, expect, it } from 'vitest'
import { returnSetting, riderOf } from './return-known.ts'
import { clicksWorkings, dampingWorkings } from './return-workings.tsx'

const unit = demoUnits.find(({ key }) => key === 'U01')
if (!unit) throw new Error('no U01')
const sheet = demoSheet(unit, '01900000-0000-7000-8000-000000000001')
const psi = 6894.757293168

let minute = 0
const read = (what: string, value: number, measure: 'N' | 'Pa'): MeasuredEntry => {
  minute += 1
  return {
    entry: `entry-${minute}`,
    person: 'odalys',
    at: new Date(Date.UTC(2026, 4, 2, 9, minute)).toISOString(),
    carriedOver: false,
    late: false,
    what,
    leg: null,
    phase: 'received',
    reading: { value, measure, instrument: null, how: null },
  }
}

function setting(measured: readonly MeasuredEntry[]) {
  const kept = { ...read('snapshot', 85 * psi, 'Pa'), photos: [], notKnownBecause: null }
  // The parts of a state that a setting is read from.
  const state = { measured, snapshot: { pressure: kept }, basis: { filledTo: null } } as unknown as JobState
  const weighed = read('moving-weight', 9.80665 * 3, 'N')
  return returnSetting({ state, sheet, instruments: [], phase: 'received' }, weighed, 3)
}

const filledTo = (value: number) => read('press-pressure', value * psi, 'Pa')
const pressureAfter = (...fillings: number[]) => (setting(fillings.map(filledTo))?.pressure ?? Number.NaN) / psi

describe('the pressure that a return is read with', () => {
  it('is the press’s, and not the one at half of it: it is filled again afterwards', () => {
    expect(pressureAfter(88)).toBeCloseTo(88, 9)
    expect(pressureAfter(88, 44)).toBeCloseTo(88, 9)
    expect(pressureAfter(88, 44, 86)).toBeCloseTo(86, 9)
  })

  it('is the later one’s where the first was no press at twice the pressure', () => {
    expect(pressureAfter(880, 88)).toBeCloseTo(88, 9)
    expect(pressureAfter(88, 80)).toBeCloseTo(80, 9)
  })

  it('is the one that was kept as it came in, where nobody pressed it', () => {
    expect(pressureAfter()).toBeCloseTo(85, 9)
  })
})

describe('a panel says where each number comes from', () => {
  const at = { clicks: 8, from: 0.11, to: 0.01, readings: [], time: 0.2, spread: null, resolution: 1 / 240 }
  const sources = (measured: readonly MeasuredEntry[]) => {
    const known = setting(measured)
    if (!known) throw new Error('all of it is known')
    return dampingWorkings(at, known, 'damping').inputs.map(({ source }) => source?.kind)
  }

  it('a friction that nobody measured is common practice, a measured one names who and when', () => {
    expect(sources([]).slice(0, 3)).toEqual(['measured-here', 'measured-here', 'common-practice'])
    const friction = read('friction', 22, 'N')
    expect(sources([friction]).slice(0, 3)).toEqual(['measured-here', 'measured-here', 'measured-here'])
    expect(setting([friction])).toMatchObject({
      friction: 22,
      from: { friction: { person: 'odalys', at: friction.at } },
    })
  })

  it('the clicks name load, ratio and head angle, measured or usual', () => {
    const rider = (headAngle: number | null) => {
      // Of a bike only what a fork's damping needs.
      const found = riderOf(sheet, { headAngle, leverage: null } as Bike, 353)
      if (!found) throw new Error('a fork needs no leverage')
      return found
    }
    const kinds = (headAngle: number | null) =>
      clicksWorkings([], 800, rider(headAngle), 88 * psi).inputs.map(({ source }) => source?.kind)
    expect(kinds(64)).toEqual([undefined, 'worked-out', 'worked-out', 'common-practice', 'measured-here', 'worked-out'])
    expect(kinds(null)[4]).toBe('common-practice')
    // sin 64° = 0.898794 (a table of sines).
    expect(rider(64).factor).toBeCloseTo(0.898794, 6)
  })

  it('a shock without its bike’s leverage has no clicks', () => {
    expect(riderOf({ ...sheet, kind: 'shock-air' }, null, 2000)).toBeNull()
  })
})
