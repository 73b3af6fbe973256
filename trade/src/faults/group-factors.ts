import { Refusal } from '@legwork/engine'

/** What is known of a unit beforehand, as factors on the prior odds of groups of causes. One technician's estimate. */
export type FaultGroup = 'wear' | 'set-up' | 'assembly' | 'damage' | 'not-the-unit'

export interface KnownBeforehand {
  /** Hours since the service over the interval [-]. */
  readonly hoursOverInterval?: number
  /** Days since somebody serviced it; more than 60 say nothing. */
  readonly servicedWithinDays?: number
  readonly secondHand?: boolean
  readonly crashed?: boolean
}

function wearByHours(ratio: number): number {
  if (ratio < 1) return 0.5
  if (ratio < 2) return 1
  return ratio < 4 ? 2 : 3.5
}

function notBelowZero(field: string, value: number | undefined, next: string): void {
  if (value === undefined || (value >= 0 && Number.isFinite(value))) return
  throw new Refusal([{ field, code: 'out-of-range', came: String(value), allowed: '0 or more', next }])
}

/**
 * Factors of each group; those of one group multiply.
 *
 * @throws Refusal naming the field below 0
 * @source one technician's estimate
 * @example groupFactors({ crashed: true }).damage // 4
 */
export function groupFactors(known: KnownBeforehand): Record<FaultGroup, number> {
  const { hoursOverInterval, servicedWithinDays, secondHand = false, crashed = false } = known
  notBelowZero('factors.hoursOverInterval', hoursOverInterval, 'Give hours since the service over the interval.')
  notBelowZero('factors.servicedWithinDays', servicedWithinDays, 'Give the days since it was serviced.')
  const serviced = servicedWithinDays !== undefined && servicedWithinDays <= 60
  const late = hoursOverInterval === undefined ? 1 : wearByHours(hoursOverInterval)
  return {
    wear: late * (serviced ? 0.5 : 1),
    'set-up': secondHand ? 2 : 1,
    assembly: (serviced ? 4 : 1) * (secondHand ? 2 : 1),
    damage: crashed ? 4 : 1,
    'not-the-unit': 1,
  }
}
