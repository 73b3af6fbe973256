export interface Rule {
  /** Between −1 and 1. */
  readonly nodes: readonly number[]
  readonly weights: readonly number[]
}

/**
 * Nodes and weights of a Gauss–Legendre rule: roots of P_n by Newton, weights 2/((1 − x²)·P_n′(x)²).
 *
 * @param count  nodes, 1 … 64; exact for polynomials up to degree 2·count − 1
 * @source M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), 25.4.29
 * @example gaussLegendre(2).nodes[1] // 0.57735026919
 */
export function gaussLegendre(count: number): Rule {
  const nodes: number[] = []
  const weights: number[] = []
  for (let index = 0; index < count; index += 1) {
    let x = -Math.cos((Math.PI * (index + 0.75)) / (count + 0.5))
    let slope = 1
    for (let round = 0; round < 20; round += 1) {
      let before = 0
      let here = 1
      for (let degree = 1; degree <= count; degree += 1) {
        const next = ((2 * degree - 1) * x * here - (degree - 1) * before) / degree
        before = here
        here = next
      }
      slope = (count * (x * here - before)) / (x * x - 1)
      const step = here / slope
      x -= step
      if (Math.abs(step) < 1e-16) break
    }
    nodes.push(x)
    weights.push(2 / ((1 - x * x) * slope * slope))
  }
  return { nodes, weights }
}
