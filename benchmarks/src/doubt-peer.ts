import { spawnSync } from 'node:child_process'
import { doubted, doubtOfSag } from './doubt-question.ts'
import { fork } from './questions.ts'
import type { Timing } from './rounds.ts'

interface PeerDoubt {
  readonly timing: Timing
  readonly spread: readonly number[]
  readonly shares: readonly number[]
}

/** Of the band's width: both sides draw by chance, so that 10,000 draws agree to a few hundredths. */
const allowed = 0.06

/** The same doubt put to NumPy by `doubt.py`; throws where its band or shares and ours part by more than chance. */
export function askDoubtPeer(): { name: string; timing: Timing } {
  const { spring, ambient, pressure, load } = fork
  const answer = spawnSync('/usr/bin/python3', ['benchmarks/doubt.py'], {
    input: JSON.stringify({ spring, ambient, pressure, load, ...doubted }),
    encoding: 'utf8',
    env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' },
  })
  if (answer.error || answer.status !== 0) {
    throw new Error(`doubt.py did not answer; it needs Debian's python3-scipy. ${answer.stderr ?? answer.error}`)
  }
  // The shape is written by doubt.py; band and shares are compared with ours before its time is printed.
  const { timing, spread, shares } = JSON.parse(answer.stdout) as PeerDoubt
  const { spread: ours, shares: ourShares } = doubtOfSag()
  const width = ours.high - ours.low
  const off = [ours.median, ours.low, ours.high].map((one, index) => (one - (spread[index] ?? Number.NaN)) / width)
  off.push((ourShares.pressure ?? 0) - (shares[0] ?? Number.NaN), (ourShares.load ?? 0) - (shares[1] ?? Number.NaN))
  if (!off.every((one) => Math.abs(one) <= allowed)) {
    throw new Error(`doubt of a sag parts from NumPy’s by ${off.join(', ')}; nothing is timed against a wrong answer`)
  }
  return { name: 'NumPy, all draws at once', timing }
}
