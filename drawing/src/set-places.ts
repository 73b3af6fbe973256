import type { ForkTable } from './fork-parameters.ts'
import { ringFrom } from './fork-shapes.ts'
import { forkStations } from './fork-stations.ts'
import { axisOf, type Place } from './outline.ts'

/** Where each setting of a fork is set, in the drawing of both legs at full length [mm]. */
export interface SetPlaces {
  readonly valve: Place
  readonly spacers: Place
  readonly rebound: Place
  readonly compression: Place
  /** Where the ring stands before the fork has moved, and where the sag leaves it. */
  readonly unmoved: Place
  readonly ring: Place
  readonly bath: Place
}

/**
 * @param sag  as a stroke [m]; 0 where it was not measured
 * @example setPlaces(fork, 0.03).ring[0] - setPlaces(fork, 0.03).unmoved[0] // 30 mm along the stanchion
 */
export function setPlaces(fork: ForkTable, sag: number): SetPlaces {
  const at = forkStations(fork)
  const [right, left] = [axisOf('right', true), axisOf('left', true)]
  const { floor, cavityRadius, rodRadius } = at.rooms.left
  const below = left + at.outerRadius
  return {
    valve: [at.crownTo + 11, left],
    spacers: [at.cap - 5, left - at.innerRadius * 0.6],
    rebound: [-2.5, right + 8],
    compression: [at.crownTo + 10, right - 11],
    unmoved: [ringFrom(at, 0), below],
    ring: [ringFrom(at, sag), below],
    bath: [floor + 3, left + (cavityRadius + rodRadius) / 2],
  }
}
