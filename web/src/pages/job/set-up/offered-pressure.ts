/** The pressure that the form of the setting offers: the newest that was written or taken. Pure. */
import type { JobState } from '@legwork/trade'

/** A pressure that measured sag asks for, taken over but not yet written. */
export interface Taken {
  /** [Pa gauge] */
  pressure: number
  /** The start pressure that stood then: a newer one goes before what was taken. */
  over: string | null
  /** Counts how often one was taken: taking the same again goes before what was typed since. */
  count: number
}

export interface Offered {
  /** What it comes from: what was typed over it holds as long as this stays. */
  source: string
  /** [Pa gauge]; null where nothing was written yet. */
  pressure: number | null
}

type Written = Pick<JobState, 'setUp' | 'setting'>

/** One more press on "Use …". */
export const take = (pressure: number, { setUp }: Pick<Written, 'setUp'>, before: Taken | null): Taken => ({
  pressure,
  over: setUp?.entry ?? null,
  count: (before?.count ?? 0) + 1,
})

/** What was taken over the start pressure that still stands; else the later of setting and start pressure. */
export function offeredPressure({ setUp, setting }: Written, taken: Taken | null): Offered {
  const start = setUp?.entry ?? null
  if (taken && taken.over === start) return { source: `${start}, taken ${taken.count}`, pressure: taken.pressure }
  const later = setUp && setting && setUp.at > setting.at ? setUp : (setting ?? setUp)
  return { source: `${start}`, pressure: later?.pressure ?? null }
}
