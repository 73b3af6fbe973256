import { archAndAxle, crownClamps, crownWeb } from './chassis.ts'
import { damperLeg } from './damper-leg.ts'
import type { ForkParameters } from './fork-parameters.ts'
import { type ForkStations, forkStations } from './fork-stations.ts'
import { lowerLeg } from './lower-leg.ts'
import { line, partsOf } from './parts.ts'
import type { Shape } from './shape.ts'
import { springLeg } from './spring-leg.ts'

export type ForkView = 'both-legs' | 'spring-leg'

/** Distance from the lip to the stroke-0 place of the ring: the wiper's outer lip pushes it [mm]. */
const wiperReach = 7.4

/**
 * A single-crown fork laid down, cut through both legs, as named plain shapes in mm; the later ones lie on top.
 * Every chamber and bath, turned about its leg's axis, holds the volume that the table and the stroke give.
 *
 * @param fork  table in SI, stroke 0 … travel
 * @param view  both legs, or the spring leg alone
 * @example volumeOf(forkShapes(fork), 'chamber.positive') // positiveVolume − spacers − oil − area·stroke [m³]
 */
export function forkShapes(fork: ForkParameters, view: ForkView = 'both-legs'): Shape[] {
  const at = forkStations(fork)
  const both = view === 'both-legs'
  const { web, clamps, middles } = stillOf(at, both)
  return [
    ...(both ? [...web, ...archAndAxle(fork, at)] : []),
    ...(both ? [...lowerLeg(fork, at, 'right'), ...damperLeg(fork, at)] : []),
    ...lowerLeg(fork, at, 'left'),
    ...springLeg(fork, at),
    ...clamps,
    ...ring(fork, at),
    ...middles,
  ]
}

interface Still {
  web: readonly Shape[]
  clamps: readonly Shape[]
  middles: readonly Shape[]
}
const still = new WeakMap<ForkStations, { both?: Still; alone?: Still }>()

/** What stands still at every stroke is made once: a slider that is moved leaves it alone. */
function stillOf(at: ForkStations, both: boolean): Still {
  const known = still.get(at) ?? {}
  const before = both ? known.both : known.alone
  if (before) return before
  const made: Still = {
    web: crownWeb(at),
    clamps: crownClamps(at, both ? ['left', 'right'] : ['left']),
    middles: axes(at, both),
  }
  still.set(at, { ...known, [both ? 'both' : 'alone']: made })
  return made
}

/** Where the ring lies that a stroke [m] has pushed there [mm along]. */
export const ringFrom = (at: ForkStations, stroke: number): number => at.lip + wiperReach + stroke * 1e3

function ring(fork: ForkParameters, at: ForkStations): Shape[] {
  if (fork.ring === undefined || fork.ring === null) return []
  const from = ringFrom(at, fork.ring)
  const look = { material: 'hand', outline: 'none' } as const
  return [partsOf('left', 0).ring('ring', from, from + 2.7, at.outerRadius, at.outerRadius + 2.9, look)]
}

function axes(at: ForkStations, both: boolean): Shape[] {
  const [from, to] = [at.foot - 24, at.crownTo + 20]
  const axis = (leg: 'left' | 'right') =>
    line(
      `axis.${leg}`,
      [
        [from, 0],
        [to, 0],
      ],
      'fine',
      'axis',
      leg,
    )
  return both ? [axis('right'), axis('left')] : [axis('left')]
}
