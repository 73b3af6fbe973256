import { figure } from '../quantities/kinds.ts'
import type { CubicMetre, Metre } from '../quantities/si.ts'
import { refuseOne, stopAt, within, withinIfGiven, withinOf } from '../refusal/found.ts'
import { ringArea } from '../spring/dimensions.ts'

export interface OilHeightQuestion {
  /** Inside of the stanchion. */
  readonly bore: Metre
  /** What stands in the oil; 0 by default. */
  readonly rod?: Metre
  /** From the stanchion's top edge down to the oil. */
  readonly height?: Metre
  readonly volume?: CubicMetre
  /** From the top edge to the bottom of the oil. */
  readonly legLength: Metre
}

export interface OilHeight {
  height: Metre
  volume: CubicMetre
  airGap: CubicMetre
}

/**
 * Oil height and volume of an open bath, each from the other: volume = (legLength − height)·π/4·(bore² − rod²);
 * air gap = π/4·bore²·height. Height is measured down from the stanchion's top edge, springs out, leg pushed in.
 *
 * @param question  lengths [m]; height [m] or volume [m³]
 * @returns height [m], volume and air gap [m³]
 * @throws Refusal: `wrong-form` where both or neither are given; more oil than the leg holds
 * @source geometry of a cylinder
 * @example oilHeight({ bore: 0.03, legLength: 0.4, height: 0.1 }).airGap // 0.0000706858
 */
export function oilHeight(question: OilHeightQuestion): OilHeight {
  const { bore, rod = 0, height, volume, legLength } = question
  let found = within(null, '', 'bore', bore, 'length', 0.005, 0.2, 'Measure the inside of the stanchion.')
  found = withinOf(found, '', 'rod', rod, 'length', 0, bore * 0.98, 'Measure what stands in the oil.')
  found = within(
    found,
    '',
    'legLength',
    legLength,
    'length',
    0.02,
    2,
    'Measure from the top edge to the bottom of the oil.',
  )
  if (height !== undefined)
    found = withinOf(found, '', 'height', height, 'length', 0, legLength, 'Measure down from the top edge.')
  found = withinIfGiven(found, '', 'volume', volume, 'volume', 0, 0.01, 'Give the oil in the leg.')
  stopAt(found)
  const ring = ringArea(bore, rod)
  if (height !== undefined && volume === undefined) {
    return { height, volume: (legLength - height) * ring, airGap: ringArea(bore, 0) * height }
  }
  if (volume === undefined || height !== undefined) {
    const came = volume === undefined ? 'neither height nor volume' : 'both height and volume'
    return refuseOne('height', 'wrong-form', came, 'height or volume, one of them', 'Give the one you know.')
  }
  const worked = legLength - volume / ring
  if (worked < 0) {
    const allowed = `at most what the leg holds (${figure(legLength * ring, 'volume')})`
    return refuseOne('volume', 'does-not-fit', figure(volume, 'volume'), allowed, 'Check bore and length.')
  }
  return { height: worked, volume, airGap: ringArea(bore, 0) * worked }
}
