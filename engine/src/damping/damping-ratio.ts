import type { Kilogram, NewtonPerMetre, NewtonSecondPerMetre } from '../quantities/si.ts'
import { stopAt, within } from '../refusal/found.ts'
import { dampingWithin } from './return-time.ts'

export interface RatioQuestion {
  readonly damping: NewtonSecondPerMetre
  /** Slope of the spring where the leg works. */
  readonly rate: NewtonPerMetre
  /** As the leg feels it: m·sin²(head angle) of a fork, m·leverage² of a shock. */
  readonly mass: Kilogram
}

export interface DampingRatio {
  /** 1 comes back as fast as it can without swinging over. */
  ratio: number
  critical: NewtonSecondPerMetre
}

/**
 * Damping ratio ζ = c/c_crit with c_crit = 2·√(rate·mass).
 *
 * Targets, common practice, no source: fork 0.6–1.0, start at 0.8; shock 0.5–0.8, start at 0.65.
 *
 * @param question  damping c [N·s/m], rate [N/m], mass [kg]
 * @returns ratio, critical [N·s/m]
 * @throws Refusal naming every field that can't be
 * @source Rao, Mechanical Vibrations, 2.6
 * @example dampingRatio({ damping: 40, rate: 5400, mass: 8 }).ratio // 0.09623
 */
export function dampingRatio({ damping, rate, mass }: RatioQuestion): DampingRatio {
  let found = dampingWithin(null, 'damping', damping)
  found = within(found, '', 'rate', rate, 'rate', 100, 1e6, 'Take the rate of sag or spring-curve at that stroke.')
  stopAt(within(found, '', 'mass', mass, 'mass', 0.05, 2000, 'Give what moves; a shock feels m·leverage².'))
  const critical = 2 * Math.sqrt(rate * mass)
  return { ratio: damping / critical, critical }
}
