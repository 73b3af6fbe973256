import { figure } from '../quantities/kinds.ts'
import type { Metre, Newton, NewtonPerMetre } from '../quantities/si.ts'
import { refuseOne, stopAt, within } from '../refusal/found.ts'
import { loadWithin } from '../sag/sag.ts'
import { prepareSpring } from '../spring/prepare-spring.ts'
import type { CoilSpring, DamperGas, LowerAir } from '../spring/spring.ts'

export interface CoilRateQuestion {
  readonly load: Newton
  /** Wanted, as a length. */
  readonly sag: Metre
  readonly preload: Metre
  readonly damperGas?: DamperGas
  readonly lower?: LowerAir
}

/**
 * Coil rate for a wanted sag: rate = (load − what gas carries there)/(sag + preload).
 *
 * @param question  load [N], sag and preload [m], gas of damper and lower legs
 * @returns rate [N/m]
 * @throws Refusal naming every field that can't be; `no-answer` where the gas alone carries the load
 * @source force balance at rest
 * @example coilRate({ load: 1945, sag: 0.0225, preload: 0.001, damperGas: { pressure: 1378951, volume: 0.00004, rod: 0.0127 } }).rate // 7.472e4
 */
export function coilRate(question: CoilRateQuestion): { rate: NewtonPerMetre } {
  const { load, sag, preload, damperGas, lower } = question
  let found = loadWithin(null, 'load', load)
  found = within(found, '', 'sag', sag, 'length', 0.005, 0.4, 'Give the sag as a length, like "20 mm".')
  found = within(found, '', 'preload', preload, 'length', 0, 0.1, 'Measure how far the collar was turned down.')
  stopAt(found)
  const weightless: CoilSpring = {
    kind: 'coil',
    rate: 1000,
    stroke: sag,
    ...(damperGas ? { damperGas } : {}),
    ...(lower ? { lower } : {}),
  }
  // A coil of known rate with its own force taken off again leaves the gas.
  const gas = prepareSpring(weightless, 0).force(sag) - weightless.rate * sag
  if (gas >= load) {
    const allowed = `more than the gas carries there (${figure(gas, 'force')})`
    refuseOne('load', 'no-answer', figure(load, 'force'), allowed, 'Check the load and the gas.')
  }
  return { rate: (load - gas) / (sag + preload) }
}
