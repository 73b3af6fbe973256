import { figure } from '../quantities/kinds.ts'
import type { Metre, Newton, NewtonMetre, Pascal, SquareMetre } from '../quantities/si.ts'
import { type Found, pairWithin, refuse, refuseOne, stopAt, within, withinIfGiven } from '../refusal/found.ts'
import { checkThread, stressArea, stressDiameter } from './thread.ts'

export interface BoltQuestion {
  readonly torque: NewtonMetre
  readonly diameter: Metre
  readonly pitch: Metre
  /** Hole along the axis; 0 by default. */
  readonly bore?: Metre
  /** K as [low, high]; 0.15 … 0.25 by default. */
  readonly nutFactor?: readonly [number, number]
  readonly yield?: Pascal
}

export interface Bolt {
  /** [low, high]: the high factor gives the low force. */
  clampForce: [Newton, Newton]
  /** The bore taken off. */
  stressArea: SquareMetre
  stress: [Pascal, Pascal]
  misesStress: [Pascal, Pascal]
  /** Of the von Mises stress; from 0.7 on the fastener may stretch. */
  shareOfYield?: [number, number]
}

function checkFactor(found: Found, factor: readonly [number, number]): Found {
  const next = 'Give K as [low, high]: 0.15 oiled to 0.25 dry.'
  if (factor.length !== 2)
    return refuse(found, 'nutFactor', 'wrong-count', `${String(factor.length)} numbers`, '[low, high]', next)
  return pairWithin(found, '', ['nutFactor[0]', 'nutFactor[1]'], factor, 'number', 0.05, 1, next)
}

/**
 * A tightened bolt: clamp T/(K·d); σ = F/A_s; τ = (T/2)·(d_s/2)/(π/32·(d_s⁴ − bore⁴)); σ_v = √(σ² + 3τ²).
 *
 * Half of the torque is taken as twisting the thread; the rest is lost under the head.
 *
 * @param question  torque [N·m], thread and bore [m], K [-], yield strength [Pa]
 * @returns clamp [N], stress area [m²], stresses [Pa] as [low, high]
 * @throws Refusal naming every field that can't be
 * @source T = K·D·F e.g. NASA RP-1228 (Barrett 1990); stress area ISO 898-1
 * @example bolt({ torque: 16, diameter: 0.008, pitch: 0.00125, nutFactor: [0.2, 0.2] }).clampForce // [10000, 10000]
 */
export function bolt(question: BoltQuestion): Bolt {
  const { torque, diameter, pitch, bore = 0, nutFactor = [0.15, 0.25] } = question
  let found = within(null, '', 'torque', torque, 'torque', 0.01, 1000, 'Take it from the sheet.')
  found = checkThread(found, diameter, pitch)
  found = within(found, '', 'bore', bore, 'length', 0, 0.09, 'Measure the hole along the axis.')
  found = withinIfGiven(
    found,
    '',
    'yield',
    question.yield,
    'stress',
    1e7,
    3e9,
    'Give the yield strength, like "640 MPa".',
  )
  stopAt(checkFactor(found, nutFactor))
  const solid = stressDiameter(diameter, pitch)
  if (bore >= solid * 0.98) {
    const allowed = `clearly smaller than the thread's core (${figure(solid, 'length')})`
    refuseOne('bore', 'does-not-fit', figure(bore, 'length'), allowed, 'Measure the hole along the axis.')
  }
  const area = stressArea(diameter, pitch) - (Math.PI / 4) * bore ** 2
  const twist = ((torque / 2) * (solid / 2)) / ((Math.PI / 32) * (solid ** 4 - bore ** 4))
  const clampForce: Bolt['clampForce'] = [torque / (nutFactor[1] * diameter), torque / (nutFactor[0] * diameter)]
  const stress: Bolt['stress'] = [clampForce[0] / area, clampForce[1] / area]
  const mises = (axial: number) => Math.sqrt(axial ** 2 + 3 * twist ** 2)
  const misesStress: Bolt['misesStress'] = [mises(stress[0]), mises(stress[1])]
  const { yield: strength } = question
  const worked: Bolt = { clampForce, stressArea: area, stress, misesStress }
  if (strength !== undefined) worked.shareOfYield = [misesStress[0] / strength, misesStress[1] / strength]
  return worked
}
