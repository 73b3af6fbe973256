import { type Kelvin, type Metre, type Newton, type Pascal, standardAtmospherePressure } from '../quantities/si.ts'
import { ambientWithin, type Found, refuse, stopAt, temperatureWithin, within } from '../refusal/found.ts'
import { sag } from '../sag/sag.ts'
import { checkConditions } from '../spring/check-conditions.ts'
import { largestPressure } from '../spring/check-gas.ts'
import type { AirSpring, LowerAir, Spring } from '../spring/spring.ts'
import { standardAir } from './atmosphere.ts'

/** A place: its temperature, and its air pressure or altitude. */
export type Place =
  | { readonly temperature: Kelvin; readonly altitude: Metre }
  | { readonly temperature: Kelvin; readonly ambient: Pascal }

export interface ShiftQuestion {
  /** Gauge at full length at `from`; a coil needs none. */
  readonly pressure?: Pascal
  readonly load?: Newton
  readonly from: Place
  readonly to: Place
}

export interface Shift {
  /** Gauge there, at full length; only of an air spring. */
  pressure?: Pascal
  /** Sag at `from` and at `to`; only where a load is given. */
  strokeHere?: Metre
  strokeThere?: Metre
  /** The pressure there passes the largest of the sheet. */
  overMaximum: boolean
}

function checkPlace(found: Found, name: string, place: Place): Found {
  const checked = temperatureWithin(found, `${name}.`, 'temperature', place.temperature)
  if ('ambient' in place && place.ambient !== undefined)
    return ambientWithin(checked, `${name}.`, 'ambient', place.ambient)
  if ('altitude' in place && place.altitude >= -1000 && place.altitude <= 11_000) return checked
  const came = 'altitude' in place ? `${place.altitude} m` : 'neither altitude nor ambient'
  return refuse(
    checked,
    `${name}.altitude`,
    'out-of-range',
    came,
    'from -1000 m to 11000 m',
    'Give the altitude, or ambient from a barometer.',
  )
}

function ambientOf(place: Place): Pascal {
  return 'ambient' in place && place.ambient !== undefined
    ? place.ambient
    : standardAir('altitude' in place ? place.altitude : 0).ambient
}

/**
 * The gauge of closed air that is carried elsewhere: (pressure + ambient)·T₂/T₁ − ambient there.
 *
 * @param carried  gauge here [Pa]; temperature [K] and ambient [Pa, absolute; 101,325 by default] of both places
 * @returns gauge there [Pa]; below 0 where there is less than the air around
 * @throws Refusal naming every field that can't be
 * @source ideal gas at constant volume
 * @example gaugeElsewhere({ pressure: 524002, from: { temperature: 294.15 }, to: { temperature: 276.15 } }) // 485736
 */
export function gaugeElsewhere(carried: {
  readonly pressure: Pascal
  readonly from: { readonly temperature: Kelvin; readonly ambient?: Pascal }
  readonly to: { readonly temperature: Kelvin; readonly ambient?: Pascal }
}): Pascal {
  const { pressure, from, to } = carried
  const here = from.ambient ?? standardAtmospherePressure
  const there = to.ambient ?? standardAtmospherePressure
  let found = within(null, '', 'pressure', pressure, 'pressure', 0, largestPressure, 'Give what the gauge shows here.')
  found = temperatureWithin(found, 'from.', 'temperature', from.temperature)
  found = temperatureWithin(found, 'to.', 'temperature', to.temperature)
  stopAt(ambientWithin(ambientWithin(found, 'from.', 'ambient', here), 'to.', 'ambient', there))
  return ((pressure + here) * to.temperature) / from.temperature - there
}

/** The same lower legs as they were closed, warmed or cooled. */
function lowerThere(lower: LowerAir, here: Pascal, warmer: number): LowerAir {
  return { ...lower, closedAt: (lower.closedAt ?? here) * warmer }
}

/**
 * The same spring carried elsewhere: the absolute pressure of every closed gas goes with the temperature, its gauge with
 * the air around. The main chamber's gauge is carried by `gaugeElsewhere`.
 *
 * @param spring  dimensions, as closed at `here`
 * @param here    ambient [Pa, absolute]; `there` likewise; warmer T₂/T₁ [-]; all as checked where they came in
 * @returns dimensions there: gauge pressures of negative valve, second chamber and damper gas, the legs' closing pressure [Pa]
 * @source ideal gas at constant volume
 * @example springElsewhere({ kind: 'coil', rate: 9000, stroke: 0.15 }, 101325, 79495, 0.97).stroke // 0.15
 */
export function springElsewhere<S extends Spring>(spring: S, here: Pascal, there: Pascal, warmer: number): S
export function springElsewhere(spring: Spring, here: Pascal, there: Pascal, warmer: number): Spring {
  const gauge = (pressure: Pascal) => Math.max(0, (pressure + here) * warmer - there)
  const around = {
    ...(spring.lower ? { lower: lowerThere(spring.lower, here, warmer) } : {}),
    ...(spring.damperGas ? { damperGas: { ...spring.damperGas, pressure: gauge(spring.damperGas.pressure) } } : {}),
  }
  if (spring.kind === 'coil') return { ...spring, ...around }
  const { negative, second } = spring
  const air: AirSpring = {
    ...spring,
    ...around,
    ...(negative?.kind === 'valve' ? { negative: { kind: 'valve', pressure: gauge(negative.pressure) } } : {}),
    ...(second ? { second: { ...second, pressure: gauge(second.pressure) } } : {}),
  }
  return air
}

/**
 * Set here, ridden there: at full length the absolute pressure of every closed gas goes with temperature, p₂ = p₁·T₂/T₁;
 * its gauge follows the air around.
 *
 * @param spring    dimensions
 * @param question  gauge pressure here [Pa], load [N] if sags are wanted, both places (temperature [K]; altitude [m] or ambient [Pa, absolute])
 * @returns gauge pressure there [Pa], both sags [m], whether `maxPressure` is passed
 * @throws Refusal naming every field that can't be
 * @source ideal gas at constant volume; ISO 2533 for altitudes
 * @example ambientShift({ kind: 'air', bore: 0.031, shaft: 0.01, stroke: 0.13, positiveVolume: 0.000179, negativeVolume: 0.0000245 }, { pressure: 524002, from: { temperature: 294.15, altitude: 0 }, to: { temperature: 276.15, altitude: 0 } }).pressure // 485736
 */
export function ambientShift(spring: Spring, question: ShiftQuestion): Shift {
  const { from, to, load, pressure } = question
  stopAt(checkPlace(checkPlace(null, 'from', from), 'to', to))
  const here = ambientOf(from)
  const there = ambientOf(to)
  const warmer = to.temperature / from.temperature
  const conditionsHere = { ...(pressure === undefined ? {} : { pressure }), ambient: here }
  checkConditions(spring, conditionsHere, 'spring.')
  const shift: Shift = { overMaximum: false }
  let conditionsThere: { ambient: Pascal; pressure?: Pascal } = { ambient: there }
  if (spring.kind === 'air' && pressure !== undefined) {
    shift.pressure = (pressure + here) * warmer - there
    shift.overMaximum = spring.maxPressure !== undefined && shift.pressure > spring.maxPressure
    conditionsThere = { ambient: there, pressure: Math.max(0, shift.pressure) }
  }
  if (load !== undefined) {
    shift.strokeHere = sag(spring, { ...conditionsHere, load }).stroke
    shift.strokeThere = sag(springElsewhere(spring, here, there, warmer), { ...conditionsThere, load }).stroke
  }
  return shift
}
