import { figure } from '../quantities/kinds.ts'
import type { Newton, Pascal } from '../quantities/si.ts'
import { refuseOne, stopAt, within } from '../refusal/found.ts'
import { Refusal } from '../refusal/refusal.ts'
import { prepareSpring } from '../spring/prepare-spring.ts'
import type { AirSpring, Spring } from '../spring/spring.ts'
import { pressureForSag } from './pressure-for-sag.ts'

export interface SpacersQuestion {
  readonly load: Newton
  /** Fraction of the nominal stroke. */
  readonly sag: number
  readonly endForce: Newton
  /** Where, as a fraction of the stroke; 0.9 by default. */
  readonly at?: number
  /** Fast from the sag; 1.3 by default. */
  readonly exponent?: number
  readonly ambient?: Pascal
}

export interface SpacersForEndForce {
  spacers: number
  pressure: Pascal
  force: Newton
}

/** Pressure and end force with a number of spacers; null where that many do not fit. */
function withSpacers(spring: AirSpring, spacers: number, question: SpacersQuestion): SpacersForEndForce | null {
  const { load, sag, at = 0.9, exponent = 1.3, ambient } = question
  const air = ambient === undefined ? {} : { ambient }
  const changed = { ...spring, spacers }
  try {
    const { pressure, stroke } = pressureForSag(changed, { load, sag, ...air })
    const fast = prepareSpring(changed, pressure, { exponent, startStroke: stroke, ...air })
    return { spacers, pressure, force: fast.force(at * spring.stroke) }
  } catch (error) {
    // Too many spacers end the stroke or pass the largest pressure; with none the refusal is the answer.
    if (error instanceof Refusal && spacers > 0) return null
    throw error
  }
}

/**
 * Spacers for a wanted force near the end, at a wanted sag: the smallest whole number whose fast force at `at`·stroke
 * reaches `endForce`, at the pressure that gives the sag.
 *
 * @param spring    an air spring with spacerVolume
 * @param question  load, end force [N], sag and place as fractions of the stroke, exponent
 * @returns spacers, gauge pressure [Pa], the force reached [N]
 * @throws Refusal: no number that fits reaches it (then with the largest force); a coil; any field that can't be
 * @source force balance; ideal gas, polytropic from the sag
 * @example spacersForEndForce({ kind: 'air', bore: 0.032, shaft: 0.01, stroke: 0.15, positiveVolume: 0.000197, negativeVolume: 0.000031, equalisingStroke: 0.0025, spacerVolume: 0.00001 }, { load: 351, sag: 0.2, endForce: 1800 }).spacers // 2
 */
export function spacersForEndForce(spring: Spring, question: SpacersQuestion): SpacersForEndForce {
  if (spring.kind === 'coil') {
    return refuseOne('spring.kind', 'coil-has-no-pressure', 'coil', 'air', 'A coil takes no spacers.')
  }
  const { sag, endForce, at = 0.9, exponent = 1.3 } = question
  const checked = within(
    null,
    '',
    'sag',
    sag,
    'fraction',
    0.01,
    0.95,
    'Give the sag as a share of the stroke, like "20 %".',
  )
  let found = within(checked, '', 'endForce', endForce, 'force', 1, 100_000, 'Give the force wanted near the end.')
  found = within(
    found,
    '',
    'at',
    at,
    'fraction',
    checked === null ? sag : 0,
    1,
    'Give a share of the stroke beyond the sag.',
  )
  found = within(found, '', 'exponent', exponent, 'number', 1, 1.4, 'Use 1.3 for riding.')
  found = within(
    found,
    'spring.',
    'spacerVolume',
    spring.spacerVolume,
    'volume',
    1e-7,
    0.001,
    'Give the volume of one spacer.',
  )
  stopAt(found)
  let largest = 0
  let worked = withSpacers(spring, 0, question)
  for (let spacers = 1; worked; spacers += 1) {
    if (worked.force >= endForce) return worked
    largest = Math.max(largest, worked.force)
    worked = spacers > 50 ? null : withSpacers(spring, spacers, question)
  }
  const allowed = `at most what fits (${figure(largest, 'force')})`
  return refuseOne('endForce', 'no-answer', figure(endForce, 'force'), allowed, 'Ask for less, or use larger spacers.')
}
