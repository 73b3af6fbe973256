import type { ForkParameters } from './fork-parameters.ts'

/** What stands beside the chambers of an air spring at its stroke, SI; forces along the leg, both as sizes. */
export interface ChamberFigures {
  readonly positive: { pressure: number; volume: number; force: number }
  readonly negative: { pressure: number; volume: number; force: number }
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
