/** What an instrument leaves open, either way: what judging sets against a limit. */
import type { Instrument } from '../registers.ts'

/**
 * Half of the band in which the true value lies as far as the instrument goes: half its smallest step, or the permitted
 * error of a wrench at that torque.
 *
 * @param value  what was read [SI]
 * @returns [SI]; 0 where none is named or it does not say
 * @source half a step: JCGM 100:2008 F.2.2.1 (indication); a wrench's permitted error: ISO 6789-1:2017, its class
 * @example halfWidthOf({ id: '', name: 'Tape', note: null, kind: 'tape', resolution: 0.001 }, 0.164) // 0.0005
 */
export function halfWidthOf(instrument: Instrument | null | undefined, value: number): number {
  if (!instrument) return 0
  return instrument.kind === 'wrench' ? instrument.class * Math.abs(value) : instrument.resolution / 2
}
