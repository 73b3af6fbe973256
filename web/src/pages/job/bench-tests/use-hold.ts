/** How long a stop of the press has been held, by this station's own clock. */
import { useEffect, useState } from 'react'

export interface Hold {
  /** Seconds since it began; null while nothing is held. */
  held: number | null
  begin: () => void
}

/** `of` names the stop: another one begins without a hold. */
export function useHold(of: string): Hold {
  const [begun, setBegun] = useState<{ of: string; at: number } | null>(null)
  const [now, setNow] = useState(0)
  const from = begun?.of === of ? begun.at : null
  useEffect(() => {
    if (from === null) return
    const tick = setInterval(() => setNow(performance.now()), 200)
    return () => clearInterval(tick)
  }, [from])
  return {
    held: from === null ? null : Math.max(0, (Math.max(now, from) - from) / 1000),
    begin() {
      const at = performance.now()
      setNow(at)
      setBegun({ of, at })
    },
  }
}
