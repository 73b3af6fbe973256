/** Rows of a matrix one after the other: entry (i, j) stands at i·columns + j. */
export type Matrix = Float64Array

/**
 * Householder factorisation of a tall matrix, in place: afterwards the upper triangle holds R, and `right` holds Qᵀ·right.
 *
 * @param matrix   rows × columns, rows ≥ columns; overwritten
 * @param right    one value a row; overwritten
 * @returns diagonal of R; a 0 marks a column that hangs on those before it
 * @source Golub & Van Loan, Matrix Computations, 4th ed., algorithm 5.2.1
 * @example factorise(Float64Array.of(3, 4), 2, 1, Float64Array.of(1, 1))[0] // -5
 */
export function factorise(matrix: Matrix, rows: number, columns: number, right: Float64Array): Float64Array {
  const diagonal = new Float64Array(columns)
  for (let j = 0; j < columns; j += 1) {
    let square = 0
    for (let i = j; i < rows; i += 1) square += (matrix[i * columns + j] ?? 0) ** 2
    const top = matrix[j * columns + j] ?? 0
    const norm = top > 0 ? -Math.sqrt(square) : Math.sqrt(square)
    diagonal[j] = norm
    if (norm === 0) continue
    // v = column − norm·e_j; H = I − v·vᵀ/(v_j·−norm)
    const head = top - norm
    matrix[j * columns + j] = head
    const scale = -1 / (norm * head)
    for (let other = j + 1; other <= columns; other += 1) {
      let dot = 0
      for (let i = j; i < rows; i += 1) {
        const entry = other < columns ? (matrix[i * columns + other] ?? 0) : (right[i] ?? 0)
        dot += (matrix[i * columns + j] ?? 0) * entry
      }
      const share = dot * scale
      for (let i = j; i < rows; i += 1) {
        const v = matrix[i * columns + j] ?? 0
        if (other < columns) matrix[i * columns + other] = (matrix[i * columns + other] ?? 0) - share * v
        else right[i] = (right[i] ?? 0) - share * v
      }
    }
  }
  return diagonal
}

/**
 * Solves R·x = right from the bottom up.
 *
 * @param matrix    after `factorise`: the upper triangle holds R
 * @param diagonal  of R
 * @param right     one value a row
 * @returns x; null where R has a 0 on its diagonal
 * @source Golub & Van Loan, Matrix Computations, 4th ed., algorithm 3.1.2
 * @example backSubstitute(Float64Array.of(0, 1, 0, 0), 2, Float64Array.of(2, 4), Float64Array.of(6, 8))[0] // 2
 */
export function backSubstitute(
  matrix: Matrix,
  columns: number,
  diagonal: Float64Array,
  right: Float64Array,
): Float64Array | null {
  const x = new Float64Array(columns)
  for (let i = columns - 1; i >= 0; i -= 1) {
    let value = right[i] ?? 0
    for (let j = i + 1; j < columns; j += 1) value -= (matrix[i * columns + j] ?? 0) * (x[j] ?? 0)
    const pivot = diagonal[i] ?? 0
    if (pivot === 0) return null
    x[i] = value / pivot
  }
  return x
}

/**
 * (RᵀR)⁻¹, row by row.
 *
 * @param matrix    after `factorise`
 * @param diagonal  of R
 * @returns null where a column hangs on the others
 * @source Golub & Van Loan, Matrix Computations, 4th ed., 5.3
 * @example inverseOfSquare(Float64Array.of(0), 1, Float64Array.of(2)) // [[0.25]]
 */
export function inverseOfSquare(matrix: Matrix, columns: number, diagonal: Float64Array): number[][] | null {
  const inverse: Float64Array[] = []
  for (let j = 0; j < columns; j += 1) {
    const unit = new Float64Array(columns)
    unit[j] = 1
    const column = backSubstitute(matrix, columns, diagonal, unit)
    if (!column) return null
    inverse.push(column)
  }
  // R⁻¹ has these columns; (RᵀR)⁻¹ = R⁻¹·R⁻ᵀ.
  const entry = (i: number, j: number) => inverse.reduce((sum, column) => sum + (column[i] ?? 0) * (column[j] ?? 0), 0)
  return Array.from({ length: columns }, (_, i) => Array.from({ length: columns }, (_, j) => entry(i, j)))
}
