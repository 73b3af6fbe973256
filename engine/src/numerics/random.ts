/** A stream of numbers in [0, 1), the same for the same seed everywhere. */
export type Draws = () => number

/**
 * Seeded random numbers: sfc32.
 *
 * @param seed  whole number
 * @source C. Doty-Humphrey, PractRand (sfc32), public domain
 * @example seededDraws(1)() < 1 // true
 */
export function seededDraws(seed: number): Draws {
  let a = seed | 0
  let b = 0x9e3779b9 | 0
  let c = 0x243f6a88 | 0
  let counter = 1
  const draw = () => {
    const mixed = (((a + b) | 0) + counter) | 0
    counter = (counter + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = (((c << 21) | (c >>> 11)) + mixed) | 0
    return (mixed >>> 0) / 4_294_967_296
  }
  for (let round = 0; round < 15; round += 1) draw()
  return draw
}

/**
 * Standard normal draws from uniform ones.
 *
 * @source G. E. P. Box, M. E. Muller, Ann. Math. Stat. 29 (1958) 610
 * @example normalDraw(() => 0.5) < 0 // true
 */
export function normalDraw(draw: Draws): number {
  const radius = Math.sqrt(-2 * Math.log(1 - draw()))
  return radius * Math.cos(2 * Math.PI * draw())
}
