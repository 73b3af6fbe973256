/** One question after another put to the same fork: other spacers, more bath oil, another place. Pure. */
import {
  type AirSpring,
  fullStroke,
  gaugeElsewhere,
  type PreparedSpring,
  prepareSpring,
  Refusal,
  type Sag,
  sag,
  springElsewhere,
  standardAir,
} from '@legwork/engine'
import type { Sheet } from '@legwork/trade'
import { airSpringOf } from '../start-pressure.ts'

/** A place by its altitude [m] and temperature [K]. */
export interface Place {
  altitude: number
  temperature: number
}

/** What is changed against the setting. */
export interface WhatIf {
  spacers: number
  /** More bath oil than the sheet's, each leg [m³]. */
  oilMore: number
  there: Place
}

/** A spring filled and standing somewhere: all that a curve or a sag needs. */
export interface Standing {
  spring: AirSpring
  /** Gauge there, at full length [Pa]. */
  pressure: number
  /** [Pa, absolute] */
  ambient: number
}

/** Where the bench stands unless somebody says otherwise: sea level, 20 °C. */
export const bench: Place = { altitude: 0, temperature: 293.15 }

/** The spring with its bath oil changed, each leg by as much; never below nothing. */
export function withMoreOil(spring: AirSpring, more: number): AirSpring {
  if (!spring.lower || more === 0) return spring
  const legs = spring.lower.legs.map((leg) => ({ ...leg, oil: Math.max(0, leg.oil + more) }))
  return { ...spring, lower: { ...spring.lower, legs } }
}

/**
 * The fork as it would stand: filled on the bench to the same gauge with those spacers and that oil, carried to the place.
 *
 * @param pressure  gauge on the bench [Pa]
 */
export function standing(sheet: Sheet, pressure: number, { spacers, oilMore, there }: WhatIf): Standing {
  const filled = withMoreOil(airSpringOf(sheet, spacers), oilMore)
  const here = standardAir(bench.altitude).ambient
  const { ambient } = standardAir(there.altitude)
  if (there.altitude === bench.altitude && there.temperature === bench.temperature)
    return { spring: filled, pressure, ambient }
  const warmer = there.temperature / bench.temperature
  const spring = springElsewhere(filled, here, ambient, warmer)
  const from = { temperature: bench.temperature, ambient: here }
  const gauge = gaugeElsewhere({ pressure, from, to: { temperature: there.temperature, ambient } })
  return { spring, pressure: Math.max(0, gauge), ambient }
}

/** What one standing comes to under a load. */
export interface Outcome {
  sag: Sag
  /** Fast from the sag, at nine tenths of where it ends [N]. */
  endForce: number
  /** Where it ends [m]. */
  fullStroke: number
  pressure: number
}

export const fastExponent = 1.3
export const nearEnd = 0.9

/** Where a load rests; friction [N] leaves it anywhere between low and high. */
export const sagOf = ({ spring, pressure, ambient }: Standing, load: number, friction: number): Sag =>
  sag(spring, { pressure, load, friction, ambient })

/** The sag under a load, and what a fast hit from it meets near the end. */
export function outcomeOf({ spring, pressure, ambient }: Standing, load: number): Outcome {
  const rests = sag(spring, { pressure, load, ambient })
  const end = fullStroke(spring)
  const fast: PreparedSpring = prepareSpring(spring, pressure, {
    ambient,
    exponent: fastExponent,
    startStroke: Math.min(rests.stroke, end),
  })
  return { sag: rests, endForce: fast.force(nearEnd * end), fullStroke: end, pressure }
}

/** A what-if worked out under a load. */
export interface Answered {
  standing: Standing
  outcome: Outcome
  /** With the friction that may hold it, where `outcome.sag` has none. */
  sag: Sag
}

/**
 * What was asked, worked out; or why this fork can't be so, as with more spacers than its chamber has room for.
 *
 * @param pressure  gauge on the bench [Pa]
 * @param on        along the leg, and what friction may hold of it [N]
 */
export function answered(
  sheet: Sheet,
  pressure: number,
  asked: WhatIf,
  on: { load: number; friction: number },
): Answered | Refusal {
  try {
    const then = standing(sheet, pressure, asked)
    return { standing: then, outcome: outcomeOf(then, on.load), sag: sagOf(then, on.load, on.friction) }
  } catch (trouble) {
    if (trouble instanceof Refusal) return trouble
    throw trouble
  }
}
