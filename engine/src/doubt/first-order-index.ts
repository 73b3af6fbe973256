/** Classes of equal probability an error's draws are put into; fewer for few draws. */
export function classesFor(draws: number): number {
  return Math.max(2, Math.min(30, Math.floor(Math.sqrt(draws) / 2)))
}

/** Inner edges of classes of equal probability. */
export function classEdges(quantile: (share: number) => number, classes: number): Float64Array {
  return Float64Array.from({ length: classes - 1 }, (_, index) => quantile((index + 1) / classes))
}

/** The class of a draw. */
export function classOf(drawn: number, edges: Float64Array): number {
  let low = 0
  let high = edges.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (drawn < (edges[middle] ?? 0)) high = middle
    else low = middle + 1
  }
  return low
}

/** An error's draws by class: how many, their sum and the sum of their squares. */
export interface DrawnClasses {
  readonly count: Float64Array
  readonly x: Float64Array
  readonly xx: Float64Array
}

/** An output by the same classes, about any fixed value: its sum, and its sum with the error's draw. */
export interface AnsweredClasses {
  readonly y: Float64Array
  readonly xy: Float64Array
}

/** Takes one draw into its class. */
export function putDraw(into: DrawnClasses, at: number, drawn: number): void {
  into.count[at] = (into.count[at] ?? 0) + 1
  into.x[at] = (into.x[at] ?? 0) + drawn
  into.xx[at] = (into.xx[at] ?? 0) + drawn * drawn
}

/**
 * First-order index: the share of an output's variance that one error explains by itself, Var(E[y|x])/Var(y).
 *
 * The draws stand in classes of equal probability of the error, with a straight line through each class; the variance of
 * those lines, less what scatter about them would make of itself, over the whole variance. Between 0 and 1; 0 where the
 * output does not vary.
 *
 * @param drawn     the error's draws
 * @param answered  the output
 * @param squares   sum of the output's squares over all draws, about the same fixed value
 * @param size      how large the output is, to tell variation from rounding
 * @source I. M. Sobol', Math. Comput. Simul. 55 (2001) 271; estimated from given draws by classes
 * @example firstOrderIndex({ count: Float64Array.of(2, 2), x: Float64Array.of(-4, 4), xx: Float64Array.of(10, 10) }, { y: Float64Array.of(-4, 4), xy: Float64Array.of(10, 10) }, 20, 1) // 1
 */
export function firstOrderIndex(drawn: DrawnClasses, answered: AnsweredClasses, squares: number, size: number): number {
  let count = 0
  let sum = 0
  let fitted = 0
  let explained = 0
  for (let index = 0; index < drawn.count.length; index += 1) {
    const n = drawn.count[index] ?? 0
    if (n === 0) continue
    const x = drawn.x[index] ?? 0
    const y = answered.y[index] ?? 0
    count += n
    sum += y
    fitted += 1
    explained += (y * y) / n
    const across = (drawn.xx[index] ?? 0) - (x * x) / n
    if (n < 3 || across <= 0) continue
    fitted += 1
    explained += ((answered.xy[index] ?? 0) - (x * y) / n) ** 2 / across
  }
  if (count < 2) return 0
  const middle = (sum * sum) / count
  const total = squares - middle
  const between = explained - middle
  if (!(total > 1e-24 * count * size * size)) return 0
  const scatter = ((fitted - 1) * (total - between)) / Math.max(1, count - fitted)
  return Math.min(1, Math.max(0, (between - scatter) / total))
}
