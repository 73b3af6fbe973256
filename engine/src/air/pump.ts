import type { CubicMetre, Pascal } from '../quantities/si.ts'
import { refuseOne, stopAt, within, withinIfGiven } from '../refusal/found.ts'

export interface PumpQuestion {
  /** Chamber the hose is joined to: the positive while the leg rests short of the port (so at full length), positive + negative at or through it. */
  readonly volume: CubicMetre
  /** Hose and gauge. */
  readonly hoseVolume: CubicMetre
  /** What the gauge shows after attaching. */
  readonly reading?: Pascal
  /** What was in the chamber before. */
  readonly pressure?: Pascal
}

export interface PumpReading {
  /** In the chamber before the gauge was put on. */
  pressure: Pascal
  reading: Pascal
  /** In the chamber after the gauge was taken off: the reading. */
  pressureAfter: Pascal
}

/**
 * What attaching a gauge does: the chamber fills the hose, reading = pressure·V/(V + V_h); taken off, the chamber stays at the reading.
 *
 * @param question  chamber and hose [m³], and either the reading or the pressure before [Pa, gauge]
 * @returns pressure before, reading, pressure after [Pa, gauge]
 * @throws Refusal `wrong-form` where both or neither of reading and pressure are given
 * @source ideal gas at one temperature; the hose is at ambient before
 * @example pumpReading({ volume: 95e-6, hoseVolume: 5e-6, pressure: 1241056 }).reading // 1179003
 */
export function pumpReading(question: PumpQuestion): PumpReading {
  const { volume, hoseVolume } = question
  let found = within(null, '', 'volume', volume, 'volume', 1e-7, 0.01, 'Give the chamber that is joined to the hose.')
  found = within(found, '', 'hoseVolume', hoseVolume, 'volume', 0, 0.001, 'Give hose and gauge together.')
  found = withinIfGiven(found, '', 'reading', question.reading, 'pressure', 0, 2e7, 'Give what the gauge shows.')
  found = withinIfGiven(
    found,
    '',
    'pressure',
    question.pressure,
    'pressure',
    0,
    2e7,
    'Give the pressure before attaching.',
  )
  stopAt(found)
  const ratio = volume / (volume + hoseVolume)
  if (question.reading !== undefined && question.pressure === undefined) {
    const { reading } = question
    return { pressure: reading / ratio, reading, pressureAfter: reading }
  }
  if (question.pressure !== undefined && question.reading === undefined) {
    const reading = question.pressure * ratio
    return { pressure: question.pressure, reading, pressureAfter: reading }
  }
  const came = question.reading === undefined ? 'neither reading nor pressure' : 'both reading and pressure'
  return refuseOne(
    'reading',
    'wrong-form',
    came,
    'the reading or the pressure before, not both',
    'Give one; the other is worked out.',
  )
}
