import type { Joule, Metre, Newton } from '../quantities/si.ts'
import { force } from './spring-force.ts'
import type { SpringState } from './spring-state.ts'

const panels = 64

/**
 * Energy a spring takes beyond a steady load: ∫(F − load)dx, Gauss–Legendre with three points in each of 64 panels.
 *
 * @param state  a spring made ready
 * @returns [J]
 * @source conservation of energy
 */
export function energyBetween(state: SpringState, load: Newton, from: Metre, to: Metre): Joule {
  const half = (to - from) / panels / 2
  const outer = half * Math.sqrt(0.6)
  let sum = 0
  for (let panel = 0; panel < panels; panel += 1) {
    const middle = from + (2 * panel + 1) * half
    sum += 5 * force(state, middle - outer) + 8 * force(state, middle) + 5 * force(state, middle + outer) - 18 * load
  }
  return (sum * half) / 9
}
