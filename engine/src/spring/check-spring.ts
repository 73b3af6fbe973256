/** Dimensions that can't be are refused here, with the field and what to measure. */
import { figure } from '../quantities/kinds.ts'
import { type Found, refuse, whole, within, withinIfGiven } from '../refusal/found.ts'
import { checkDamperGas, checkNegative, largestPressure } from './check-gas.ts'
import { checkLowerAir } from './check-lower-air.ts'
import { positiveChamber, ringArea } from './dimensions.ts'
import type { AirSpring, CoilSpring, Spring } from './spring.ts'

function smaller(found: Found, field: string, value: number, other: string, limit: number, next: string): Found {
  if (value < limit) return found
  const allowed = `smaller than ${other} (${figure(limit, 'length')})`
  return refuse(found, field, 'does-not-fit', figure(value, 'length'), allowed, next)
}

function checkAir(found: Found, at: string, spring: AirSpring): Found {
  const { bore, shaft, stroke, positiveShaft } = spring
  let checked = within(found, at, 'bore', bore, 'length', 0.005, 0.2, 'Measure the bore of the air chamber.')
  checked = within(checked, at, 'shaft', shaft, 'length', 0, 0.2, 'Measure the shaft below the piston.')
  checked = withinIfGiven(
    checked,
    at,
    'positiveShaft',
    positiveShaft,
    'length',
    0,
    0.2,
    'Measure what stands in the positive chamber.',
  )
  checked = within(
    checked,
    at,
    'positiveVolume',
    spring.positiveVolume,
    'volume',
    1e-6,
    0.01,
    'Give the positive chamber at full length.',
  )
  checked = withinIfGiven(
    checked,
    at,
    'spacerVolume',
    spring.spacerVolume,
    'volume',
    0,
    0.001,
    'Give the volume of one spacer.',
  )
  if (spring.spacers !== undefined) checked = whole(checked, at, 'spacers', spring.spacers, 0, 50, 'Count the spacers.')
  checked = withinIfGiven(
    checked,
    at,
    'chamberOil',
    spring.chamberOil,
    'volume',
    0,
    0.001,
    'Give the oil in the air chamber.',
  )
  checked = withinIfGiven(
    checked,
    at,
    'maxPressure',
    spring.maxPressure,
    'pressure',
    0,
    largestPressure,
    'Read it from the unit.',
  )
  checked = checkNegative(checked, at, spring)
  if (spring.second) {
    const { volume, pressure } = spring.second
    checked = within(
      checked,
      at,
      'second.volume',
      volume,
      'volume',
      1e-7,
      0.01,
      'Give the second chamber with its piston at rest.',
    )
    checked = within(
      checked,
      at,
      'second.pressure',
      pressure,
      'pressure',
      0,
      largestPressure,
      'Give what its gauge shows at full length.',
    )
  }
  if (checked !== found) return checked

  checked = smaller(checked, `${at}shaft`, shaft, `${at}bore`, bore, 'Measure the shaft below the piston.')
  if (positiveShaft !== undefined) {
    checked = smaller(
      checked,
      `${at}positiveShaft`,
      positiveShaft,
      `${at}bore`,
      bore,
      'Measure what stands in the positive chamber.',
    )
  }
  if (checked !== found) return checked
  const chamber = positiveChamber(spring)
  const swept = ringArea(bore, positiveShaft ?? 0) * stroke
  if (chamber > swept) return checked
  if (chamber <= 0) {
    const came = figure(spring.positiveVolume, 'volume')
    const allowed = `more than spacers and chamber oil take (${figure(spring.positiveVolume - chamber, 'volume')})`
    return refuse(
      checked,
      `${at}positiveVolume`,
      'does-not-fit',
      came,
      allowed,
      'Take spacers or oil out, or measure the chamber.',
    )
  }
  const allowed = `shorter than the positive chamber is long (${figure((stroke * chamber) / swept, 'length')})`
  return refuse(
    checked,
    `${at}stroke`,
    'does-not-fit',
    figure(stroke, 'length'),
    allowed,
    'Check positiveVolume, spacers and bore.',
  )
}

function checkCoil(found: Found, at: string, spring: CoilSpring): Found {
  const checked = within(found, at, 'rate', spring.rate, 'rate', 100, 1e6, 'Read the rate from the coil.')
  return withinIfGiven(
    checked,
    at,
    'preload',
    spring.preload,
    'length',
    0,
    0.1,
    'Measure how far the collar was turned down.',
  )
}

/**
 * Everything that can't be about a spring's dimensions.
 *
 * @param found   what was found before
 * @param spring  dimensions as given
 * @param at      path of the spring, ending in a dot
 */
export function checkSpring(found: Found, spring: Spring, at: string): Found {
  let checked = within(found, at, 'stroke', spring.stroke, 'length', 0.005, 0.5, 'Measure the stroke.')
  if (checked !== found) return checked
  checked = spring.kind === 'air' ? checkAir(checked, at, spring) : checkCoil(checked, at, spring)
  if (spring.lower) checked = checkLowerAir(checked, `${at}lower.`, spring.lower, spring.stroke)
  if (spring.topOut) {
    checked = within(
      checked,
      at,
      'topOut.rate',
      spring.topOut.rate,
      'rate',
      0,
      1e7,
      'Give the rate of the top-out spring.',
    )
    checked = within(
      checked,
      at,
      'topOut.length',
      spring.topOut.length,
      'length',
      0,
      spring.stroke,
      'Give the stroke over which it works.',
    )
  }
  if (spring.bumper) {
    const { rate, length, exponent } = spring.bumper
    checked = within(checked, at, 'bumper.rate', rate, 'rate', 0, 1e8, 'Give the rate of the bumper.')
    checked = within(
      checked,
      at,
      'bumper.length',
      length,
      'length',
      1e-4,
      spring.stroke,
      'Give the length of the bumper.',
    )
    checked = within(checked, at, 'bumper.exponent', exponent, 'number', 1, 10, 'Use 1 for a straight bumper.')
  }
  if (spring.damperGas) checked = checkDamperGas(checked, at, spring.damperGas, spring.stroke)
  return checked
}
