/** How a rest stands on this station, moving on while somebody looks. */
import { type Rest, restNow } from '@legwork/trade'
import { useEffect, useState } from 'react'
import { useStation, useStationStatus } from './hooks.tsx'

const often = 5000

/** Minutes left, 0 where it is over; null where no clock here can tell and it is waited for again. */
export function useRest(rest: Rest | undefined): number | null {
  const station = useStation()
  // With the line to the server its receipts tell, also over a page that was loaded again.
  useStationStatus()
  const [, redraw] = useState(0)
  useEffect(() => {
    const timer = setInterval(() => redraw((count) => count + 1), often)
    return () => clearInterval(timer)
  }, [])
  return rest ? restNow(rest, station.moment(), station.offline) : 0
}
