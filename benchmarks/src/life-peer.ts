import { spawnSync } from 'node:child_process'
import { life } from '@legwork/engine'
import { lives } from './life-question.ts'
import type { Timing } from './rounds.ts'

/** Fits are worth comparing only where both find the same largest likelihood. */
const allowed = 1e-7

/** The same lives put to R's survival by `life.R`; throws where its fit or curve and ours part. */
export function askLifePeer(): { name: string; timing: Timing } {
  const csv = lives.map(({ hours, failed }) => `${hours},${Number(failed)}`).join('\n')
  const answer = spawnSync('Rscript', ['--vanilla', 'benchmarks/life.R'], {
    input: `hours,failed\n${csv}\n`,
    encoding: 'utf8',
    env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
  })
  if (answer.error || answer.status !== 0) {
    throw new Error(`life.R did not answer; it needs Debian's r-base-core and r-cran-survival. ${answer.stderr ?? ''}`)
  }
  const [shape, scale, survival, median, fastest, slowest, rounds] = answer.stdout.trim().split(',').map(Number)
  const ours = life({ lives })
  const pairs = [
    [ours.shape, shape],
    [ours.scale, scale],
    [ours.curve[Math.ceil(ours.curve.length / 2) - 1]?.survival, survival],
  ]
  for (const [one, other] of pairs) {
    if (!(Math.abs((one ?? Number.NaN) / (other ?? Number.NaN) - 1) <= allowed)) {
      throw new Error(`lives: ours ${one}, R ${other}; nothing is timed against a wrong answer`)
    }
  }
  const nan = Number.NaN
  return {
    name: 'R survreg and survfit',
    timing: { median: median ?? nan, fastest: fastest ?? nan, slowest: slowest ?? nan, rounds: rounds ?? nan },
  }
}
