import type { Metre, Newton } from '../quantities/si.ts'
import { pairWithin, refuseOne, stopAt, within } from '../refusal/found.ts'

export interface SideFrictionQuestion {
  /** Across the leg, from fork-load. */
  readonly sideLoad: Newton
  /** Axle to lower bushing. */
  readonly a: Metre
  /** Between bushings. */
  readonly b: Metre
  /** Friction of a wet bushing, [low, high]; 0.04 … 0.10 by default (estimate, no source). */
  readonly mu?: readonly [number, number]
}

/**
 * Bushing friction under a side load: F = μ·P·(1 + 2a/b): the load on both bushings by levers, times μ.
 *
 * @param question  side load [N], distances [m], μ as [low, high] [-]
 * @returns friction [low, high] [N]
 * @throws Refusal naming every field that can't be
 * @source statics of a bar on two supports with the load outside them
 * @example sideFriction({ sideLoad: 160, a: 0.23, b: 0.115 }).friction // [32, 80]
 */
export function sideFriction(question: SideFrictionQuestion): { friction: [Newton, Newton] } {
  const { sideLoad, a, b } = question
  const mu = question.mu ?? [0.04, 0.1]
  if (mu.length !== 2)
    refuseOne('mu', 'wrong-count', `${String(mu.length)} numbers`, '[low, high]', 'Give two numbers.')
  let found = within(null, '', 'sideLoad', sideLoad, 'force', 0, 10_000, 'Take it from fork-load.')
  found = within(found, '', 'a', a, 'length', 0, 1, 'Measure from the axle to the lower bushing.')
  found = within(found, '', 'b', b, 'length', 0.01, 1, 'Measure between the bushings.')
  const next = 'Give the friction of the bushing as [low, high], like [0.04, 0.10].'
  stopAt(pairWithin(found, '', ['mu[0]', 'mu[1]'], mu, 'number', 0, 1, next))
  const onBushings = sideLoad * (1 + (2 * a) / b)
  return { friction: [mu[0] * onBushings, mu[1] * onBushings] }
}
