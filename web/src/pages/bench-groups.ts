/** Which heading of the Bench a job stands under. */
import type { JobStanding } from '@legwork/trade'

export const benchGroups = ['on-the-bench', 'waits', 'to-collect', 'booked'] as const
export type BenchGroup = (typeof benchGroups)[number]

const groupOf: Partial<Record<JobStanding, BenchGroup>> = {
  in: 'on-the-bench',
  'under-way': 'on-the-bench',
  waiting: 'waits',
  stopped: 'waits',
  ready: 'to-collect',
  booked: 'booked',
}

/** Null: it has left the bench. */
export const benchGroupOf = (state: JobStanding): BenchGroup | null => groupOf[state] ?? null
