/**
 * Places in a row for things of one size, each as near to its own place as the others leave it: the order stays, none
 * lies on another, none beyond the ends. All [px].
 *
 * @example inARow([10, 12, 200], 30, 300) // [10, 40, 200], pushed apart from the left
 */
export function inARow(wanted: readonly number[], apart: number, width: number): number[] {
  const order = wanted.map((at, index) => ({ at, index })).sort((one, other) => one.at - other.at)
  const placed: number[] = Array.from({ length: wanted.length }, () => 0)
  let free = 0
  order.forEach(({ at, index }, nth) => {
    const latest = width - (order.length - 1 - nth) * apart
    const here = Math.min(latest, Math.max(free, at))
    placed[index] = here
    free = here + apart
  })
  return placed
}
