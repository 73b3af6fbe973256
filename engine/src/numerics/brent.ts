/**
 * A root of f between two points of different sign: Brent's method (inverse quadratic step, kept inside by bisection).
 *
 * @param f        continuous function
 * @param a,b      ends; f(a) and f(b) differ in sign or one is 0
 * @param tolerance  width of the last bracket, in units of the argument
 * @returns the root
 * @throws RangeError when the ends do not bracket a root
 * @source R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4
 * @example brent((x) => x * x - 2, 0, 2, 1e-12) // 1.414213562373
 */
export function brent(f: (x: number) => number, a: number, b: number, tolerance: number): number {
  let [low, high, fLow, fHigh] = [a, b, f(a), f(b)]
  if (fLow * fHigh > 0) throw new RangeError(`no sign change between ${a} and ${b}`)
  let [previous, fPrevious, step, before] = [low, fLow, high - low, high - low]
  for (let i = 0; i < 200; i++) {
    if (fHigh * fPrevious > 0) [previous, fPrevious, step, before] = [low, fLow, high - low, high - low]
    if (Math.abs(fPrevious) < Math.abs(fHigh)) {
      ;[low, high, previous] = [high, previous, high]
      ;[fLow, fHigh, fPrevious] = [fHigh, fPrevious, fHigh]
    }
    const allowed = 2 * Number.EPSILON * Math.abs(high) + tolerance / 2
    const half = (previous - high) / 2
    if (Math.abs(half) <= allowed || fHigh === 0) return high
    if (Math.abs(before) >= allowed && Math.abs(fLow) > Math.abs(fHigh)) {
      const s = fHigh / fLow
      const [q0, r] = [fLow / fPrevious, fHigh / fPrevious]
      let p = low === previous ? 2 * half * s : s * (2 * half * q0 * (q0 - r) - (high - low) * (r - 1))
      let q = low === previous ? 1 - s : (q0 - 1) * (r - 1) * (s - 1)
      if (p > 0) q = -q
      p = Math.abs(p)
      if (2 * p < Math.min(3 * half * q - Math.abs(allowed * q), Math.abs(before * q))) [before, step] = [step, p / q]
      else [before, step] = [half, half]
    } else [before, step] = [half, half]
    ;[low, fLow] = [high, fHigh]
    high += Math.abs(step) > allowed ? step : half > 0 ? allowed : -allowed
    fHigh = f(high)
  }
  throw new RangeError('no convergence in 200 steps')
}
