import { figure } from '../quantities/kinds.ts'
import type { CubicMetre, Pascal } from '../quantities/si.ts'
import { refuse, refuseOne, stopAt, within, withinIfGiven } from '../refusal/found.ts'

export interface HoseQuestion {
  /** The same pump attached again and again, nothing pumped between. */
  readonly readings: readonly Pascal[]
  readonly volume?: CubicMetre
  readonly hoseVolume?: CubicMetre
  /** Smallest step of the gauge; 1 psi by default. */
  readonly gaugeResolution?: Pascal
}

export interface HoseRatio {
  /** V/(V + V_h). */
  ratio: number
  /** Of the ratio, 90 %. */
  band: [number, number]
  hoseVolume?: CubicMetre
  volume?: CubicMetre
}

/**
 * How much of the pressure a pump leaves: the mean of successive ratios of its readings; from it the hose, or the chamber.
 *
 * Each reading has u = resolution/√12; the band is ±1.645·u(ratio) through the mean's slopes.
 *
 * @param question  2 … 100 readings [Pa, gauge], falling; volume or hoseVolume [m³] if the other is wanted
 * @returns ratio, band, and the other volume [m³]
 * @throws Refusal naming every field that can't be; readings that do not fall have no answer
 * @source ideal gas at one temperature; JCGM 100:2008 5.1.2
 * @example hoseRatio({ readings: [1179000, 1116976, 1061817] }).ratio // 0.949
 */
export function hoseRatio(question: HoseQuestion): HoseRatio {
  const { readings, volume, hoseVolume, gaugeResolution = 6894.757 } = question
  if (readings.length < 2 || readings.length > 100) {
    refuseOne(
      'readings',
      'wrong-count',
      `${readings.length} readings`,
      '2 to 100 readings',
      'Attach the pump again and read it.',
    )
  }
  let found = within(
    null,
    '',
    'gaugeResolution',
    gaugeResolution,
    'pressure',
    1,
    1e6,
    'Give the smallest step of the gauge.',
  )
  readings.forEach((reading, index) => {
    found = within(found, '', `readings[${index}]`, reading, 'pressure', 1000, 2e7, 'Give what the gauge showed.')
    const before = readings[index - 1]
    if (before === undefined || !(reading > before) || found !== null) return
    const allowed = `at most the reading before (${figure(before, 'pressure')})`
    const next = 'Attach the pump without pumping; write the readings in their order.'
    found = refuse(found, `readings[${index}]`, 'does-not-fit', figure(reading, 'pressure'), allowed, next)
  })
  found = withinIfGiven(
    found,
    '',
    'volume',
    volume,
    'volume',
    1e-7,
    0.01,
    'Give the chamber that is joined to the hose.',
  )
  found = withinIfGiven(found, '', 'hoseVolume', hoseVolume, 'volume', 1e-8, 0.001, 'Give hose and gauge.')
  stopAt(found)
  if (volume !== undefined && hoseVolume !== undefined) {
    refuseOne('hoseVolume', 'wrong-form', 'there with volume', 'one of volume and hoseVolume', 'Give the one you know.')
  }
  const pairs = readings.length - 1
  const slopes = readings.map(() => 0)
  let ratio = 0
  for (let index = 0; index < pairs; index += 1) {
    const before = readings[index] ?? 1
    const after = readings[index + 1] ?? 1
    ratio += after / before / pairs
    slopes[index] = (slopes[index] ?? 0) - after / before ** 2 / pairs
    slopes[index + 1] = (slopes[index + 1] ?? 0) + 1 / before / pairs
  }
  if (!(ratio < 1)) {
    refuseOne(
      'readings',
      'no-answer',
      'readings that do not fall',
      'falling from one to the next',
      'Attach the pump without pumping.',
    )
  }
  const u = Math.hypot(...slopes.map((slope) => (slope * gaugeResolution) / Math.sqrt(12)))
  return {
    ratio,
    band: [ratio - 1.645 * u, ratio + 1.645 * u],
    ...(volume === undefined ? {} : { hoseVolume: volume * (1 / ratio - 1) }),
    ...(hoseVolume === undefined ? {} : { volume: (hoseVolume * ratio) / (1 - ratio) }),
  }
}
