/** A diagnosis as a technician reads it: words instead of decimals, what points where, what a service cures anyway. */
import type { Diagnosis, NextTest } from '@legwork/engine'
import type { ServiceId } from '../procedures/procedures.ts'
import { faultCauses } from './causes.ts'
import type { JobEvidence } from './evidence-of-job.ts'
import { faultNetwork } from './fault-network.ts'
import type { FaultGroup } from './group-factors.ts'

export type Likelihood = 'likely' | 'possible' | 'unlikely'

export interface ListedFault {
  readonly fault: string
  readonly likelihood: Likelihood
  /** Signs and tests that speak for it, the strongest first. */
  readonly signs: readonly string[]
  /** A service that renews the part in any case. */
  readonly curedBy: ServiceId | null
  readonly safety: boolean
}

/** Faults that a service mends whether anybody looks for them or not (common practice, no source). */
const cures: Readonly<Record<ServiceId, readonly string[]>> = {
  'lower-legs': ['C01', 'C02', 'C03', 'C04', 'C32', 'C48'],
  'air-spring': ['C05', 'C06', 'C08', 'C09', 'C10'],
}
const services = Object.keys(cures) as readonly ServiceId[] // The keys of the table above.

export function curedBy(fault: string): ServiceId | null {
  return services.find((service) => cures[service].includes(fault)) ?? null
}

/** The estimates bear words, not decimals (one technician's estimate). */
export function likelihood(posterior: number): Likelihood {
  if (posterior >= 0.5) return 'likely'
  return posterior >= 0.15 ? 'possible' : 'unlikely'
}

/** By how much a finding points at a fault. */
function linkOf(fault: string, finding: string): number {
  const sign = faultNetwork.causes.find(({ id }) => id === fault)?.links[finding]
  return sign ?? faultNetwork.tests.find(({ id }) => id === finding)?.links[fault] ?? 0
}

/** Whether somebody may be hurt by it. */
export function isSafety(fault: string): boolean {
  return faultNetwork.causes.find(({ id }) => id === fault)?.safety ?? false
}

/** What kind of thing a fault is; one not listed is nobody's. */
export function groupOf(fault: string): FaultGroup {
  return faultCauses.find(({ id }) => id === fault)?.group ?? 'not-the-unit'
}

/** Spoken for by the findings, not merely frequent. */
const spokenFor = 1.05

/** The list in the order it is read. */
export interface FaultList {
  /** Each with what points at it. */
  readonly open: readonly ListedFault[]
  /** Named only. */
  readonly unlikely: readonly ListedFault[]
  /** A service mends them whether or not anybody looks. */
  readonly cured: readonly ListedFault[]
}

/**
 * The faults that findings speak for, each group by what they say of it. One that may hurt somebody is listed open as soon as
 * anything points at it.
 */
export function faultList({ ranking }: Pick<Diagnosis, 'ranking'>, { present }: JobEvidence): FaultList {
  const listed = ranking.flatMap(({ fault, posterior, gain }): ListedFault[] => {
    const safety = isSafety(fault)
    if ((gain ?? Number.POSITIVE_INFINITY) <= spokenFor || posterior < (safety ? 0.02 : 0.1)) return []
    const signs = present.filter((id) => linkOf(fault, id) > 0)
    signs.sort((one, other) => linkOf(fault, other) - linkOf(fault, one))
    return [{ fault, likelihood: likelihood(posterior), signs, curedBy: curedBy(fault), safety }]
  })
  const named = (one: ListedFault) => one.likelihood === 'unlikely' && !one.safety
  const open = listed.filter((one) => one.curedBy === null)
  return {
    open: open.filter((one) => !named(one)).slice(0, 4),
    unlikely: open.filter(named).slice(0, 3),
    cured: listed.filter((one) => one.curedBy !== null).slice(0, 4),
  }
}

/** The next test worth its minutes: not one that tells only of what a service cures anyway. */
export function nextTestOf({ nextTests }: Pick<Diagnosis, 'nextTests'>): NextTest | null {
  return nextTests.find(({ safety, because }) => safety || because.some((fault) => curedBy(fault) === null)) ?? null
}
