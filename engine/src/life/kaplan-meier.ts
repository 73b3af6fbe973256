import { type Life, stopAtLives, z90 } from './lives.ts'

export interface Survival {
  /** A time at which some failed [h]. */
  hours: number
  /** Share that runs on. */
  survival: number
  /** 90 %; null where none runs on. */
  low: number | null
  high: number | null
}

/**
 * Share of units that survive, without assuming a distribution: S = Π(1 − failed/at risk) over the times at which some failed.
 *
 * Band S^exp(±1.645·u/ln S), u² = Σ failed/(at risk·(at risk − failed)): Greenwood's variance on ln(−ln S). Lives cut short at
 * the same time as a failure are still at risk there.
 *
 * @param lives  1 … 100 000
 * @returns one row a time with a failure, ascending; before the first the share is 1
 * @throws Refusal naming lives that can't be
 * @source E. L. Kaplan, P. Meier, J. Am. Stat. Assoc. 53 (1958) 457; J. D. Kalbfleisch, R. L. Prentice (1980) for the log-log band
 * @example kaplanMeier([{ hours: 9, failed: true }, { hours: 13, failed: false }])[0].survival // 0.5
 */
export function kaplanMeier(lives: readonly Life[]): Survival[] {
  stopAtLives(lives)
  const all = Float64Array.from(lives, ({ hours }) => hours).sort()
  const failures = Float64Array.from(lives.flatMap(({ hours, failed }) => (failed ? [hours] : []))).sort()
  const curve: Survival[] = []
  let survival = 1
  let variance = 0
  let gone = 0
  let index = 0
  while (index < failures.length) {
    const hours = failures[index] ?? 0
    const before = index
    while (failures[index] === hours) index += 1
    const failed = index - before
    while ((all[gone] ?? hours) < hours) gone += 1
    const atRisk = all.length - gone
    survival *= (atRisk - failed) / atRisk
    if (atRisk === failed) {
      curve.push({ hours, survival: 0, low: null, high: null })
      continue
    }
    variance += failed / (atRisk * (atRisk - failed))
    const wide = (z90 * Math.sqrt(variance)) / Math.abs(Math.log(survival))
    curve.push({ hours, survival, low: survival ** Math.exp(wide), high: survival ** Math.exp(-wide) })
  }
  return curve
}
