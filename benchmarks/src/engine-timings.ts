import { diagnoseSum } from './diagnose-question.ts'
import { doubtSum } from './doubt-question.ts'
import { lifeSum } from './life-question.ts'
import { pressSum } from './press-question.ts'
import { fork, loads, oneSag, sagsOf, sliderSum } from './questions.ts'
import { returnSum } from './return-question.ts'
import { type Timing, timed } from './rounds.ts'

export interface EngineTimings {
  readonly oneSag: Timing
  readonly slider: Timing
  readonly press: Timing
  readonly life: Timing
  readonly diagnosis: Timing
  readonly doubt: Timing
  readonly back: Timing
}

/** A lever's way: 101 pressures within 20 % of the filled one, one after the other. */
function movedPressure(): () => number {
  let step = 0
  return () => {
    step = (step + 1) % 101
    return fork.pressure * (0.8 + (0.4 * step) / 100)
  }
}

/** What has a target; runs in Node and in a page alike. */
export function engineTimings(): EngineTimings {
  const moved = movedPressure()
  return {
    oneSag: timed(() => oneSag()),
    slider: timed(() => sliderSum(moved())),
    press: timed(pressSum),
    life: timed(lifeSum),
    diagnosis: timed(diagnoseSum),
    doubt: timed(doubtSum),
    back: timed(returnSum),
  }
}

/** Whole batches of sags [µs a batch]. */
export function batchTimings(counts: readonly number[]): Timing[] {
  return counts.map((count) => {
    const batch = loads(count)
    return timed(() => sagsOf(batch), count <= 10_000 ? 31 : 11)
  })
}
