/** What is known beforehand, and what it does to the factors of groups: one technician's estimate. */
import { describe, expect, it } from 'vitest'
import type { JobState } from '../journal/job-state.ts'
import { groupFactors } from './group-factors.ts'
import { beforehandOf, knownHistory, speakingFor } from './known-beforehand.ts'

const made = { entry: 'e', person: 'p', at: '2026-05-03T09:00:00.000Z', carriedOver: false, late: false }
const said = (
  what: 'crashed' | 'second-hand' | 'serviced-lately',
  value: boolean | null,
): JobState['history'][number] => ({
  ...made,
  what,
  value,
})
const hours = (value: number | null): JobState['history'][number] => ({ ...made, what: 'hours-since', value })

describe('before it came', () => {
  it('the last word counts, and cannot tell takes even the book’s word away', () => {
    expect(knownHistory([said('crashed', true), said('crashed', false)], null).crashed).toEqual({
      value: false,
      from: 'said',
    })
    expect(knownHistory([hours(null)], { hours: 18, days: 30 })['hours-since']).toBeNull()
  })

  it('the book knows its own last service, and no more', () => {
    const fresh = knownHistory([], { hours: 18, days: 60 })
    expect(fresh).toEqual({
      crashed: null,
      'second-hand': null,
      'serviced-lately': { value: true, from: 'book' },
      'hours-since': { value: 18, from: 'book' },
    })
    // 61 days ago: somebody else may have been in it since.
    expect(knownHistory([], { hours: null, days: 61 })['serviced-lately']).toBeNull()
  })

  // By hand, bath oil 30 to 60 h, middle 45 (common practice, no source): 310 h are 6.9 intervals, wear × 3.5; 100 h are 2.2,
  // wear × 2; 40 h are 0.9, wear × 0.5. A crash: damage × 4. Second-hand: set-up × 2, assembly × 2. Serviced: assembly × 4,
  // wear × 0.5. Factors of a group multiply.
  it.each([
    [[hours(310)], { wear: 3.5, 'set-up': 1, assembly: 1, damage: 1 }],
    [[hours(100), said('serviced-lately', true)], { wear: 1, 'set-up': 1, assembly: 4, damage: 1 }],
    [[hours(40), said('crashed', true)], { wear: 0.5, 'set-up': 1, assembly: 1, damage: 4 }],
    [[said('second-hand', true), said('serviced-lately', true)], { wear: 0.5, 'set-up': 2, assembly: 8, damage: 1 }],
    [[said('crashed', false), said('second-hand', null)], { wear: 1, 'set-up': 1, assembly: 1, damage: 1 }],
  ])('%j', (history, factors) => {
    expect(groupFactors(beforehandOf(knownHistory(history, null), 'fork-air'))).toMatchObject(factors)
  })

  it('names what speaks for a group', () => {
    const known = knownHistory([hours(310), said('second-hand', true), said('crashed', false)], { hours: 9, days: 20 })
    expect(speakingFor('wear', known, 'fork-air')).toEqual(['hours-since'])
    expect(speakingFor('assembly', known, 'fork-air')).toEqual(['serviced-lately', 'second-hand'])
    expect(speakingFor('damage', known, 'fork-air')).toEqual([])
    expect(speakingFor('not-the-unit', known, 'fork-air')).toEqual([])
  })
})
