/** Where things stand on a life line: one scale of time for all its rows. Pure. */
import { type ScaleLinear, scaleLinear } from 'd3-scale'
import type { Life } from './life-of.ts'

const day = 86_400_000
/** A unit that came in today still has a line to stand on [days]. */
const shortest = 28

/**
 * Time [ms] to px: from the first job to now, or to the latest day that a service may be due.
 *
 * @param until  now, or later
 */
export function lifeScale(life: Life, until: number, width: number): ScaleLinear<number, number> {
  const first = life.visits[0]?.from ?? until
  const span = Math.max(until - first, shortest * day)
  return scaleLinear([first - 0.03 * span, first + 1.03 * span], [0, width])
}

export interface LifeTick {
  /** [ms] */
  at: number
  /** Whether a year begins here. */
  year: boolean
}

/** Beginnings of months, or of every third month or year where months would stand too close. */
export function lifeTicks(scale: ScaleLinear<number, number>): readonly LifeTick[] {
  const [from = 0, to = 0] = scale.domain()
  const month = (scale(from + 30 * day) ?? 0) - (scale(from) ?? 0)
  const every = month >= 64 ? 1 : month * 3 >= 64 ? 3 : 12
  const begin = new Date(from)
  const ticks: LifeTick[] = []
  for (let nth = 0; nth < 1200; nth++) {
    const at = Date.UTC(begin.getUTCFullYear(), begin.getUTCMonth() + nth, 1)
    if (at > to) break
    const number = new Date(at).getUTCMonth()
    if (at >= from && number % every === 0) ticks.push({ at, year: number === 0 })
  }
  return ticks
}

export interface PlacedLabel {
  /** Of the points that were given. */
  index: number
  x: number
  anchor: 'start' | 'middle' | 'end'
  /** Over its point, or beside it. */
  where: 'over' | 'beside'
}

const touches = (one: readonly [number, number], other: readonly [number, number]): boolean =>
  one[0] < other[1] && other[0] < one[1]

/**
 * Which points of a row get their number, and where: the last and the first before the others, none over another.
 *
 * @param points   [px], from left to right
 * @param widths   of the numbers [px]
 * @example placeLabels([50, 64], [30, 30], 300)
 * // [{ index: 1, x: 73, anchor: 'start', where: 'beside' }, { index: 0, x: 41, anchor: 'end', where: 'beside' }]
 */
export function placeLabels(
  points: readonly number[],
  widths: readonly number[],
  width: number,
): readonly PlacedLabel[] {
  const off = 9
  const taken: [number, number][] = []
  const placed: PlacedLabel[] = []
  const last = points.length - 1
  const order = [...new Set([last, 0, ...points.keys()])].filter((index) => index >= 0)
  for (const index of order) {
    const x = points[index] ?? 0
    const wide = widths[index] ?? 0
    const crowded = points.some((other, nth) => nth !== index && Math.abs(other - x) < wide)
    // Near an end a number moves in from it and still stands over its point.
    const middle = Math.max(wide / 2, Math.min(width - wide / 2, x))
    const over: PlacedLabel & { span: [number, number] } = {
      index,
      x: middle,
      anchor: 'middle',
      where: 'over',
      span: [middle - wide / 2, middle + wide / 2],
    }
    const after: typeof over = { index, x: x + off, anchor: 'start', where: 'beside', span: [x + 5, x + off + wide] }
    const before: typeof over = { index, x: x - off, anchor: 'end', where: 'beside', span: [x - off - wide, x - 5] }
    const ways = crowded ? (index === last ? [after, before] : [before, after]) : [over, after, before]
    const free = ways.find(
      ({ span, where }) =>
        span[0] >= 0 &&
        span[1] <= width &&
        !taken.some((other) => touches(span, other)) &&
        (where === 'over' || !points.some((other) => touches(span, [other - 5, other + 5]))),
    )
    if (!free) continue
    const { span, ...label } = free
    taken.push(span)
    placed.push(label)
  }
  return placed
}
