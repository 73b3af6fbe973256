import { type ScaleLinear, scaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import { px } from './number-text.ts'

/** One point of a curve; a force that is null is missing: the line has a gap there, it isn't smoothed over. */
export interface CurvePoint {
  /** [m] */
  readonly stroke: number
  /** [N] */
  readonly force: number | null
}

export type Curve = readonly CurvePoint[]

/** A measure on an axis: how large one of it is in SI, and how numbers of it are written. */
export interface AxisMeasure {
  readonly size: number
  readonly unit: string
  readonly format: (value: number) => string
}

export interface Plot {
  /** Where stroke 0 stands in the drawing [px]. */
  readonly left: number
  /** Length of the full stroke [px]. */
  readonly width: number
  readonly top: number
  readonly height: number
}

export interface ForceStrokeFrame {
  readonly plot: Plot
  readonly x: ScaleLinear<number, number>
  readonly y: ScaleLinear<number, number>
  /** Highest force on the paper [N]. */
  readonly maxForce: number
}

/** The paper ends at a round force: the next 100 N (up to 500 N), 500 N (up to 4000 N) or 1000 N above what has to be shown. */
export function paperEnd(curves: readonly Curve[]): number {
  const highest = Math.max(100, ...curves.flatMap((curve) => curve.map((point) => point.force ?? 0)))
  const step = highest <= 500 ? 100 : highest <= 4000 ? 500 : 1000
  return Math.ceil(highest / step - 1e-9) * step
}

export function forceStrokeFrame(plot: Plot, fullStroke: number, curves: readonly Curve[]): ForceStrokeFrame {
  const maxForce = paperEnd(curves)
  return {
    plot,
    maxForce,
    x: scaleLinear([0, fullStroke], [plot.left, plot.left + plot.width]),
    y: scaleLinear([0, maxForce], [plot.top + plot.height, plot.top]),
  }
}

/** The curve as an SVG path, straight from point to point; null forces leave gaps. */
export function curvePath(frame: ForceStrokeFrame, curve: Curve): string {
  const draw = line<CurvePoint>()
    .defined((point) => point.force !== null)
    .x((point) => frame.x(point.stroke))
    .y((point) => frame.y(point.force ?? 0))
    .digits(1)
  return draw(curve) ?? ''
}

/** Force on the curve at a stroke, straight between its points; null outside it or in a gap [N]. */
export function forceAt(curve: Curve, stroke: number): number | null {
  for (let i = 1; i < curve.length; i++) {
    const [a, b] = [curve[i - 1], curve[i]]
    if (!a || !b || a.force === null || b.force === null) continue
    if (stroke < a.stroke || stroke > b.stroke) continue
    const share = b.stroke === a.stroke ? 0 : (stroke - a.stroke) / (b.stroke - a.stroke)
    return a.force + share * (b.force - a.force)
  }
  return null
}

/** Lines of the squared paper along one axis, in SI; heavy ones carry a number. */
export function squares(end: number, size: number, length: number): { at: number; heavy: boolean }[] {
  const scale = scaleLinear([0, end / size], [0, length])
  const heavy = scale.ticks(Math.max(2, Math.floor(length / 62)))
  const step = (heavy[1] ?? end / size) - (heavy[0] ?? 0)
  const parts = scale(step) / 5 >= 10 ? 5 : 2
  const count = Math.floor(end / size / (step / parts) + 1e-9)
  return Array.from({ length: count + 1 }, (_, i) => ({
    at: Number(((i * step) / parts).toPrecision(12)) * size,
    heavy: i % parts === 0,
  }))
}

/** The stroke under a point of the screen, to the nearest step and never off the paper [m]. */
export function strokeUnder(frame: ForceStrokeFrame, x: number, fullStroke: number, step: number): number {
  const stroke = Math.round(frame.x.invert(x) / step) * step
  return Number(Math.min(fullStroke, Math.max(0, stroke)).toPrecision(9))
}

/** What a key does to a slider: arrows one step, page ten, Home and End to the ends; null if it does nothing. */
export function strokeByKey(key: string, stroke: number, fullStroke: number, step: number): number | null {
  const moves: Record<string, number> = {
    ArrowRight: stroke + step,
    ArrowUp: stroke + step,
    ArrowLeft: stroke - step,
    ArrowDown: stroke - step,
    PageUp: stroke + 10 * step,
    PageDown: stroke - 10 * step,
    Home: 0,
    End: fullStroke,
  }
  const to = moves[key]
  return to === undefined ? null : Number(Math.min(fullStroke, Math.max(0, to)).toPrecision(9))
}

/** The grip under the axis: a house with its tip on the reading's stroke. */
export function gripPath(x: number, bottom: number): string {
  return `M${px(x)} ${px(bottom + 2)}l11 13v27h-22v-27z`
}
