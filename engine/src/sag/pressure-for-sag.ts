import { brent } from '../numerics/brent.ts'
import { figure } from '../quantities/kinds.ts'
import { type Metre, type Newton, type Pascal, standardAtmospherePressure } from '../quantities/si.ts'
import { ambientWithin, refuseOne, stopAt, within } from '../refusal/found.ts'
import { largestPressure } from '../spring/check-gas.ts'
import { checkSpring } from '../spring/check-spring.ts'
import { fullStroke } from '../spring/dimensions.ts'
import type { AirSpring, Spring } from '../spring/spring.ts'
import { force } from '../spring/spring-force.ts'
import { stateOfChecked } from '../spring/spring-state.ts'
import { loadWithin, sag } from './sag.ts'

export interface PressureQuestion {
  readonly load: Newton
  /** Fraction of the nominal stroke. */
  readonly sag: number
  readonly ambient?: Pascal
}

export interface PressureForSag {
  /** Gauge at full length. */
  pressure: Pascal
  stroke: Metre
}

/** Slow force at a stroke as a function of the filled pressure. */
function forceFilledTo(spring: AirSpring, pressure: number, ambient: number, stroke: number): number {
  return force(stateOfChecked(spring, { pressure, ambient }), stroke)
}

/** Gauge pressure whose slow force at `stroke` is `load`; null where none in the range gives it. */
function pressureHolding(spring: AirSpring, load: number, ambient: number, stroke: number): number | null {
  const highest = spring.second ? spring.second.pressure : largestPressure
  const atNone = forceFilledTo(spring, 0, ambient, stroke)
  const atHighest = forceFilledTo(spring, highest, ambient, stroke)
  if (!(atHighest > atNone) || load < atNone || load > atHighest) return null
  // Without a second chamber every gas pressure is proportional to the filling, so the force is a straight line of it.
  if (!spring.second) return (highest * (load - atNone)) / (atHighest - atNone)
  return brent((pressure) => forceFilledTo(spring, pressure, ambient, stroke) - load, 0, highest, 1e-3)
}

/** The stroke of a wanted sag, or a refusal: it must lie before the end. */
export function strokeOfSag(spring: Spring, fraction: number): Metre {
  const stroke = fraction * spring.stroke
  const end = fullStroke(spring)
  if (stroke > end) {
    const allowed = `at most where the stroke ends (${figure(end / spring.stroke, 'fraction')})`
    refuseOne('sag', 'beyond-end', figure(fraction, 'fraction'), allowed, 'Check the oil in the lower legs.')
  }
  return stroke
}

/**
 * Pressure that gives a wanted sag: the filling whose slow force at sag·stroke equals the load.
 *
 * @param spring    an air spring
 * @param question  load [N], sag as a fraction of the nominal stroke, air around
 * @returns gauge pressure at full length [Pa], the stroke [m]
 * @throws Refusal: a coil, a load no pressure from 0 up can hold there, or an answer above `maxPressure` (then with the sag that gives)
 * @source force balance at rest, ideal gas, isothermal
 * @example pressureForSag({ kind: 'air', bore: 0.032, shaft: 0.01, stroke: 0.15, positiveVolume: 0.000197, negativeVolume: 0.000031, equalisingStroke: 0.0025 }, { load: 351, sag: 0.2 }).pressure // 678034
 */
export function pressureForSag(spring: Spring, question: PressureQuestion): PressureForSag {
  if (spring.kind === 'coil') {
    refuseOne('spring.kind', 'coil-has-no-pressure', 'coil', 'air', 'For a coil, ask coil-rate for the rate.')
  }
  const ambient = question.ambient ?? standardAtmospherePressure
  let found = checkSpring(null, spring, 'spring.')
  found = loadWithin(found, 'load', question.load)
  found = within(
    found,
    '',
    'sag',
    question.sag,
    'fraction',
    0.01,
    0.95,
    'Give the sag as a share of the stroke, like "20 %".',
  )
  found = ambientWithin(found, '', 'ambient', ambient)
  stopAt(found)
  const stroke = strokeOfSag(spring, question.sag)
  const pressure = pressureHolding(spring, question.load, ambient, stroke)
  if (pressure === null) {
    const least = forceFilledTo(spring, 0, ambient, stroke)
    const most = forceFilledTo(spring, spring.second?.pressure ?? largestPressure, ambient, stroke)
    const allowed =
      most > least
        ? `a load that air can hold at that sag (${figure(least, 'force')} with no pressure, ${figure(most, 'force')} at most)`
        : 'a load at a sag where more pressure holds more'
    refuseOne('load', 'no-answer', figure(question.load, 'force'), allowed, 'Check load, sag and the spring.')
  }
  if (spring.maxPressure !== undefined && pressure > spring.maxPressure) {
    const there = sag(spring, { pressure: spring.maxPressure, load: question.load, ambient })
    const allowed = `a sag that needs no more than spring.maxPressure (${figure(spring.maxPressure, 'pressure')})`
    const next = `That pressure gives ${figure(there.fraction, 'fraction')}; this sag would need ${figure(pressure, 'pressure')}.`
    refuseOne('sag', 'above-maximum', figure(question.sag, 'fraction'), allowed, next)
  }
  return { pressure, stroke }
}
