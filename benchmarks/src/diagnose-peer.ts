import { spawnSync } from 'node:child_process'
import { cases, diagnosed, networkOfKind } from './diagnose-question.ts'
import type { Timing } from './rounds.ts'

interface PeerDiagnosis {
  readonly timing: Timing
  readonly answers: readonly {
    readonly posteriors: Readonly<Record<string, number>>
    readonly gains: Readonly<Record<string, number>>
  }[]
}

/** Inclusion–exclusion loses some digits to cancellation; ours does not. */
const allowed = 1e-6

/** The same signs put to NumPy by `diagnose.py`; throws where its posteriors or next tests and ours part. */
export function askDiagnosePeer(): { name: string; timing: Timing } {
  const answer = spawnSync('/usr/bin/python3', ['benchmarks/diagnose.py'], {
    input: JSON.stringify({ network: networkOfKind(), cases }),
    encoding: 'utf8',
    env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
  })
  if (answer.error || answer.status !== 0) {
    throw new Error(`diagnose.py did not answer; it needs Debian's python3-numpy. ${answer.stderr ?? answer.error}`)
  }
  // The shape is written by diagnose.py; every posterior and gain is compared with ours before its time is printed.
  const { timing, answers } = JSON.parse(answer.stdout) as PeerDiagnosis
  cases.forEach((present, index) => {
    const { posteriors, nextTests } = diagnosed(present)
    const theirs = answers[index]
    const pairs = [
      ...Object.entries(posteriors).map(([id, ours]) => [id, ours, theirs?.posteriors[id]] as const),
      ...nextTests.map(({ test, gainPerMinute }) => [test, gainPerMinute, theirs?.gains[test]] as const),
    ]
    for (const [id, ours, other] of pairs) {
      if (!(Math.abs(ours - (other ?? Number.NaN)) <= allowed)) {
        throw new Error(
          `diagnosis ${present}, ${id}: ours ${ours}, NumPy ${other}; nothing is timed against a wrong answer`,
        )
      }
    }
  })
  return { name: 'NumPy inclusion–exclusion', timing }
}
