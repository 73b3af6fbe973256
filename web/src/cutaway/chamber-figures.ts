import type { ForkParameters, Leg } from '@legwork/drawing'

export interface ChamberFigure {
  /** Gauge [Pa]. */
  readonly pressure: number
  /** [m³] */
  readonly volume: number
  /** Along the leg, as a size [N]. */
  readonly force: number
}

/** What stands beside the chambers of an air spring at its stroke. */
export interface ChamberFigures {
  readonly positive: ChamberFigure
  readonly negative: ChamberFigure
}

const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2

/**
 * Volumes V_p − A_p·x and V_n + A_n·x [m³] and forces p·A [N] of both chambers, pressures gauge [Pa].
 *
 * @returns null for a coil or a fork without air in its negative chamber
 * @example chamberFigures(fork)?.positive.force // 7e5 Pa on a bore of 32 mm: 563 N
 */
export function chamberFigures({ spring, stroke, pressures }: ForkParameters): ChamberFigures | null {
  if (spring.kind !== 'air' || spring.negative.kind !== 'air') return null
  const positive = circle(spring.bore) - circle(spring.positiveShaft ?? 0)
  const negative = circle(spring.bore) - circle(spring.shaft)
  const filled = spring.spacers * spring.spacerVolume + (spring.chamberOil ?? 0)
  return {
    positive: {
      pressure: pressures.positive,
      volume: spring.positiveVolume - filled - positive * stroke,
      force: pressures.positive * positive,
    },
    negative: {
      pressure: pressures.negative,
      volume: spring.negative.volume + negative * stroke,
      force: pressures.negative * negative,
    },
  }
}

/**
 * The air above the bath of a lower leg: V_L − oil − A_L·x [m³], p·A_L [N].
 *
 * @returns null where nobody measured the leg's room
 * @example lowerFigure(fork, 'left')?.volume // 205 ml less 10 ml oil at full length: 195e-6
 */
export function lowerFigure({ stanchion, legs, stroke, pressures }: ForkParameters, leg: Leg): ChamberFigure | null {
  const { volume, oil, rod } = legs[leg]
  if (volume === null) return null
  const area = circle(stanchion) - circle(rod)
  return { pressure: pressures[leg], volume: volume - oil - area * stroke, force: pressures[leg] * area }
}
