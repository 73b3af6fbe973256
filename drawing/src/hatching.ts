import type { Hatching } from './shape.ts'

/** Lines across a cut part, after ISO 128: neighbours the other way or closer. */
export interface HatchLook {
  /** From line to line [mm]. */
  readonly pitch: number
  /** Of lines that would hang straight down the page, clockwise [°]. */
  readonly turn: number
  /** A second set of lines across the first. */
  readonly cross?: boolean
  /** Drawn and left out in turns [mm]. */
  readonly dashes?: readonly [drawn: number, left: number]
  /** Every other line begins half a dash later: broken strokes that make no columns. */
  readonly staggered?: boolean
}

export const hatchings: Readonly<Record<Hatching, HatchLook>> = {
  cast: { pitch: 2.6, turn: 45 },
  'cast-neighbour': { pitch: 2.6, turn: -45 },
  turned: { pitch: 2, turn: -45 },
  close: { pitch: 1.3, turn: 45 },
  spacer: { pitch: 3.4, turn: -45 },
  rubber: { pitch: 2, turn: 45, cross: true },
  foam: { pitch: 1.6, turn: 45, cross: true, dashes: [0.4, 1.2] },
  // The drawing lies down: the surface of a liquid hangs straight down the page.
  liquid: { pitch: 1.5, turn: 0, dashes: [2.4, 1.6], staggered: true },
}

/** Widths of the strokes round parts, and of lines [mm], the same on screen and paper. */
export const strokes = { heavy: 0.75, fine: 0.4, none: 0 } as const
export const lineStrokes = { heavy: 0.75, fine: 0.3 } as const
/** Dashes of lines that are no edge [mm], long and short in turns. */
export const lineDashes = { solid: null, axis: [7, 1.5, 1, 1.5], phantom: [7, 1.2, 1, 1.2, 1, 1.2] } as const
