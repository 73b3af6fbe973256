/** Signs, causes and tests of forks and shocks as one network. */
import type { FaultNetwork } from '@legwork/engine'
import { faultCauses } from './causes.ts'
import { faultPairs } from './pairs.ts'
import { faultSigns } from './signs.ts'
import { faultTests } from './tests.ts'

export const faultNetwork: FaultNetwork = {
  signs: faultSigns,
  causes: faultCauses,
  tests: faultTests,
  pairs: faultPairs,
}
