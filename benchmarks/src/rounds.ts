/** How a figure is timed; the same in Node and in a page. */
export interface Timing {
  /** Median of the rounds, one call [µs]. */
  readonly median: number
  readonly fastest: number
  readonly slowest: number
  readonly rounds: number
}

const roundLasts = 25
const warmUpLasts = 300

function repeated(work: () => number, times: number): number {
  let kept = 0
  const began = performance.now()
  for (let index = 0; index < times; index += 1) kept += work()
  const took = performance.now() - began
  // What comes out is looked at, so that no compiler may leave the work out.
  if (!Number.isFinite(kept)) throw new Error('the timed work gave no number')
  return took
}

/**
 * Times `work` by wall clock: warmed up first, then rounds of at least 25 ms, which a page's coarse clock can tell apart.
 *
 * @param work    gives a number that hangs on everything it worked out
 * @param rounds  how many; odd, so that the median is a round that was run
 */
export function timed(work: () => number, rounds = 31): Timing {
  let calls = 1
  let took = repeated(work, calls)
  for (let warmed = took; warmed < warmUpLasts || took < roundLasts; warmed += took) {
    if (took < roundLasts) calls = Math.min(calls * 2, Math.ceil((calls * 1.2 * roundLasts) / Math.max(took, 0.01)))
    took = repeated(work, calls)
  }
  const each = Array.from({ length: rounds }, () => (1000 * repeated(work, calls)) / calls).sort((a, b) => a - b)
  const at = (index: number) => each[index] ?? Number.NaN
  return { median: at((rounds - 1) / 2), fastest: at(0), slowest: at(rounds - 1), rounds }
}
