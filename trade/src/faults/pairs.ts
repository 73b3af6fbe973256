/**
 * A sign and a test that are nearly one observation: of both, the test counts. S10, S11 and S12 are so only where they were
 * judged on the bench; who judged is not always known, so they count once too, which can't make anybody surer than he is.
 */
import type { FaultPair } from '@legwork/engine'

export const faultPairs: readonly FaultPair[] = [
  { sign: 'S10', test: 'T18' },
  { sign: 'S11', test: 'T18' },
  { sign: 'S12', test: 'T19' },
  { sign: 'S13', test: 'T21' },
  { sign: 'S23', test: 'T14' },
  { sign: 'S24', test: 'T14' },
  { sign: 'S25', test: 'T22' },
  { sign: 'S26', test: 'T20' },
  { sign: 'S27', test: 'T17' },
  { sign: 'S28', test: 'T15' },
  { sign: 'S29', test: 'T17' },
  { sign: 'S32', test: 'T07' },
  { sign: 'S36', test: 'T16' },
]
