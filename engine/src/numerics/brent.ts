/**
 * Root of a continuous function between two points of opposite sign: Brent's method.
 *
 * @param f          function
 * @param low        one end
 * @param high       other end; f(low) and f(high) have opposite signs, or one is 0
 * @param tolerance  of the root, absolute
 * @returns the root, or null where the signs are equal or a value is not finite
 * @source R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4
 * @example brent((x) => x * x - 2, 0, 2, 1e-12) // 1.41421356237
 */
export function brent(f: (x: number) => number, low: number, high: number, tolerance: number): number | null {
  let a = low
  let b = high
  let fa = f(a)
  let fb = f(b)
  if (!(Number.isFinite(fa) && Number.isFinite(fb)) || fa * fb > 0) return null
  let c = a
  let fc = fa
  let step = b - a
  let before = step
  for (let round = 0; round < 200; round += 1) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b
      b = c
      c = a
      fa = fb
      fb = fc
      fc = fa
    }
    const tight = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2
    const half = (c - b) / 2
    if (Math.abs(half) <= tight || fb === 0) return b
    if (Math.abs(before) >= tight && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa
      let p: number
      let q: number
      if (a === c) {
        p = 2 * half * s
        q = 1 - s
      } else {
        const qa = fa / fc
        const r = fb / fc
        p = s * (2 * half * qa * (qa - r) - (b - a) * (r - 1))
        q = (qa - 1) * (r - 1) * (s - 1)
      }
      if (p > 0) q = -q
      else p = -p
      if (2 * p < Math.min(3 * half * q - Math.abs(tight * q), Math.abs(before * q))) {
        before = step
        step = p / q
      } else {
        step = half
        before = half
      }
    } else {
      step = half
      before = half
    }
    a = b
    fa = fb
    b += Math.abs(step) > tight ? step : Math.sign(half) * tight
    fb = f(b)
    if (!Number.isFinite(fb)) return null
    if (fb * fc > 0) {
      c = a
      fc = fa
      step = b - a
      before = step
    }
  }
  return b
}
