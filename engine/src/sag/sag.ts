import type { Metre, Newton, NewtonPerMetre } from '../quantities/si.ts'
import { type Found, stopAt, within, withinIfGiven } from '../refusal/found.ts'
import { freeStroke } from '../spring/free-stroke.ts'
import type { Conditions, Spring } from '../spring/spring.ts'
import { type ForceAndRate, force, forceAt, strokeAtForce } from '../spring/spring-force.ts'
import { type SpringState, springState } from '../spring/spring-state.ts'

export interface SagQuestion extends Conditions {
  /** Axial load on the leg or shaft [N]. */
  readonly load: Newton
  /** Half the difference between coming down and going up [N]; 0 by default. */
  readonly friction?: Newton
}

export interface Sag {
  stroke: Metre
  /** Of the nominal stroke. */
  fraction: number
  /** Slope there [N/m]. */
  rate: NewtonPerMetre
  /** Where friction may leave it, approached from full length and from below. */
  low: Metre
  high: Metre
  /** The load does not move the leg, or takes it to its end. */
  limit: 'not-moved' | 'bottomed' | null
}

/** Loads on a leg or shaft up to 50 kN. */
export function loadWithin(found: Found, name: string, load: number): Found {
  return within(found, '', name, load, 'force', 0, 50_000, 'Give the load along the leg, from fork-load or shock-load.')
}

/** What the spring holds at its free stroke: nothing by definition, but at full length it may push already. */
function heldAtFree(slow: SpringState, free: number): number {
  return free > 0 && free < slow.fullStroke ? 0 : force(slow, free)
}

/** Where a slow spring rests under a load: between its free stroke and its end. */
export function restingStroke(slow: SpringState, free: number, load: number): number {
  if (load <= heldAtFree(slow, free)) return free
  if (load > force(slow, slow.fullStroke)) return slow.fullStroke
  return strokeAtForce(slow, load, free, slow.fullStroke)
}

const out: ForceAndRate = { force: 0, rate: 0 }

/**
 * Sag under a load: the stroke at which the slow spring force equals it; friction leaves it anywhere from
 * load − friction to load + friction.
 *
 * @param spring    dimensions
 * @param question  load, pressure, friction, air around
 * @returns stroke, low, high [m], fraction of the nominal stroke, rate [N/m]; a physical extreme is a `limit`, not an error
 * @throws Refusal naming every field that can't be
 * @source force balance at rest, ideal gas, isothermal
 * @example sag({ kind: 'coil', rate: 9000, stroke: 0.15 }, { load: 360 }).stroke // 0.04
 */
export function sag(spring: Spring, question: SagQuestion): Sag {
  const { load } = question
  const friction = question.friction ?? 0
  let found = loadWithin(null, 'load', load)
  found = withinIfGiven(found, '', 'friction', question.friction, 'force', 0, 10_000, 'Give the friction as a force.')
  stopAt(found)
  const state = springState(spring, question)
  const free = freeStroke(state)
  const stroke = restingStroke(state, free, load)
  forceAt(state, stroke, out)
  const { rate } = out
  let limit: Sag['limit'] = null
  if (load <= heldAtFree(state, free)) limit = 'not-moved'
  else if (load > force(state, state.fullStroke)) limit = 'bottomed'
  return {
    stroke,
    fraction: stroke / spring.stroke,
    rate,
    low: friction === 0 ? stroke : restingStroke(state, free, load - friction),
    high: friction === 0 ? stroke : restingStroke(state, free, load + friction),
    limit,
  }
}
