import type { Peers } from './peers.ts'
import { fork, loads, oneSag, slider } from './questions.ts'

/** Speeds are worth comparing only between programs that give the same answer. */
const allowed = 1e-8

function largest(ours: readonly number[], theirs: readonly number[]): number {
  if (ours.length !== theirs.length) throw new Error(`${ours.length} answers against ${theirs.length}`)
  return Math.max(
    ...ours.map((one, index) => Math.abs(one - (theirs[index] ?? Number.NaN)) / Math.max(Math.abs(one), 1e-3)),
  )
}

/** Largest relative difference between our answers and the peers'; throws where they part. */
export function agreement(peers: Peers, counts: readonly number[]): number {
  const { slow, rest, fast, wanted, end } = slider(fork.pressure)
  const differences = [
    largest(
      slow.points.map(({ force }) => force),
      peers.slider.slow,
    ),
    largest(
      fast.points.map(({ force }) => force),
      peers.slider.fast,
    ),
    largest([rest.stroke, rest.low, rest.high], peers.slider.rest),
    largest([wanted.pressure, end], [peers.slider.pressure, peers.slider.end]),
  ]
  counts.slice(0, 2).forEach((count, index) => {
    const ours = loads(count).map((load) => oneSag(load))
    differences.push(
      largest(ours, peers.brentq[index]?.strokes ?? []),
      largest(ours, peers.newton[index]?.strokes ?? []),
    )
  })
  const most = Math.max(...differences)
  if (!(most <= allowed)) throw new Error(`engine and peers differ by ${most}; nothing is timed against a wrong answer`)
  return most
}
