/** What may be wrong with a spring, one parameter each, and the spring that would then be there. */

import { legAir, legArea, positiveChamber, ringArea } from '../spring/dimensions.ts'
import type { AirSpring, Spring } from '../spring/spring.ts'
import { stateOfChecked } from '../spring/spring-state.ts'

export type PressFault = 'pressure-off' | 'negative-off' | 'volume-less' | 'volume-more' | 'bath-over' | 'rate-off'
export type HypothesisName = 'as-sheet' | PressFault

/** A parameter and how far it may go: flat inside, nothing outside. */
export interface FaultRange {
  readonly name: PressFault
  /** `1`: a ratio to what the sheet says. */
  readonly unit: '1' | 'm³'
  readonly low: number
  readonly high: number
  /** The value at which there is no fault. */
  readonly sound: number
}

/** Standard deviation of the pressure scale where the pressure itself is in doubt. */
export const pressureOffSd = 0.12

/**
 * Faults a spring can have, each cut where a chamber would close before the last stop. The ranges are an estimate of what a
 * workshop meets, no source.
 *
 * @param spring  as the sheet says
 * @param last    deepest stroke of all presses [m]
 * @returns ranges: `1` a ratio to the sheet, m³ a volume; those of a chamber that has no room left are missing
 * @example faultsOf({ kind: 'coil', rate: 9000, stroke: 0.15 }, 0.12).map(({ name }) => name) // ["rate-off"]
 */
export function faultsOf(spring: Spring, last: number): FaultRange[] {
  const faults: FaultRange[] = []
  if (spring.kind === 'coil') faults.push({ name: 'rate-off', unit: '1', low: 0.7, high: 1.4, sound: 1 })
  else {
    // Seven standard deviations hold all there is of it.
    faults.push({ name: 'pressure-off', unit: '1', low: 1 - 7 * pressureOffSd, high: 1 + 7 * pressureOffSd, sound: 1 })
    const kind = spring.negative?.kind ?? 'port'
    if (kind === 'port' || kind === 'valve') {
      faults.push({ name: 'negative-off', unit: '1', low: 0, high: 1.8, sound: 1 })
    }
    const spare = positiveChamber(spring) - ringArea(spring.bore, spring.positiveShaft ?? 0) * last
    faults.push({ name: 'volume-less', unit: 'm³', low: 0, high: Math.min(60e-6, 0.999 * spare), sound: 0 })
    faults.push({ name: 'volume-more', unit: 'm³', low: 0, high: 40e-6, sound: 0 })
  }
  const { lower } = spring
  if (lower) {
    const spare = Math.min(...lower.legs.map((leg) => legAir(lower, leg) - (legArea(lower, leg) * last) / 0.999))
    faults.push({ name: 'bath-over', unit: 'm³', low: 0, high: Math.min(80e-6, 0.999 * spare), sound: 0 })
  }
  return faults.filter(({ low, high }) => high - low > 1e-9)
}

/** Gauge pressures of the negative and the second chamber scaled with the one gauge that filled them all. */
function scaled(spring: AirSpring, scale: number): AirSpring {
  if (scale === 1) return spring
  const { negative, second } = spring
  return {
    ...spring,
    ...(negative?.kind === 'valve' ? { negative: { ...negative, pressure: negative.pressure * scale } } : {}),
    ...(second ? { second: { ...second, pressure: second.pressure * scale } } : {}),
  }
}

/** The negative chamber filled to a share of what its port, or its own filling, would give at full length. */
function withNegative(spring: AirSpring, pressure: number, ambient: number, share: number): AirSpring {
  const { negative } = stateOfChecked(spring, { pressure, ambient })
  const port = (negative.pressure * negative.at) / negative.volume - ambient
  return { ...spring, negative: { kind: 'valve', pressure: share * port } }
}

/** What stands in the press if a hypothesis holds: a spring and the gauge pressure really in it. */
export interface Supposed {
  readonly spring: Spring
  readonly pressure: number
}

/**
 * The spring of a hypothesis at one press.
 *
 * @param name      hypothesis
 * @param value     its parameter, in its range
 * @param scale     what is really there ÷ what the gauge showed
 * @param pressure  what the gauge showed [Pa]
 * @param ambient   air around [Pa]
 * @returns spring and the gauge pressure really in it [Pa]; nothing is checked: a spring that can't be is refused where it
 *          is asked
 * @source ideal gas: a negative chamber off by a share holds that share of what its port would give
 * @example supposedSpring({ kind: 'coil', rate: 9000, stroke: 0.15 }, 'rate-off', 1.1, 1, 0, 101325).spring.rate // 9900
 */
export function supposedSpring(
  spring: Spring,
  name: HypothesisName,
  value: number,
  scale: number,
  pressure: number,
  ambient: number,
): Supposed {
  if (name === 'bath-over' && spring.lower) {
    const legs = spring.lower.legs.map((leg) => ({ ...leg, oil: leg.oil + value }))
    const over: Spring = { ...spring, lower: { ...spring.lower, legs } }
    return over.kind === 'air'
      ? { spring: scaled(over, scale), pressure: pressure * scale }
      : { spring: over, pressure }
  }
  if (spring.kind === 'coil') {
    return { spring: name === 'rate-off' ? { ...spring, rate: spring.rate * value } : spring, pressure }
  }
  const there = pressure * scale
  const filled = scaled(spring, scale)
  if (name === 'volume-less')
    return { spring: { ...filled, positiveVolume: filled.positiveVolume - value }, pressure: there }
  if (name === 'volume-more')
    return { spring: { ...filled, positiveVolume: filled.positiveVolume + value }, pressure: there }
  if (name === 'negative-off') return { spring: withNegative(filled, there, ambient, value), pressure: there }
  return { spring: filled, pressure: there }
}
