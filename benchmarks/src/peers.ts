import { spawnSync } from 'node:child_process'
import type { Timing } from './rounds.ts'

export interface PeerBatch {
  /** One batch [µs]. */
  readonly timing: Timing
  /** Strokes of the batch [m], in the order of its loads. */
  readonly strokes: readonly number[]
}

export interface Peers {
  readonly versions: { readonly python: string; readonly numpy: string; readonly scipy: string }
  readonly brentq: readonly PeerBatch[]
  readonly newton: readonly PeerBatch[]
  readonly slider: {
    readonly timing: Timing
    readonly slow: readonly number[]
    readonly fast: readonly number[]
    readonly rest: readonly number[]
    readonly pressure: number
    readonly end: number
  }
}

/** The same questions put to SciPy and NumPy by `peers.py`, in Debian's Python. */
export function askPeers(question: object): Peers {
  const answer = spawnSync('/usr/bin/python3', ['benchmarks/peers.py'], {
    input: JSON.stringify(question),
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
    env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
  })
  if (answer.error || answer.status !== 0) {
    throw new Error(`peers.py did not answer; it needs Debian's python3-scipy. ${answer.stderr ?? answer.error}`)
  }
  // The shape is written by peers.py beside this file; every figure is compared with ours before it is printed.
  return JSON.parse(answer.stdout) as Peers
}
