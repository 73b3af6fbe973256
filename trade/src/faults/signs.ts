/** Signs of faults: who sees them, on what, and how often without any of the causes. One technician's estimate. */
import type { FaultSign } from '@legwork/engine'
import { air, coil, forks, shocks } from './unit-kinds.ts'

/** The rider tells of it, the bench looks for it, or it shows when the unit is apart. */
export type SeenBy = 'rider' | 'bench' | 'strip'

interface SeenSign extends FaultSign {
  readonly seenBy: readonly SeenBy[]
}

export const faultSigns = [
  { id: 'S01', seenBy: ['rider'], kinds: air, leak: 0.02 },
  { id: 'S02', seenBy: ['rider'], kinds: air, leak: 0.06 },
  { id: 'S03', seenBy: ['rider', 'bench'], leak: 0.01 },
  { id: 'S04', seenBy: ['rider', 'bench'], leak: 0.04 },
  { id: 'S05', seenBy: ['rider'], leak: 0.08 },
  { id: 'S06', seenBy: ['bench'], leak: 0.06 },
  { id: 'S07', seenBy: ['rider'], leak: 0.03 },
  { id: 'S08', seenBy: ['rider', 'bench'], leak: 0.06 },
  { id: 'S09', seenBy: ['rider', 'bench'], leak: 0.02 },
  { id: 'S10', seenBy: ['rider', 'bench'], leak: 0.03 },
  { id: 'S11', seenBy: ['rider', 'bench'], leak: 0.03 },
  { id: 'S12', seenBy: ['rider'], leak: 0.03 },
  { id: 'S13', seenBy: ['rider', 'bench'], leak: 0.02 },
  { id: 'S14', seenBy: ['rider', 'bench'], leak: 0.04 },
  { id: 'S15', seenBy: ['rider', 'bench'], leak: 0.05 },
  { id: 'S16', seenBy: ['rider', 'bench'], leak: 0.05 },
  { id: 'S17', seenBy: ['bench'], kinds: forks, leak: 0.01 },
  { id: 'S18', seenBy: ['rider', 'bench'], kinds: shocks, leak: 0.01 },
  { id: 'S19', seenBy: ['rider', 'bench'], kinds: forks, leak: 0.02 },
  { id: 'S20', seenBy: ['rider', 'bench'], kinds: forks, leak: 0.03 },
  { id: 'S21', seenBy: ['rider'], leak: 0.05 },
  { id: 'S22', seenBy: ['rider'], leak: 0.05 },
  { id: 'S23', seenBy: ['bench'], leak: 0.01 },
  { id: 'S24', seenBy: ['bench'], kinds: forks, leak: 0.01 },
  { id: 'S25', seenBy: ['rider', 'bench'], leak: 0.01 },
  { id: 'S26', seenBy: ['bench'], leak: 0.02 },
  { id: 'S27', seenBy: ['strip'], leak: 0.1 },
  { id: 'S28', seenBy: ['strip'], kinds: forks, leak: 0.05 },
  { id: 'S29', seenBy: ['strip'], kinds: forks, leak: 0.02 },
  { id: 'S30', seenBy: ['bench', 'strip'], kinds: air, leak: 0.02 },
  { id: 'S31', seenBy: ['rider', 'bench'], kinds: air, leak: 0.01 },
  { id: 'S32', seenBy: ['bench'], kinds: forks, leak: 0.08 },
  { id: 'S33', seenBy: ['bench'], kinds: forks, leak: 0.01 },
  { id: 'S34', seenBy: ['rider', 'bench'], kinds: coil, leak: 0.02 },
  { id: 'S35', seenBy: ['rider'], leak: 0.1 },
  { id: 'S36', seenBy: ['strip'], kinds: forks, leak: 0.02 },
] as const satisfies readonly SeenSign[]

export type SignId = (typeof faultSigns)[number]['id']
