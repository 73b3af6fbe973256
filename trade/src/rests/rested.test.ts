/** Rests under clocks that run wrong, stations that come late, and pages that are loaded anew. */
import { describe, expect, it } from 'vitest'
import type { AnyEntry, Standing } from '../journal/entry.ts'
import { momentOf, type Rested, restBegun, rested, restKnown } from './rested.ts'

const at = (minute: number): string => new Date(Date.parse('2026-05-02T09:00:00Z') + minute * 60_000).toISOString()

interface Told {
  /** By its station's wall clock. */
  made: number
  /** By the server; null where it is not there yet. */
  received?: number | null
  boot?: string
  /** By the monotonic clock of that boot. */
  reads?: number
  station?: string
  seq?: number | null
  seen?: number
  standing?: Standing
}

const line = (told: Told): AnyEntry => {
  const {
    made,
    received = made,
    boot,
    reads = 0,
    station = 'bench',
    seq = 1,
    seen = 0,
    standing = { mode: 'now' },
  } = told
  const entry = {
    id: `at-${made}-${station}`,
    station,
    madeAt: at(made),
    receivedAt: received === null ? null : at(received),
    ...(boot ? { clock: { boot, reading: reads * 60_000 } } : {}),
    seq,
    seen,
    standing,
  }
  return entry as unknown as AnyEntry // what a rest asks for, and no more
}
const between = (from: Told, to: Told, offline = false): Rested =>
  rested(restBegun(line(from)), momentOf(line(to)), offline)

describe('one boot of one station', () => {
  it('tells by its monotonic clock alone, whatever is done to the time of day', () => {
    const from = { made: 0, boot: 'a', reads: 3 }
    expect(between(from, { made: 1, boot: 'a', reads: 18 })).toEqual({ minutes: 15, by: 'station', apart: null })
    // The time of day was set forward by two hours: 4 minutes stay 4 minutes.
    expect(between(from, { made: 124, received: 4, boot: 'a', reads: 7 })).toMatchObject({ minutes: 4, by: 'station' })
    // Offline all the time.
    const unsent = { ...from, received: null, seq: null }
    expect(between(unsent, { made: 20, received: null, boot: 'a', reads: 23 }, true)).toMatchObject({ minutes: 20 })
  })
})

describe('another boot or another station', () => {
  it('is told by the server’s receipts', () => {
    const from = { made: 0, received: 0.1, boot: 'a', reads: 500 }
    const reloaded = { made: 16, received: 16.1, boot: 'b', reads: 0.2 }
    expect(between(from, reloaded)).toEqual({ minutes: 16, by: 'receipt', apart: null })
    const other = { made: 16.5, received: 16.1, boot: 'z', reads: 9000, station: 'other' }
    expect(between(from, other)).toMatchObject({ minutes: 16, by: 'receipt' })
    expect(between({ made: 0 }, { made: 20 })).toMatchObject({ minutes: 20, by: 'receipt' }) // stations without such a clock
  })

  it('counts from the receipt of a beginning that came late: it has rested at least so long', () => {
    expect(between({ made: 0, received: 30, boot: 'a' }, { made: 40, boot: 'b' })).toMatchObject({ minutes: 10 })
  })

  it('is not told where the two clocks are more than a minute apart, or the line came late', () => {
    const from = { made: 0, boot: 'a' }
    const apart = between(from, { made: 100, received: 10, boot: 'z', station: 'other' })
    expect(apart).toEqual({ minutes: null, by: null, apart: 90 })
    // Made 2 minutes after the beginning, without the network, and delivered an hour later.
    expect(between(from, { made: 2, received: 62, boot: 'z', station: 'other' })).toMatchObject({
      minutes: null,
      apart: 60,
    })
    expect(between(from, { made: 16, received: 17, boot: 'b' }).minutes).toBe(17) // a minute is still alike
  })

  it('is told by a station’s own clock from when it had the beginning in its book', () => {
    const begun = restBegun(line({ made: 0, boot: 'a', seq: 7 }))
    const early = restKnown(begun, line({ made: 1, boot: 'z', reads: 100, station: 'other', seq: 8, seen: 6 }))
    expect(early).toBe(begun) // it had not seen it yet
    const known = restKnown(
      begun,
      line({ made: 90, received: 2, boot: 'z', reads: 100, station: 'other', seq: 8, seen: 7 }),
    )
    const to = { made: 106, received: 40, boot: 'z', reads: 116, station: 'other' }
    expect(rested(known, momentOf(line(to)))).toEqual({ minutes: 16, by: 'station', apart: 66 })
    // A later line of the same boot does not set it back.
    const again = restKnown(known, line({ made: 95, boot: 'z', reads: 105, station: 'other', seq: 9, seen: 8 }))
    expect(again).toBe(known)
  })

  it('without the network nothing tells the server’s time: it is waited for again', () => {
    const reloaded = { made: 20, received: null, boot: 'b', reads: 0.2 }
    expect(between({ made: 0, boot: 'a' }, reloaded, true)).toEqual({ minutes: null, by: null, apart: null })
    // With the line open the server will have it at once.
    expect(between({ made: 0, boot: 'a' }, reloaded)).toMatchObject({ minutes: 20, by: 'receipt' })
    // Not even there is the beginning.
    expect(between({ made: 0, received: null, seq: null, boot: 'a' }, reloaded)).toMatchObject({ minutes: null })
  })
})

it('is waited for again without the network after a reload: from the next line on that boot tells', () => {
  const own = { received: null, seq: null } as const
  const begun = restBegun(line({ made: 0, boot: 'a', reads: 90, ...own }))
  const again = restKnown(begun, line({ made: 3, boot: 'b', reads: 1, ...own }))
  const at16 = momentOf(line({ made: 18, boot: 'b', reads: 16, ...own }))
  expect(rested(begun, at16, true)).toMatchObject({ minutes: null })
  expect(rested(again, at16, true)).toEqual({ minutes: 15, by: 'station', apart: null })
})

it('counts from when a person says it began, where it was entered later', () => {
  const from = { made: 30, standing: { mode: 'late', doneAt: at(10) } } as const
  expect(between(from, { made: 40 })).toMatchObject({ minutes: 30, by: 'said' })
})
