import { force, strokeAtForce } from './spring-force.ts'
import type { SpringState } from './spring-state.ts'

/**
 * Where the leg rests by itself, without weight and friction: the stroke at which the slow force is 0;
 * 0 where it pushes at full length already, fullStroke where it pulls everywhere.
 *
 * @param slow  a spring made ready with exponent 1
 * @returns stroke [m]
 */
export function freeStroke(slow: SpringState): number {
  if (force(slow, 0) >= 0) return 0
  if (force(slow, slow.fullStroke) <= 0) return slow.fullStroke
  return strokeAtForce(slow, 0, 0, slow.fullStroke)
}
