const drop = 12
const strips = 96

/** Steps out from the mode until the density has fallen by e^12, or to the end of the range. */
function edge(log: (x: number) => number, top: number, mode: number, end: number): number {
  const whole = end - mode
  for (let share = 1 / 2048; share < 1; share *= 1.5) {
    if (top - log(mode + share * whole) > drop) return mode + share * whole
  }
  return end
}

/** ∫ of a density over a strip, its logarithm taken as straight there: a steep flank is not rounded off. */
function under(left: number, right: number): number {
  const slant = right - left
  return Math.abs(slant) < 1e-4 ? Math.exp((left + right) / 2) : (Math.exp(right) - Math.exp(left)) / slant
}

/**
 * Shortest interval that holds 90 %, or on a plateau more, of a density known by its logarithm, up to a constant: everything above one level.
 *
 * @param log   logarithm of the density, with one summit, over low … high
 * @param mode  where it is largest, nearly
 * @returns both ends, in the unit of low and high; the range itself where the density does not fall inside it
 * @source highest-density interval: JCGM 101:2008, 5.3.4, shortest coverage interval
 * @example shortestBand((x) => -x, 0, 100, 0).map((end) => Number(end.toFixed(2))) // [0,2.3]
 */
export function shortestBand(log: (x: number) => number, low: number, high: number, mode: number): [number, number] {
  const top = log(mode)
  const from = edge(log, top, mode, low)
  const to = edge(log, top, mode, high)
  const step = (to - from) / strips
  if (!(step > 0)) return [mode, mode]
  const logs = Float64Array.from({ length: strips + 1 }, (_, index) => log(from + index * step) - top)
  const at = (index: number) => logs[index] ?? Number.NEGATIVE_INFINITY
  let summit = 0
  let whole = 0
  for (let index = 0; index <= strips; index += 1) {
    if (at(index) > at(summit)) summit = index
    if (index < strips) whole += under(at(index), at(index + 1))
  }
  /** From the summit to where the density falls under a level: how far, in strips, and what lies between. */
  const reach = (level: number, way: 1 | -1): { strips: number; mass: number } => {
    let mass = 0
    let count = 0
    for (let index = summit; ; index += way, count += 1) {
      const next = index + way
      if (next < 0 || next > strips) return { strips: count, mass }
      const share = at(next) >= level ? 1 : (at(index) - level) / (at(index) - at(next))
      if (share < 1) return { strips: count + share, mass: mass + share * under(at(index), level) }
      mass += under(at(index), at(next))
    }
  }
  let [above, below] = [at(summit), at(summit) - 2 * drop]
  for (let round = 0; round < 50; round += 1) {
    const level = (above + below) / 2
    if (reach(level, -1).mass + reach(level, 1).mass < 0.9 * whole) above = level
    else below = level
  }
  return [from + step * (summit - reach(below, -1).strips), from + step * (summit + reach(below, 1).strips)]
}
