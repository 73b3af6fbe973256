/** What happened to a unit before it came: as somebody said it, else as the shop's own book has it. */
import { intervals } from '../due/intervals.ts'
import type { JobState } from '../journal/job-state.ts'
import type { UnitKind } from '../sheets/sheet.ts'
import type { FaultGroup, KnownBeforehand } from './group-factors.ts'

export const historyItems = ['crashed', 'second-hand', 'serviced-lately', 'hours-since'] as const
export type HistoryItem = (typeof historyItems)[number]

export interface Known<Value> {
  value: Value
  /** Said for this job, or worked out from the book. */
  from: 'said' | 'book'
}

/** What is not known is null: it shifts nothing. */
export interface KnownHistory {
  readonly crashed: Known<boolean> | null
  readonly 'second-hand': Known<boolean> | null
  readonly 'serviced-lately': Known<boolean> | null
  /** [h] */
  readonly 'hours-since': Known<number> | null
}

/** The last service of the unit here. */
export interface LastHere {
  /** Ridden since, as the rider reckons it [h]; null where nobody knows. */
  readonly hours: number | null
  /** Days since. */
  readonly days: number
}

const lately = 60

type Said = JobState['history'][number]

/**
 * What is known. The last word on each counts, 'cannot tell' too; where nothing was said, the book's own. A service here that
 * is longer ago says nothing of somebody else's since.
 *
 * @example knownHistory([], { hours: 18, days: 30 })['serviced-lately'] // { value: true, from: 'book' }
 */
export function knownHistory(history: readonly Said[], last: LastHere | null): KnownHistory {
  const said = (what: HistoryItem): Said | undefined => history.findLast((one) => one.what === what)
  const yesOrNo = (what: 'crashed' | 'second-hand' | 'serviced-lately', book: boolean | null) => {
    const word = said(what)
    if (word) return typeof word.value === 'boolean' ? { value: word.value, from: 'said' as const } : null
    return book === null ? null : { value: book, from: 'book' as const }
  }
  const hours = said('hours-since')
  const byBook = last?.hours ?? null
  return {
    crashed: yesOrNo('crashed', null),
    'second-hand': yesOrNo('second-hand', null),
    'serviced-lately': yesOrNo('serviced-lately', last && last.days <= lately ? true : null),
    'hours-since': hours
      ? typeof hours.value === 'number'
        ? { value: hours.value, from: 'said' }
        : null
      : byBook === null
        ? null
        : { value: byBook, from: 'book' },
  }
}

/**
 * The interval that hours are held against [h]: the middle of what is usual for the service that wears soonest (common
 * practice, no source).
 */
export function intervalOf(kind: UnitKind): number {
  const { low, high } = intervals[kind === 'shock-air' ? 'shock-sleeve' : kind === 'shock-coil' ? 'coil' : 'lower-legs']
  return (low + high) / 2
}

/**
 * As the fault network takes it.
 *
 * @example beforehandOf({ ...knownHistory([], { hours: 90, days: 400 }) }, 'fork-air') // { hoursOverInterval: 2 }
 */
export function beforehandOf(known: KnownHistory, kind: UnitKind): KnownBeforehand {
  const hours = known['hours-since']
  return {
    ...(hours ? { hoursOverInterval: hours.value / intervalOf(kind) } : {}),
    ...(known['serviced-lately']?.value ? { servicedWithinDays: 0 } : {}),
    ...(known['second-hand'] ? { secondHand: known['second-hand'].value } : {}),
    ...(known.crashed ? { crashed: known.crashed.value } : {}),
  }
}

/** What of it speaks for a group of causes: by each alone, its factor is above 1. */
export function speakingFor(group: FaultGroup, known: KnownHistory, kind: UnitKind): readonly HistoryItem[] {
  const yes = (what: 'crashed' | 'second-hand' | 'serviced-lately') => known[what]?.value === true
  const late = (known['hours-since']?.value ?? 0) >= 2 * intervalOf(kind)
  const speaks: Record<FaultGroup, readonly (HistoryItem | false)[]> = {
    wear: [late && 'hours-since'],
    damage: [yes('crashed') && 'crashed'],
    assembly: [yes('serviced-lately') && 'serviced-lately', yes('second-hand') && 'second-hand'],
    'set-up': [yes('second-hand') && 'second-hand'],
    'not-the-unit': [],
  }
  return speaks[group].filter((item) => item !== false)
}
