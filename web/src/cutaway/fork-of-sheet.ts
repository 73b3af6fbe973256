/** The table a fork is drawn from, out of its sheet: what the engine's spring says, and the pressures at a stroke. */
import { springCurve } from '@legwork/engine'
import { type Sheet, springOf } from '@legwork/trade'
import type { ForkParameters } from './fork-parameters.ts'

/**
 * @param at  stroke [m], gauge pressure at full length [Pa], ambient [Pa]
 * @returns null where the sheet is no air fork's or lacks a dimension
 */
export function forkOfSheet(
  sheet: Sheet,
  at: { spacers: number; stroke: number; pressure: number; ambient: number; ring?: number | null },
): ForkParameters | null {
  if (sheet.kind !== 'fork-air' || !sheet.stanchion || !sheet.legs) return null
  for (const field of ['bore', 'shaft', 'positiveVolume', 'negativeVolume']) if (!sheet.spring[field]) return null
  const spring = springOf(sheet, { spacers: at.spacers })
  if (spring.kind !== 'air' || spring.negativeVolume === undefined) return null
  const { ambient, pressure, stroke } = at
  const { points } = springCurve(spring, { pressure, ambient, points: 301 })
  const here = points.reduce((best, point) =>
    Math.abs(point.stroke - stroke) < Math.abs(best.stroke - stroke) ? point : best,
  )
  const leg = (oil: number) => ({ oil, volume: spring.lower?.volume ?? null, rod: spring.lower?.rod ?? 0 })
  return {
    stanchion: sheet.stanchion.value,
    travel: spring.stroke,
    stroke,
    spring: {
      kind: 'air',
      bore: spring.bore,
      shaft: spring.shaft,
      positiveVolume: spring.positiveVolume,
      negative: { kind: 'air', volume: spring.negativeVolume },
      ...(spring.equalisingStroke === undefined ? {} : { equalisingStroke: spring.equalisingStroke }),
      spacers: at.spacers,
      spacerVolume: spring.spacerVolume ?? 0,
    },
    legs: { left: leg(spring.lower?.legs[0]?.oil ?? 0), right: leg(spring.lower?.legs[1]?.oil ?? 0) },
    pressures: {
      positive: here.positivePressure ?? 0,
      negative: here.negativePressure ?? 0,
      left: here.lowerPressures?.[0] ?? 0,
      right: here.lowerPressures?.[1] ?? 0,
    },
    ring: at.ring ?? null,
  }
}
