/** The load along a fork's legs and across them. */
export const gravity = 9.80665

export type ForkLoadInput = { headAngle: number } & (
  | { wheelLoad: number; unsprungMass: number }
  | { riderMass: number; frontShare: number; bikeFrontMass: number }
)

/**
 * load = m·g·sin(head angle), side = m·g·cos(head angle); m is what rests on the fork.
 *
 * @param input  masses [kg], share [-], head angle [°]
 * @returns load along the legs and side load [N]
 * @source statics; g = 9.80665 m/s² (ISO 80000-3)
 * @example forkLoad({ riderMass: 82, frontShare: 0.42, bikeFrontMass: 5.05, headAngle: 65 }).load // 350.98
 */
export function forkLoad(input: ForkLoadInput): { load: number; sideLoad: number } {
  const mass =
    'wheelLoad' in input
      ? input.wheelLoad - input.unsprungMass
      : input.riderMass * input.frontShare + input.bikeFrontMass
  const angle = (input.headAngle * Math.PI) / 180
  return { load: mass * gravity * Math.sin(angle), sideLoad: mass * gravity * Math.cos(angle) }
}
