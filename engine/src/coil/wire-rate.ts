import { figure } from '../quantities/kinds.ts'
import type { Metre, NewtonPerMetre, Pascal } from '../quantities/si.ts'
import { refuseOne, stopAt, within } from '../refusal/found.ts'

export interface WireQuestion {
  readonly wire: Metre
  /** Mean diameter of the coil: outside less one wire. */
  readonly coil: Metre
  /** Active turns. */
  readonly turns: number
  /** 79.3 GPa (steel) by default. */
  readonly shearModulus?: Pascal
}

/**
 * Rate of a helical spring from its wire: k = G·d⁴/(8·D³·N).
 *
 * @param question  wire and mean coil diameter [m], active turns, shear modulus [Pa]
 * @returns rate [N/m]
 * @throws Refusal naming every field that can't be
 * @source e.g. Barton & Fieldhouse, Automotive Chassis Engineering (Springer 2018), p. 213
 * @example wireRate({ wire: 0.0025, coil: 0.02225, turns: 16 }).rate // 2197.0
 */
export function wireRate(question: WireQuestion): { rate: NewtonPerMetre } {
  const { wire, coil, turns, shearModulus = 79.3e9 } = question
  let found = within(null, '', 'wire', wire, 'length', 0.0002, 0.05, 'Measure the wire.')
  found = within(found, '', 'coil', coil, 'length', 0.002, 0.5, 'Measure outside less one wire.')
  found = within(found, '', 'turns', turns, 'number', 0.5, 100, 'Count the turns that move.')
  found = within(
    found,
    '',
    'shearModulus',
    shearModulus,
    'stress',
    1e9,
    2e11,
    'Steel has 79.3 GPa, titanium about 43 GPa.',
  )
  stopAt(found)
  if (wire * 2 >= coil) {
    const allowed = `smaller than half of coil (${figure(coil / 2, 'length')})`
    refuseOne(
      'wire',
      'does-not-fit',
      figure(wire, 'length'),
      allowed,
      'Give the mean diameter of the coil, not the inside.',
    )
  }
  return { rate: (shearModulus * wire ** 4) / (8 * coil ** 3 * turns) }
}
