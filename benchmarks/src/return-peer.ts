import { spawnSync } from 'node:child_process'
import { fork } from './questions.ts'
import { dampingOf, lowers, returnTimes } from './return-question.ts'
import type { Timing } from './rounds.ts'

interface PeerReturn {
  readonly timing: Timing
  readonly dampings: readonly number[]
}

const allowed = 1e-4

/** The same times put to SciPy by `return.py`; throws where its dampings and ours part. */
export function askReturnPeer(): { name: string; timing: Timing } {
  const { spring, ambient } = fork
  const answer = spawnSync('/usr/bin/python3', ['benchmarks/return.py'], {
    input: JSON.stringify({ spring, ambient, ...lowers, times: returnTimes }),
    encoding: 'utf8',
    env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
  })
  if (answer.error || answer.status !== 0) {
    throw new Error(`return.py did not answer; it needs Debian's python3-scipy. ${answer.stderr ?? answer.error}`)
  }
  // The shape is written by return.py; every damping is compared with ours before its time is printed.
  const { timing, dampings } = JSON.parse(answer.stdout) as PeerReturn
  returnTimes.forEach((time, index) => {
    const theirs = dampings[index] ?? Number.NaN
    const ours = dampingOf(time)
    if (!(Math.abs(theirs - ours) <= allowed * ours)) {
      throw new Error(`damping from ${time} s: ours ${ours}, SciPy ${theirs}; nothing is timed against a wrong answer`)
    }
  })
  return { name: 'SciPy solve_ivp in brentq', timing }
}
