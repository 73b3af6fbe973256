/** Sag: where a load rests on a spring, slowly, with friction holding it on either side. */
import { brent } from '../numerics/brent.ts'
import type { Spring } from '../spring/spring.ts'
import { type PreparedSpring, type Process, prepareSpring } from '../spring/spring-force.ts'

export interface SagResult {
  /** [m] */
  stroke: number
  /** Share of the spring's stroke [-]. */
  fraction: number
  /** Stiffness there [N/m]. */
  rate: number
  /** Where friction may hold it, at load − friction and load + friction [m]. */
  low: number
  high: number
  limit: 'not-moved' | 'bottomed' | null
}

/**
 * Free stroke: slowly, without friction or weight, where F = 0; 0 if F(0) ≥ 0, the end where F stays below 0 [m].
 *
 * @source engine's own definition; `prepared` must be slow
 */
export function freeStroke(prepared: PreparedSpring): number {
  if (prepared.force(0) >= 0) return 0
  if (prepared.force(prepared.fullStroke) < 0) return prepared.fullStroke
  return brent(prepared.force, 0, prepared.fullStroke, 1e-12)
}

function resting(prepared: PreparedSpring, load: number, free: number): { stroke: number; limit: SagResult['limit'] } {
  if (load <= prepared.force(free)) return { stroke: free, limit: 'not-moved' }
  if (load > prepared.force(prepared.fullStroke)) return { stroke: prepared.fullStroke, limit: 'bottomed' }
  return { stroke: brent((x) => prepared.force(x) - load, free, prepared.fullStroke, 1e-12), limit: null }
}

/**
 * The stroke at which F(x) = load, slowly.
 *
 * @param spring    dimensions [SI]
 * @param input     pressure, gauge [Pa]; load along the leg [N]; friction ≥ 0 [N]; pressureAt [m]; ambient [Pa]
 * @returns strokes [m], stiffness [N/m]; `limit` where the load lies outside the spring
 * @throws Refusal where the spring's dimensions do not fit
 */
export function sag(
  spring: Spring,
  input: { pressure: number; load: number; friction?: number } & Pick<Process, 'pressureAt' | 'ambient'>,
): SagResult {
  const { pressure, load, friction = 0, ...process } = input
  const prepared = prepareSpring(spring, pressure, process)
  const free = freeStroke(prepared)
  const rest = resting(prepared, load, free)
  return {
    stroke: rest.stroke,
    fraction: rest.stroke / spring.stroke,
    rate: prepared.at(rest.stroke).rate,
    low: resting(prepared, load - friction, free).stroke,
    high: resting(prepared, load + friction, free).stroke,
    limit: rest.limit,
  }
}
