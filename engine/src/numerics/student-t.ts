import { brent } from './brent.ts'
import type { Draws } from './random.ts'

/** P(|T| < t) for whole degrees of freedom: a finite sum of cosines. */
function inside(t: number, freedom: number): number {
  const angle = Math.atan(t / Math.sqrt(freedom))
  const cos2 = Math.cos(angle) ** 2
  const even = freedom % 2 === 0
  let term = even ? 1 : Math.cos(angle)
  let sum = freedom === 1 ? 0 : term
  for (let k = even ? 2 : 3; k <= freedom - 2; k += 2) {
    term *= (cos2 * (k - 1)) / k
    sum += term
  }
  return even ? Math.sin(angle) * sum : (2 / Math.PI) * (angle + Math.sin(angle) * sum)
}

/**
 * Student's factor: a band of ± this many standard deviations holds `share` of a t distribution.
 *
 * @param share    0 < share < 1
 * @param freedom  degrees of freedom, whole, 1 … 10,000
 * @source M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and 26.7.4
 * @example studentFactor(0.9, 4) // 2.132
 */
export function studentFactor(share: number, freedom: number): number {
  // The tangent of an angle reaches every value: the root is looked for in the angle.
  const root = brent(
    (angle) => inside(Math.sqrt(freedom) * Math.tan(angle), freedom) - share,
    0,
    Math.PI / 2 - 1e-9,
    1e-15,
  )
  return Math.sqrt(freedom) * Math.tan(root ?? Math.PI / 2 - 1e-9)
}

/**
 * Draws of Student's t from uniform ones: a point in the unit circle, stretched.
 *
 * @param freedom  degrees of freedom, above 0
 * @source R. W. Bailey, Math. Comput. 62 (1994) 779
 * @example Math.abs(studentDraw(() => 0.25, 5)) > 0 // true
 */
export function studentDraw(draws: Draws, freedom: number): number {
  for (;;) {
    const across = 2 * draws() - 1
    const up = 2 * draws() - 1
    const square = across * across + up * up
    if (square > 1 || square === 0) continue
    return across * Math.sqrt((freedom * (square ** (-2 / freedom) - 1)) / square)
  }
}
