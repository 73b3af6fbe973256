/** What is measured at a step beside its own reading. */
import { isStepId, type Message, message, type Reading, type StepId, type StepState } from '@legwork/trade'

export interface StepExtra {
  /** As the book names it. */
  what: string
  measure: Reading['measure']
  /** In hundredths of a millimetre. */
  fine?: boolean
  label: Message
}

const extras: Readonly<Partial<Record<StepId, readonly StepExtra[]>>> = {
  'seals-out': [
    { what: 'wiper-outside-diameter', measure: 'm', fine: true, label: message('work.read.wiper-outside') },
  ],
  'bore-inspect': [{ what: 'air-shaft-run-out', measure: 'm', fine: true, label: message('work.read.run-out') }],
  'fill-target': [{ what: 'fill-temperature', measure: 'K', label: message('work.read.fill-temperature') }],
}

export const extrasOf = ({ step }: StepState): readonly StepExtra[] => (isStepId(step) ? (extras[step] ?? []) : [])
