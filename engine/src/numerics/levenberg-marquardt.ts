import { backSubstitute, factorise, inverseOfSquare } from './orthogonal-factor.ts'

/** What is fitted: residuals as a function of parameters. */
export interface LeastSquares {
  /** Writes every residual into `out`; each divided by its standard uncertainty where that is known. */
  readonly residuals: (parameters: Float64Array, out: Float64Array) => void
  /** How many residuals. */
  readonly count: number
  readonly start: readonly number[]
  /** Bounds, one a parameter; none by default. */
  readonly lower?: readonly number[]
  readonly upper?: readonly number[]
  /** Rounds before it gives up; 2000 by default. */
  readonly rounds?: number
}

export interface LeastSquaresFit {
  parameters: number[]
  sumOfSquares: number
  /** Residuals less parameters. */
  freedom: number
  /**
   * (JᵀJ)⁻¹: the covariance where each residual was divided by its standard uncertainty; else times
   * sumOfSquares/freedom. Null where the residuals do not tell the parameters apart.
   */
  covariance: number[][] | null
  /** False where it gave up: the parameters are then no answer. */
  converged: boolean
  rounds: number
}

/**
 * Jacobian by central differences, one-sided where a bound is in the way. `fine` takes four points with a wide step:
 * the rounding of the residuals then reaches the slope a hundred times weaker.
 */
function slopes(question: LeastSquares, parameters: Float64Array, typical: Float64Array, fine: boolean): Float64Array {
  const columns = parameters.length
  const { count, lower, upper } = question
  const jacobian = new Float64Array(count * columns)
  const above = new Float64Array(count)
  const below = new Float64Array(count)
  const moved = Float64Array.from(parameters)
  for (let j = 0; j < columns; j += 1) {
    const at = parameters[j] ?? 0
    const most = upper?.[j] ?? Number.POSITIVE_INFINITY
    const least = lower?.[j] ?? Number.NEGATIVE_INFINITY
    const size = Math.max(Math.abs(at), 0.01 * (typical[j] ?? 1))
    const add = (step: number, weight: number) => {
      const high = Math.min(at + step, most)
      const low = Math.max(at - step, least)
      moved[j] = high
      question.residuals(moved, above)
      moved[j] = low
      question.residuals(moved, below)
      moved[j] = at
      for (let i = 0; i < count; i += 1) {
        const slope = ((above[i] ?? 0) - (below[i] ?? 0)) / (high - low)
        jacobian[i * columns + j] = (jacobian[i * columns + j] ?? 0) + weight * slope
      }
    }
    if (fine && at + 1e-3 * size <= most && at - 1e-3 * size >= least) {
      add(5e-4 * size, 4 / 3)
      add(1e-3 * size, -1 / 3)
    } else add(6e-6 * size, 1)
  }
  return jacobian
}

function squares(values: Float64Array): number {
  let sum = 0
  for (const value of values) sum += value * value
  return Number.isFinite(sum) ? sum : Number.POSITIVE_INFINITY
}

/** Where the search stands. */
interface Place {
  parameters: Float64Array
  left: Float64Array
  jacobian: Float64Array
}

/** Parameters at a bound that the way down would leave. */
function heldAtBounds(question: LeastSquares, { parameters, left, jacobian }: Place): boolean[] {
  const columns = parameters.length
  return Array.from(parameters, (at, j) => {
    let gradient = 0
    for (let i = 0; i < left.length; i += 1) gradient += (jacobian[i * columns + j] ?? 0) * (left[i] ?? 0)
    const low = at <= (question.lower?.[j] ?? Number.NEGATIVE_INFINITY) && gradient > 0
    return low || (at >= (question.upper?.[j] ?? Number.POSITIVE_INFINITY) && gradient < 0)
  })
}

/** min |J·d + r|² + damping·|D·d|²; null where it has no one answer. */
function stepFrom(place: Place, held: readonly boolean[], damping: number, reach: Float64Array): Float64Array | null {
  const { parameters, left, jacobian } = place
  const columns = parameters.length
  const count = left.length
  const rows = count + columns
  const matrix = new Float64Array(rows * columns)
  const right = new Float64Array(rows)
  for (let i = 0; i < count; i += 1) {
    right[i] = -(left[i] ?? 0)
    for (let j = 0; j < columns; j += 1) matrix[i * columns + j] = held[j] ? 0 : (jacobian[i * columns + j] ?? 0)
  }
  for (let j = 0; j < columns; j += 1) {
    matrix[(count + j) * columns + j] = held[j] ? 1 : Math.sqrt(damping) * (reach[j] ?? 1)
  }
  return backSubstitute(matrix, columns, factorise(matrix, rows, columns, right), right)
}

/** The largest column norms seen so far. */
function widen(reach: Float64Array, { left, jacobian, parameters }: Place): void {
  const columns = parameters.length
  for (let j = 0; j < columns; j += 1) {
    let norm = 0
    for (let i = 0; i < left.length; i += 1) norm += (jacobian[i * columns + j] ?? 0) ** 2
    reach[j] = Math.max(reach[j] ?? 0, Math.sqrt(norm)) || 1
  }
}

/** How much a step gains of the sum of squares, and how much the straight model foresaw. */
function gainOf(place: Place, tried: Float64Array, there: Float64Array): { gained: number; foreseen: number } {
  const { parameters, left, jacobian } = place
  const columns = parameters.length
  let gained = 0
  let foreseen = 0
  for (let i = 0; i < left.length; i += 1) {
    const before = left[i] ?? 0
    const after = there[i] ?? 0
    let linear = 0
    for (let j = 0; j < columns; j += 1) {
      linear += (jacobian[i * columns + j] ?? 0) * ((tried[j] ?? 0) - (parameters[j] ?? 0))
    }
    // Products of sum and difference keep the digits that a difference of two sums of squares would lose.
    gained += (before - after) * (before + after)
    foreseen -= linear * (2 * before + linear)
  }
  return { gained: Number.isFinite(gained) ? gained : Number.NEGATIVE_INFINITY, foreseen }
}

/** (JᵀJ)⁻¹; null where a column hangs on the others but for the rounding of its differences. */
function covarianceAt({ jacobian, left }: Place): number[][] | null {
  const columns = jacobian.length / left.length
  const norms = new Float64Array(columns)
  jacobian.forEach((entry, index) => {
    norms[index % columns] = Math.hypot(norms[index % columns] ?? 0, entry)
  })
  const factors = Float64Array.from(jacobian)
  const diagonal = factorise(factors, left.length, columns, new Float64Array(left.length))
  if (!diagonal.every((pivot, j) => Math.abs(pivot) > 1e-9 * (norms[j] ?? 0))) return null
  return inverseOfSquare(factors, columns, diagonal)
}

/** Whether every parameter matters: moved by all of itself it would still change the residuals. */
function hangsOnAll({ parameters, left, jacobian }: Place, typical: Float64Array): boolean {
  const columns = parameters.length
  const size = Math.sqrt(squares(left))
  return parameters.every((at, j) => {
    let norm = 0
    for (let i = 0; i < left.length; i += 1) norm = Math.hypot(norm, jacobian[i * columns + j] ?? 0)
    return norm * Math.max(Math.abs(at), typical[j] ?? 1) > 1e-9 * size
  })
}

/** One way down, with the damping it begins with. */
function wayDown(question: LeastSquares, firstDamping: number): LeastSquaresFit {
  const { count, start, residuals, lower, upper, rounds = 2000 } = question
  const columns = start.length
  const inside = (value: number, j: number) =>
    Math.min(Math.max(value, lower?.[j] ?? Number.NEGATIVE_INFINITY), upper?.[j] ?? Number.POSITIVE_INFINITY)
  const typical = Float64Array.from(start, (value) => Math.abs(value) || 1)
  const placeAt = (parameters: Float64Array, left: Float64Array, fine = false): Place => {
    return { parameters, left, jacobian: slopes(question, parameters, typical, fine) }
  }
  const residualsAt = (parameters: Float64Array) => {
    const left = new Float64Array(count)
    residuals(parameters, left)
    return left
  }
  const begin = Float64Array.from(start, inside)
  let place = placeAt(begin, residualsAt(begin))
  let sum = squares(place.left)
  const reach = new Float64Array(columns)
  let damping = firstDamping
  let growth = 2
  let still = 0
  let round = 0
  for (; round < rounds && still < 2 && Number.isFinite(sum); round += 1) {
    widen(reach, place)
    const step = stepFrom(place, heldAtBounds(question, place), damping, reach)
    if (!step) break
    const tried = place.parameters.map((value, j) => inside(value + (step[j] ?? 0), j))
    const there = residualsAt(tried)
    const { gained, foreseen } = gainOf(place, tried, there)
    const small = tried.every((value, j) => {
      const before = place.parameters[j] ?? 0
      return Math.abs(value - before) <= 1e-10 * (Math.abs(value) + 1e-8 * (typical[j] ?? 1))
    })
    const gain = foreseen > 0 ? gained / foreseen : 0
    if (gained > 0 && gain > 1e-4) {
      still = small || foreseen <= 1e-15 * sum ? still + 1 : 0
      place = placeAt(tried, there)
      sum = squares(there)
      damping *= Math.max(1 / 3, 1 - (2 * gain - 1) ** 3)
      growth = 2
    } else {
      // Steps that rounding alone refuses are the end of the way down, not a failure.
      still = small || (Math.abs(gained) <= 1e-13 * sum && foreseen <= 1e-13 * sum) ? still + 1 : 0
      damping *= growth
      growth *= 2
    }
  }
  const converged = still >= 2 && hangsOnAll(place, typical)
  if (converged) place = placeAt(place.parameters, place.left, true)
  for (let polish = 0, before = Number.POSITIVE_INFINITY; converged && polish < 60; polish += 1) {
    const step = stepFrom(place, heldAtBounds(question, place), 0, reach)
    const length = step ? Math.hypot(...step.map((value, j) => value * (reach[j] ?? 1))) : Number.NaN
    // Undamped steps shrink until rounding is all that is left.
    if (!step || !(length < 0.95 * before) || length ** 2 > 1e-6 * sum) break
    before = length
    const tried = place.parameters.map((value, j) => inside(value + (step[j] ?? 0), j))
    const there = residualsAt(tried)
    if (!(squares(there) <= sum * (1 + 1e-12))) break
    place = placeAt(tried, there, true)
    sum = squares(there)
  }
  return {
    parameters: [...place.parameters],
    sumOfSquares: sum,
    freedom: count - columns,
    covariance: Number.isFinite(sum) && count >= columns ? covarianceAt(place) : null,
    converged,
    rounds: round,
  }
}

/**
 * Least squares by Levenberg and Marquardt: each step solves min |J·d + r|² + damping·|D·d|² by orthogonal factors,
 * D the largest column norms seen; the damping follows how well the last step was foreseen. A parameter at its bound
 * that would leave it stands still for that step. The last digits come from undamped steps. A way down that ends nowhere,
 * or where a parameter no longer matters (far out on a plateau), is begun again with shorter first steps.
 *
 * @param question  residuals, how many, start, bounds
 * @returns parameters, sum of squares, covariance, and whether it converged: two successive steps that move no
 *          parameter, or gain no square, beyond rounding, where the residuals hang on every parameter
 * @source Marquardt, SIAM J. Appl. Math. 11 (1963) 431; scaling after Moré, LNM 630 (1978); damping after Nielsen,
 *         IMM-REP-1999-05
 * @example levenbergMarquardt({ residuals: ([a = 0, b = 0], out) => { out.set([a + b - 3, a - b - 1, a - 2]) }, count: 3, start: [0, 0] }).parameters.map((value) => Number(value.toFixed(9))) // [2,1]
 */
export function levenbergMarquardt(question: LeastSquares): LeastSquaresFit {
  let best = wayDown(question, 1e-3)
  for (const damping of [1, 1e3]) {
    if (best.converged) break
    const other = wayDown(question, damping)
    if (other.converged || other.sumOfSquares < best.sumOfSquares) best = other
  }
  return best
}
