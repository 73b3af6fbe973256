export interface Least {
  at: number
  value: number
}

const golden = (3 - Math.sqrt(5)) / 2

/**
 * Least value of a function between two points: parabolas through the last three, golden section where they fail.
 *
 * @param f          function, finite between the points; with one valley there the answer is its bottom
 * @param tolerance  of the place, absolute
 * @source R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 5
 * @example minimum((x) => (x - 1) ** 2, 0, 3, 1e-9).at // 1
 */
export function minimum(f: (x: number) => number, low: number, high: number, tolerance: number): Least {
  let a = low
  let b = high
  let x = a + golden * (b - a)
  let fx = f(x)
  let [w, v, fw, fv] = [x, x, fx, fx]
  let step = 0
  let before = 0
  for (let round = 0; round < 100; round += 1) {
    const middle = (a + b) / 2
    const tight = tolerance + 1.5e-8 * Math.abs(x)
    if (Math.abs(x - middle) <= 2 * tight - (b - a) / 2) break
    let parabola = false
    if (Math.abs(before) > tight) {
      const r = (x - w) * (fx - fv)
      const q0 = (x - v) * (fx - fw)
      const p0 = (x - v) * q0 - (x - w) * r
      const q1 = 2 * (q0 - r)
      const p = q1 > 0 ? -p0 : p0
      const q = Math.abs(q1)
      parabola = Math.abs(p) < Math.abs((q * before) / 2) && p > q * (a - x) && p < q * (b - x)
      if (parabola) {
        before = step
        step = p / q
        const u = x + step
        if (u - a < 2 * tight || b - u < 2 * tight) step = x < middle ? tight : -tight
      }
    }
    if (!parabola) {
      before = x < middle ? b - x : a - x
      step = golden * before
    }
    const u = x + (Math.abs(step) >= tight ? step : step > 0 ? tight : -tight)
    const fu = f(u)
    if (fu <= fx) {
      if (u < x) b = x
      else a = x
      ;[v, fv, w, fw, x, fx] = [w, fw, x, fx, u, fu]
    } else {
      if (u < x) a = u
      else b = u
      if (fu <= fw || w === x) [v, fv, w, fw] = [w, fw, u, fu]
      else if (fu <= fv || v === x || v === w) [v, fv] = [u, fu]
    }
  }
  return { at: x, value: fx }
}
