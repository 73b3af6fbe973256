import { type Curve, forceAt } from './force-stroke-geometry.ts'

/** One line of the table behind the curves; null where a curve does not go there. */
export interface CurveRow {
  readonly stroke: number
  readonly slow: number | null
  readonly fast: number | null
  readonly before: number | null
  readonly lastVisit: number | null
}

/**
 * Forces every tenth of the longest curve.
 *
 * @example curveRows([{ stroke: 0, force: 0 }, { stroke: 0.1, force: 100 }], [], null)[5]?.slow // 50
 */
export function curveRows(slow: Curve, fast: Curve, before: Curve | null, lastVisit: Curve | null = null): CurveRow[] {
  const end = Math.max(...[slow, before ?? [], lastVisit ?? []].map((curve) => curve.at(-1)?.stroke ?? 0))
  return Array.from({ length: 11 }, (_, tenth): CurveRow => {
    // The last one is the end itself: a sum of tenths may lie a hair beyond it.
    const stroke = tenth === 10 ? end : (end * tenth) / 10
    return {
      stroke,
      slow: forceAt(slow, stroke),
      fast: forceAt(fast, stroke),
      before: before && forceAt(before, stroke),
      lastVisit: lastVisit && forceAt(lastVisit, stroke),
    }
  })
}
