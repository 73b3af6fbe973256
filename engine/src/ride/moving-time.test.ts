import { describe, expect, it } from 'vitest'
import { movingTime, type TrackPoint } from './moving-time.ts'

/** A point every so many seconds along the equator: 0.001° is 111.319491 m (GeodSolve 2.1.2, WGS 84). */
const step = 111.319491
const track = (rows: readonly [seconds: number, thousandths: number, elevation?: number][]): TrackPoint[] =>
  rows.map(([seconds, thousandths, elevation]) => ({
    time: new Date(Date.UTC(2026, 4, 2, 10) + seconds * 1000).toISOString(),
    latitude: 0,
    longitude: thousandths / 1000,
    ...(elevation === undefined ? {} : { elevation }),
  }))

describe('riding time of a track', () => {
  it('leaves out standing and gaps, and counts the way of both but gaps', () => {
    // By hand: 20 s ridden, 60 s over 1.1 m (0.02 m/s: standing), 200 s gap over 1113 m, 20 s ridden.
    const points = track([
      [0, 0],
      [20, 1],
      [80, 1.01],
      [280, 11.01],
      [300, 12.01],
    ])
    const seen = movingTime(points)
    expect(seen).toMatchObject({ movingTime: 40, elapsedTime: 300, ascent: null, descent: null })
    expect(seen.distance).toBeCloseTo(2.01 * step, 3)
    const wide = movingTime(points, { maxGap: 300 })
    expect(wide.movingTime).toBe(240)
    expect(wide.distance).toBeCloseTo(12.01 * step, 3)
  })

  it('1 km/h itself is moving', () => {
    // 0.001° at 1 km/h takes 400.75 s: just slower and just faster.
    const slow = track([
      [0, 0],
      [100.2, 0.25],
    ])
    const fast = track([
      [0, 0],
      [100.1, 0.25],
    ])
    expect(movingTime(slow).movingTime).toBe(0)
    expect(movingTime(fast).movingTime).toBeCloseTo(100.1, 9)
  })

  it('counts climbs by the threshold: the reference moves only after a change of it', () => {
    // By hand, 5 m: 100 → 104 no, 106 +6, 103 no, 100 −6, 104 no, 111 +11. Summed up without it: +17, −6.
    const heights = [100, 104, 106, 103, 100, 104, 111]
    const points = track(heights.map((height, index) => [index * 10, index, height]))
    expect(movingTime(points)).toMatchObject({ ascent: 17, descent: 6 })
    expect(movingTime(points, { climbThreshold: 7 })).toMatchObject({ ascent: 11, descent: 0 })
  })

  it('a lift in a gap is no climb', () => {
    const points = track([
      [0, 0, 500],
      [10, 1, 490],
      [1000, 2, 900],
      [1010, 3, 880],
    ])
    expect(movingTime(points)).toMatchObject({ ascent: 0, descent: 30 })
  })

  it('reads offsets from UTC', () => {
    const points = [
      { time: '2026-05-02T12:00:00+02:00', latitude: 0, longitude: 0 },
      { time: '2026-05-02T10:00:30.5Z', latitude: 0, longitude: 0.001 },
    ]
    expect(movingTime(points).movingTime).toBe(30.5)
  })

  it.each([
    ['one point', track([[0, 0]]), 'points', 'wrong-count'],
    [
      'times that go back',
      track([
        [10, 0],
        [0, 1],
      ]),
      'points[1].time',
      'does-not-fit',
    ],
    [
      'no offset',
      [{ time: '2026-05-02T10:00:00', latitude: 0, longitude: 0 }, ...track([[0, 0]])],
      'points[0].time',
      'not-a-date',
    ],
    [
      '30 February',
      [{ time: '2026-02-30T10:00:00Z', latitude: 0, longitude: 0 }, ...track([[0, 0]])],
      'points[0].time',
      'not-a-date',
    ],
    [
      'latitude 91',
      [{ time: '2026-05-02T10:00:00Z', latitude: 91, longitude: 0 }, ...track([[0, 0]])],
      'points[0].latitude',
      'out-of-range',
    ],
  ])('refuses %s', (_what, points, field, code) => {
    expect(() => movingTime(points)).toThrow(
      expect.objectContaining({ errors: expect.arrayContaining([expect.objectContaining({ field, code })]) }),
    )
  })
})
