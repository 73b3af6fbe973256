/** How much air a pump's hose takes, from putting it on three times: a pump is bought without that figure. */
import { figure, hoseRatio, Refusal } from '@legwork/engine'

export interface HoseFound {
  /** Hose and gauge [m³]. */
  hoseVolume: number
  /** Nine times in ten, as far as the gauge's step goes [m³]. */
  band: [number, number]
  /** What the gauge keeps of the pressure each time [-]. */
  ratio: number
}

/** Attached once, and twice more. */
export const hoseReadings = 3

/**
 * The hose out of readings of one pump, attached again and again without pumping, on a chamber of known volume V:
 * V_h = V·(1/ratio − 1), ratio the mean of successive readings' ratios. A gauge that reads a share too high drops out.
 *
 * @param readings    2 to 20 [Pa gauge], each lower than the one before
 * @param volume      the chamber that is joined to the hose [m³]
 * @param resolution  smallest step of the gauge [Pa]
 * @throws Refusal where the readings do not fall, or fall by no more than the gauge's step leaves open
 * @source ideal gas at one temperature; JCGM 100:2008 5.1.2
 * @example measureHose([1179000, 1116976, 1061817], 95e-6, 6895).hoseVolume // 5.1e-6
 */
export function measureHose(readings: readonly number[], volume: number, resolution: number): HoseFound {
  const { ratio, band, hoseVolume = 0 } = hoseRatio({ readings, volume, gaugeResolution: resolution })
  const [low, high] = band
  if (high >= 1)
    throw new Refusal([
      {
        field: 'readings',
        code: 'no-answer',
        came: 'readings that fall by no more than the gauge’s step leaves open',
        allowed: `falling by clearly more than ${figure(resolution, 'pressure')} each time`,
        next: 'Attach it to a smaller chamber at a higher pressure, such as an air shock.',
      },
    ])
  const hoseOf = (share: number): number => volume * (1 / share - 1)
  return { hoseVolume, band: [hoseOf(high), hoseOf(low)], ratio }
}
