import { spawnSync } from 'node:child_process'
import { pressFits } from '@legwork/engine'
import { timedPress } from './press-question.ts'
import { fork } from './questions.ts'
import type { Timing } from './rounds.ts'

interface PeerPress {
  readonly timing: Timing
  readonly fits: readonly { readonly name: string; readonly bic: number }[]
}

/** Fits of hypotheses are worth comparing only where both find the same bottom. */
const allowed = 1e-5

/** The same press put to SciPy by `press.py`; throws where its fits and ours part. */
export function askPressPeer(): { name: string; timing: Timing } {
  const answer = spawnSync('/usr/bin/python3', ['benchmarks/press.py'], {
    input: JSON.stringify({ spring: fork.spring, ...timedPress }),
    encoding: 'utf8',
    env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
  })
  if (answer.error || answer.status !== 0) {
    throw new Error(`press.py did not answer; it needs Debian's python3-scipy. ${answer.stderr ?? answer.error}`)
  }
  // The shape is written by press.py; every fit is compared with ours before its time is printed.
  const { timing, fits } = JSON.parse(answer.stdout) as PeerPress
  for (const { name, bic } of pressFits(fork.spring, timedPress)) {
    const theirs = fits.find((fit) => fit.name === name)?.bic ?? Number.NaN
    if (!(Math.abs(theirs - bic) <= allowed * Math.max(1, Math.abs(bic)))) {
      throw new Error(`press test, ${name}: ours ${bic}, SciPy ${theirs}; nothing is timed against a wrong answer`)
    }
  }
  return { name: 'SciPy least_squares, without bands', timing }
}
