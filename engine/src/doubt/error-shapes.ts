/** How an error is drawn, in units of its own width, and how its draws are spread. */
import { brent } from '../numerics/brent.ts'
import { normalQuantile } from '../numerics/normal-distribution.ts'
import { type Draws, normalDraw } from '../numerics/random.ts'
import { studentDraw, studentFactor } from '../numerics/student-t.ts'

/** A distribution about 0, or from 0 to 1 where it is rectangular. */
export interface ErrorShape {
  readonly draw: (draws: Draws) => number
  /** The value below which a share of the draws lies. */
  readonly quantile: (share: number) => number
}

/** Standard deviation 1. */
export const normal: ErrorShape = { draw: normalDraw, quantile: normalQuantile }

/** From 0 to 1. */
export const rectangular: ErrorShape = { draw: (draws) => draws(), quantile: (share) => share }

/**
 * From −1 to 1, likeliest in the middle: the sum of two rectangular errors of one width.
 *
 * @source JCGM 101:2008 (GUM supplement 1), 6.4.5
 * @example triangular.quantile(0.125) // -0.5
 */
export const triangular: ErrorShape = {
  draw: (draws) => draws() + draws() - 1,
  quantile: (share) => (share < 0.5 ? Math.sqrt(2 * share) - 1 : 1 - Math.sqrt(2 * (1 - share))),
}

/**
 * From −1 to 1, likeliest at both ends: something that swings to and fro, read at any moment.
 *
 * @source JCGM 101:2008 (GUM supplement 1), 6.4.6
 * @example arcsine.quantile(0.75) // 0.70710678
 */
export const arcsine: ErrorShape = {
  draw: (draws) => Math.sin(2 * Math.PI * draws()),
  quantile: (share) => -Math.cos(Math.PI * share),
}

/**
 * Student's t: a mean of few readings, whose own scatter is as doubtful as it is scarce.
 *
 * @param freedom  degrees of freedom, whole, 3 … 10,000: readings less one; below 3 it has no standard deviation
 * @source JCGM 101:2008 (GUM supplement 1), 6.4.9
 * @example student(24).quantile(0.95) // 1.7109
 */
export function student(freedom: number): ErrorShape {
  return {
    draw: (draws) => studentDraw(draws, freedom),
    quantile: (share) => Math.sign(share - 0.5) * studentFactor(Math.abs(2 * share - 1), freedom),
  }
}

/** P(width·v > z) for v even from −1 to 1 and the width even from 1 − ends to 1 + ends, z ≥ 0. */
function beyond(z: number, ends: number): number {
  const from = Math.max(z, 1 - ends)
  const to = 1 + ends
  if (z === 0) return 0.5
  return z >= to ? 0 : (to - from - z * Math.log(to / from)) / (4 * ends)
}

/**
 * From −1 to 1, with ends that are themselves only known to ± a share of that: a trapezoid with curved flanks.
 *
 * @param ends  0 < ends ≤ 1
 * @source JCGM 101:2008 (GUM supplement 1), 6.4.3
 * @example curvedTrapezoid(0.1).quantile(0.5) // 0
 */
export function curvedTrapezoid(ends: number): ErrorShape {
  const upper = (tail: number) => brent((z) => beyond(z, ends) - tail, 0, 1 + ends, 1e-12) ?? 0
  return {
    draw: (draws) => (1 - ends + 2 * ends * draws()) * (2 * draws() - 1),
    quantile: (share) => (share < 0.5 ? -upper(share) : upper(1 - share)),
  }
}
