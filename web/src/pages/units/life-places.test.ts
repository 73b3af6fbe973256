import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Life } from './life-of.ts'
import { lifeScale, lifeTicks, placeLabels } from './life-places.ts'

const lifeFrom = (from: string): Life => ({
  visits: [
    {
      stream: 'job:a',
      from: Date.parse(from),
      until: null,
      state: 'in',
      services: [],
      rider: null,
      readings: [],
    },
  ],
  tracks: [],
  owners: [],
})

describe('the scale of a life line', () => {
  it('holds the first job and the last day that is asked for', () => {
    const until = Date.parse('2026-08-01T00:00:00Z')
    const scale = lifeScale(lifeFrom('2026-05-01T00:00:00Z'), until, 600)
    for (const at of [Date.parse('2026-05-01T00:00:00Z'), until]) {
      expect(scale(at)).toBeGreaterThan(0)
      expect(scale(at)).toBeLessThan(600)
    }
  })

  it('ticks every month, every third or every year, as there is room', () => {
    const ticksOf = (from: string, to: string) =>
      lifeTicks(lifeScale(lifeFrom(from), Date.parse(to), 600)).map(({ at }) => new Date(at).toISOString().slice(0, 7))
    expect(ticksOf('2026-04-20T00:00:00Z', '2026-07-10T00:00:00Z')).toEqual(['2026-05', '2026-06', '2026-07'])
    expect(ticksOf('2025-02-10T00:00:00Z', '2026-06-10T00:00:00Z')).toEqual([
      '2025-04',
      '2025-07',
      '2025-10',
      '2026-01',
      '2026-04',
    ])
    expect(ticksOf('2019-03-01T00:00:00Z', '2022-03-01T00:00:00Z')).toEqual(['2020-01', '2021-01', '2022-01'])
  })
})

describe('numbers at the points of a row', () => {
  it('stand over points that have room, and beside points that are close', () => {
    expect(placeLabels([100, 300], [40, 40], 400).map(({ where, anchor }) => `${where} ${anchor}`)).toEqual([
      'over middle',
      'over middle',
    ])
    expect(placeLabels([50, 64], [30, 30], 300)).toEqual([
      { index: 1, x: 73, anchor: 'start', where: 'beside' },
      { index: 0, x: 41, anchor: 'end', where: 'beside' },
    ])
  })

  it('never lie on another, nor beyond the ends; a point alone always has its number', () => {
    const row = fc.array(fc.record({ x: fc.integer({ min: 0, max: 600 }), wide: fc.integer({ min: 10, max: 90 }) }), {
      minLength: 1,
      maxLength: 12,
    })
    fc.assert(
      fc.property(row, (unsorted) => {
        const points = unsorted.toSorted((one, other) => one.x - other.x)
        const widths = points.map(({ wide }) => wide)
        const placed = placeLabels(
          points.map(({ x }) => x),
          widths,
          600,
        )
        const spans = placed.map(({ index, x, anchor }) => {
          const wide = widths[index] ?? 0
          const from = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2
          return [from, from + wide] as const
        })
        for (const [from, to] of spans) {
          expect(from).toBeGreaterThanOrEqual(0)
          expect(to).toBeLessThanOrEqual(600)
        }
        spans.forEach(([from, to], nth) => {
          for (const [otherFrom, otherTo] of spans.slice(nth + 1)) expect(from < otherTo && otherFrom < to).toBe(false)
        })
        if (points.length === 1) expect(placed).toHaveLength(1)
      }),
    )
  })
})
