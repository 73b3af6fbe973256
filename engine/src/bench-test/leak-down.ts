import type { CubicMetre, Kelvin, Pascal, Second } from '../quantities/si.ts'
import { ambientWithin, refuseOne, stopAt, temperatureWithin, within } from '../refusal/found.ts'

export interface LeakQuestion {
  readonly volume: CubicMetre
  readonly hoseVolume?: CubicMetre
  /** What the gauge showed when it was taken off, or still shows. */
  readonly start: { readonly reading: Pascal; readonly temperature: Kelvin }
  /** `attached`: put on afterwards (default), so it filled its hose; `left`: it stayed on. */
  readonly end: { readonly reading: Pascal; readonly temperature: Kelvin; readonly how?: 'attached' | 'left' }
  readonly duration: Second
  readonly ambient?: Pascal
  /** Smallest step of the gauge; 1 psi by default. */
  readonly gaugeResolution?: Pascal
}

export interface LeakDown {
  /** Gauge, at the start temperature. */
  pressureStart: Pascal
  pressureEnd: Pascal
  /** What the gauge would show at the end if nothing had been lost. */
  expectedReading: Pascal
  /** [Pa·m³/s] at the start temperature. */
  leak: number
  /** [m³/s] at 273.15 K and 101,325 Pa. */
  standardFlow: number
  /** Null where nothing was lost or nothing is left above the air around. */
  halfLife: Second | null
  /** The loss is more than twice its standard uncertainty. */
  significant: boolean
}

/** Standard uncertainty of one reading: resolution/√12 and 0.3 K of the gas, on absolute pressure. */
function readingDoubt(absolute: Pascal, temperature: Kelvin, resolution: Pascal): Pascal {
  return Math.hypot(resolution / Math.sqrt(12), (0.3 * absolute) / temperature)
}

/**
 * What was lost between two readings, after hose and temperature are taken out.
 *
 * end: true = reading·(V + V_h)/V where attached again; brought to the start temperature on absolute pressure.
 * leak = V·(p_start − p_end)/duration; half life = duration·ln 2/ln(p_start/p_end), gauge.
 *
 * @param question  volumes [m³], gauge readings [Pa], temperatures [K], duration [s]
 * @returns pressures [Pa, gauge], leak [Pa·m³/s], standard flow [m³/s], half life [s], whether it is more than doubt
 * @throws Refusal naming every field that can't be
 * @source ideal gas; pressure decay as in 40 CFR 1065.644 (2014), there in moles; uncertainties JCGM 100:2008
 * @example leakDown({ volume: 0.000187, start: { reading: 468843, temperature: 293.15 }, end: { reading: 379212, temperature: 293.15 }, duration: 86400 }).halfLife // 282260
 */
export function leakDown(question: LeakQuestion): LeakDown {
  const { volume, hoseVolume = 0, start, end, duration, ambient = 101_325, gaugeResolution = 6894.757 } = question
  let found = within(
    null,
    '',
    'volume',
    volume,
    'volume',
    1e-7,
    0.01,
    'Give the chamber; with the negative if the leg was cycled between.',
  )
  found = within(found, '', 'hoseVolume', hoseVolume, 'volume', 0, 0.001, 'Give hose and gauge together.')
  found = within(found, 'start.', 'reading', start.reading, 'pressure', 1, 2e7, 'Give what the gauge showed.')
  found = temperatureWithin(found, 'start.', 'temperature', start.temperature)
  found = within(found, 'end.', 'reading', end.reading, 'pressure', 0, 2e7, 'Give what the gauge showed.')
  found = temperatureWithin(found, 'end.', 'temperature', end.temperature)
  found = within(found, '', 'duration', duration, 'duration', 1, 3.2e8, 'Give the time between, like "24 h".')
  found = ambientWithin(found, '', 'ambient', ambient)
  found = within(
    found,
    '',
    'gaugeResolution',
    gaugeResolution,
    'pressure',
    1,
    1e6,
    'Give the smallest step of the gauge.',
  )
  stopAt(found)
  const how: unknown = end.how ?? 'attached'
  if (how !== 'attached' && how !== 'left') {
    refuseOne('end.how', 'not-a-choice', String(how), 'attached or left', 'Say whether the gauge was put on again.')
  }
  const kept = how === 'attached' ? volume / (volume + hoseVolume) : 1
  const cooler = start.temperature / end.temperature
  const pressureStart = start.reading
  const absoluteEnd = (end.reading / kept + ambient) * cooler
  const pressureEnd = absoluteEnd - ambient
  const lost = pressureStart - pressureEnd
  const leak = (volume * lost) / duration
  const doubtStart = readingDoubt(pressureStart + ambient, start.temperature, gaugeResolution)
  const doubtEnd = readingDoubt(end.reading + ambient, end.temperature, gaugeResolution)
  const doubt = Math.hypot(doubtStart, (doubtEnd / kept) * cooler)
  return {
    pressureStart,
    pressureEnd,
    expectedReading: ((pressureStart + ambient) / cooler - ambient) * kept,
    leak,
    standardFlow: ((leak / 101_325) * 273.15) / start.temperature,
    halfLife: lost > 0 && pressureEnd > 0 ? (duration * Math.LN2) / Math.log(pressureStart / pressureEnd) : null,
    significant: Math.abs(lost) > 2 * doubt,
  }
}
