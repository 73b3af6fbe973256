/** What it could be: loaded on its own, so that a job opens without waiting for the calculations. */
import { lazy, Suspense } from 'react'

const RankedFaults = lazy(() => import('./ranked-faults.tsx').then((part) => ({ default: part.RankedFaults })))

export function FaultRanking() {
  return (
    <Suspense fallback={null}>
      <RankedFaults />
    </Suspense>
  )
}
