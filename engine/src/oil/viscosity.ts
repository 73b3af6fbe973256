import { figure } from '../quantities/kinds.ts'
import type { Kelvin, SquareMetrePerSecond } from '../quantities/si.ts'
import { refuseOne, stopAt, temperatureWithin, within } from '../refusal/found.ts'
import { viscosityAt100, viscosityGrade, viscosityIndex } from './viscosity-index.ts'
import { checkPoints, type ViscosityPoint, viscosityBetween, viscosityRange } from './viscosity-temperature.ts'

export type ViscosityQuestion = { readonly temperature: Kelvin } & (
  | { readonly points: readonly ViscosityPoint[] }
  | { readonly viscosity40: SquareMetrePerSecond; readonly viscosityIndex: number }
)

export interface OilViscosity {
  viscosity: SquareMetrePerSecond
  /** Null below 2 mm²/s at 100 °C. */
  viscosityIndex: number | null
  /** ISO VG, null between grades. */
  grade: string | null
}

const at40 = 313.15
const at100 = 373.15

function pointsOf(question: ViscosityQuestion): readonly [ViscosityPoint, ViscosityPoint] {
  if ('points' in question) {
    const [one, other] = question.points
    if (!one || !other || question.points.length !== 2) {
      return refuseOne(
        'points',
        'wrong-count',
        `${question.points.length} points`,
        'two points',
        'Give viscosity at two temperatures.',
      )
    }
    stopAt(checkPoints(null, question.points))
    if (Math.abs(one.temperature - other.temperature) < 5) {
      const came = figure(other.temperature, 'temperature')
      const allowed = `at least 5 K from points[0].temperature (${figure(one.temperature, 'temperature')})`
      refuseOne('points[1].temperature', 'does-not-fit', came, allowed, 'Take 40 °C and 100 °C from the data sheet.')
    }
    const warmer = one.temperature > other.temperature ? one : other
    const colder = one.temperature > other.temperature ? other : one
    if (!(warmer.viscosity < colder.viscosity)) {
      const allowed = 'less where it is warmer'
      refuseOne(
        'points[1].viscosity',
        'does-not-fit',
        figure(other.viscosity, 'viscosity'),
        allowed,
        'Check which belongs to which temperature.',
      )
    }
    return [one, other]
  }
  const { viscosity40, viscosityIndex: index } = question
  const [low, high] = viscosityRange
  let found = within(null, '', 'viscosity40', viscosity40, 'viscosity', low, high, 'Take it from the data sheet.')
  found = within(found, '', 'viscosityIndex', index, 'number', -100, 500, 'Take it from the data sheet.')
  stopAt(found)
  const hot = viscosityAt100(viscosity40, index)
  if (hot === null) {
    const allowed = 'one that an oil of this viscosity can have (none is defined below 2 mm²/s at 100 °C)'
    return refuseOne('viscosityIndex', 'no-answer', figure(index, 'number'), allowed, 'Give two points instead.')
  }
  return [
    { temperature: at40, viscosity: viscosity40 },
    { temperature: at100, viscosity: hot },
  ]
}

/**
 * Viscosity of an oil at a temperature, its index and grade, from two points or from 40 °C and index.
 *
 * 'Weight' is not a standard: compare oils by mm²/s at 40 °C and at the riding temperature.
 *
 * @param question  temperature [K]; two points [K, m²/s], or viscosity at 40 °C [m²/s] and index
 * @returns viscosity [m²/s], index, ISO VG
 * @throws Refusal naming every field that can't be; `no-answer` where the oil's line ends before the temperature
 * @source ASTM D341-20; ASTM D2270-10; ISO 3448:1992
 * @example viscosity({ points: [{ temperature: 313.15, viscosity: 32e-6 }, { temperature: 373.15, viscosity: 5.4e-6 }], temperature: 353.15 }).grade // "ISO VG 32"
 */
export function viscosity(question: ViscosityQuestion): OilViscosity {
  stopAt(temperatureWithin(null, '', 'temperature', question.temperature))
  const [one, other] = pointsOf(question)
  const wanted = viscosityBetween(one, other, question.temperature)
  if (wanted === null) {
    const allowed = 'a temperature at which this oil flows by the standard (0.2 mm²/s … 10 m²/s)'
    return refuseOne(
      'temperature',
      'no-answer',
      figure(question.temperature, 'temperature'),
      allowed,
      'Check both points.',
    )
  }
  const cold = viscosityBetween(one, other, at40)
  const hot = viscosityBetween(one, other, at100)
  return {
    viscosity: wanted,
    viscosityIndex: cold === null || hot === null ? null : viscosityIndex(cold, hot),
    grade: cold === null ? null : viscosityGrade(cold),
  }
}
