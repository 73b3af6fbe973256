/** The caution of a step on this very unit: at the feet it depends on how the leg is fastened. */
import type { Leg } from '../journal/entry.ts'
import type { Sheet } from '../sheets/sheet.ts'
import { type Message, message } from '../words/words.ts'
import { procedureSteps, type StepId } from './procedures.ts'

/**
 * @param leg  the one in hand, or null where the step is done once
 * @example cautionOf('foot-off', sheet, 'left') // how that leg's fastener is tapped
 */
export function cautionOf(step: StepId, sheet: Sheet | null, leg: Leg | null): Message {
  const fixing = leg && procedureSteps[step].byFixing ? sheet?.legs?.[leg].fixing : null
  return fixing ? message(`foot.tap.${fixing}`) : message(`step.${step}.caution`)
}
