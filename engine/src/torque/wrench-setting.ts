import { figure } from '../quantities/kinds.ts'
import type { Degree, Metre, NewtonMetre } from '../quantities/si.ts'
import { refuseOne, stopAt, within, withinIfGiven } from '../refusal/found.ts'

export interface WrenchQuestion {
  /** At the fastener. */
  readonly wanted: NewtonMetre
  /** From the square to the middle of the grip. */
  readonly wrenchLength: Metre
  /** From the square to the fastener. */
  readonly adapterLength: Metre
  /** 0 in line and longer (default), 90 square off, 180 folded back. */
  readonly adapterAngle?: Degree
}

/**
 * What to set on a torque wrench that turns through an adapter: set = wanted·L/(L + E·cos φ).
 *
 * @param question  wanted [N·m], wrench and adapter [m], angle [°] 0 … 180
 * @returns the setting [N·m]
 * @throws Refusal naming the field; an adapter folded back as long as the wrench has no answer
 * @source lever law; FAA AC 43.13-1B chapter 7 (extension in line), US Army TM 9-254 (at an angle)
 * @example wrenchSetting({ wanted: 5, wrenchLength: 0.2, adapterLength: 0.05 }).set // 4
 */
export function wrenchSetting(question: WrenchQuestion): { set: NewtonMetre } {
  const { wanted, wrenchLength, adapterLength } = question
  const angle = question.adapterAngle ?? 0
  let found = within(null, '', 'wanted', wanted, 'torque', 0.01, 1000, 'Take it from the sheet.')
  found = within(
    found,
    '',
    'wrenchLength',
    wrenchLength,
    'length',
    0.01,
    2,
    'Measure from the square to the middle of the grip.',
  )
  found = within(found, '', 'adapterLength', adapterLength, 'length', 0, 1, 'Measure from the square to the fastener.')
  found = withinIfGiven(
    found,
    '',
    'adapterAngle',
    question.adapterAngle,
    'angle',
    0,
    180,
    '0° in line, 90° square off.',
  )
  stopAt(found)
  const lever = wrenchLength + adapterLength * Math.cos((angle * Math.PI) / 180)
  if (lever < wrenchLength / 10) {
    const allowed = `clearly shorter than the wrench (${figure(wrenchLength, 'length')}) where it is folded back`
    refuseOne(
      'adapterLength',
      'does-not-fit',
      figure(adapterLength, 'length'),
      allowed,
      'Turn the adapter square off: then no correction is needed.',
    )
  }
  return { set: (wanted * wrenchLength) / lever }
}
