import type { AxisMeasure, Curve, ForceStrokeFrame, Plot } from './force-stroke-geometry.ts'

/** One reading at a stroke [m], a force [N]: going down or coming up, because friction parts the two. */
export interface ForceReading {
  readonly stroke: number
  readonly force: number
  readonly way: 'pressing' | 'releasing'
  /** The last visit's are printed, today's are written. */
  readonly when: 'today' | 'last visit'
}

export interface ForceStrokeProps {
  /** Full stroke of the axis [m]. */
  fullStroke: number
  slow: Curve
  fast?: Curve
  lastVisit?: Curve
  /** The slow curve of the setting that a what-if is held against. */
  before?: Curve
  /** Where the load rests and where friction may leave it [m]. */
  sag?: { stroke: number; low: number; high: number }
  /** Readings of the press: ring = pressing, triangle = releasing. */
  readings?: readonly ForceReading[]
  /** Load along the leg with its doubt [N]. */
  load?: { force: number; low: number; high: number; value: string; unit: string; words: string }
  /** The zone of sag that is wanted [m]. */
  wanted?: { from: number; to: number; words: string }
  /** Where the finger is [m]; its force is read off the slow curve. */
  stroke: number
  onStroke?: (stroke: number) => void
  /** One step of the keys and the finger [m]. */
  step?: number
  strokeMeasure: AxisMeasure
  forceMeasure: AxisMeasure
  words: {
    /** Spoken name of the chart. */
    chart: string
    slow: string
    fast?: string
    lastVisit?: string
    before?: string
    /** Spoken name of the grip, e.g. 'stroke', and what it stands at, e.g. '30 mm, 351 N'. */
    grip: string
    gripValue: string
  }
  width?: number
  height?: number
  /** Where the paper lies in the picture; taken from the cutaway so that both share one stroke axis. */
  plot?: Plot
  /** Draws the wiper lines up to here [px], to join with the drawing above. */
  joinUpTo?: number
}

export interface Framed extends ForceStrokeProps {
  frame: ForceStrokeFrame
}
