/** ln Γ(a), a > 0: Stirling's series above 10, brought there by Γ(a + 1) = a·Γ(a). */
function logGamma(a: number): number {
  let shift = 0
  let z = a
  for (; z < 10; z += 1) shift += Math.log(z)
  const q = 1 / (z * z)
  const series = (1 / 12 - q * (1 / 360 - q * (1 / 1260 - q * (1 / 1680 - q * (1 / 1188))))) / z
  return (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series - shift
}

/**
 * Upper incomplete gamma function, regularised: Q(a, x) = Γ(a, x)/Γ(a), 1 at x = 0 and falling to 0.
 *
 * @param a  0.5 and more
 * @param x  0 and more
 * @returns 0 … 1, relative 1e-12
 * @source Abramowitz & Stegun 6.1.41, 6.5.29 and 6.5.31: Stirling's series, power series, continued fraction
 * @example upperGamma(1, 2) // 0.1353352832366
 */
export function upperGamma(a: number, x: number): number {
  if (x <= 0) return 1
  const front = Math.exp(a * Math.log(x) - x - logGamma(a))
  if (x < a + 1) {
    let term = 1 / a
    let sum = term
    for (let n = 1; n < 10_000 && term > sum * 1e-17; n += 1) {
      term *= x / (a + n)
      sum += term
    }
    return Math.max(0, 1 - front * sum)
  }
  // Lentz's way through the continued fraction.
  let b = x + 1 - a
  let c = 1e300
  let d = 1 / b
  let fraction = d
  for (let n = 1; n < 10_000; n += 1) {
    const above = -n * (n - a)
    b += 2
    d = 1 / (above * d + b)
    c = b + above / c
    const change = c * d
    fraction *= change
    if (Math.abs(change - 1) < 1e-16) break
  }
  return front * fraction
}
