import type { CubicMetre, Metre, SquareMetre } from '../quantities/si.ts'
import type { AirSpring, LowerAir, LowerLeg, Spring } from './spring.ts'

/** Area of a ring: π/4·(outer² − inner²) [m²]. */
export function ringArea(outer: Metre, inner: Metre): SquareMetre {
  return (Math.PI / 4) * (outer * outer - inner * inner)
}

/** Positive chamber at x = 0: positiveVolume − spacers·spacerVolume − chamberOil [m³]. */
export function positiveChamber(spring: AirSpring): CubicMetre {
  return spring.positiveVolume - (spring.spacers ?? 0) * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
}

/** Air of one lower leg at x = 0: volume − oil [m³]. */
export function legAir(lower: LowerAir, leg: LowerLeg): CubicMetre {
  return (leg.volume ?? lower.volume) - leg.oil
}

/** Area the lower leg's air works on [m²]. */
export function legArea(lower: LowerAir, leg: LowerLeg): SquareMetre {
  return ringArea(leg.stanchion ?? lower.stanchion, leg.rod ?? lower.rod)
}

/**
 * The stroke the unit can really use: min(stroke, 0.999·(V − oil)/A of each lower leg).
 *
 * An overfilled leg shortens it; at the very end of the leg's air the force has no value, hence 0.999.
 *
 * @param spring  checked dimensions
 * @returns [m]
 * @source geometry of a cylinder: the air of a leg ends where its area has swept its volume
 * @example fullStroke({ kind: 'coil', rate: 9000, stroke: 0.15 }) // 0.15
 */
export function fullStroke(spring: Spring): Metre {
  let stroke = spring.stroke
  const { lower } = spring
  if (lower) {
    for (const leg of lower.legs) stroke = Math.min(stroke, (0.999 * legAir(lower, leg)) / legArea(lower, leg))
  }
  return stroke
}
