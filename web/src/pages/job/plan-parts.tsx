/** What a plan uses up, as its procedures name it; oil and washers stand beside it, leg by leg. */
import { isStepId, type PlannedStep, procedureSteps, say } from '@legwork/trade'
import { SideHead } from '../../ui/ledger.tsx'

/** Each part once, in the order of the work. */
export function partsOf(steps: readonly PlannedStep[]): readonly string[] {
  const parts = steps.flatMap(({ step }) => (isStepId(step) ? procedureSteps[step].consumables : []))
  return [...new Set(parts)]
}

export function PlanParts({ steps }: { steps: readonly PlannedStep[] }) {
  const parts = partsOf(steps)
  if (parts.length === 0) return null
  return (
    <SideHead place="above" title={say('agree.parts')} note={say('agree.parts.note')}>
      <ul className="parts-list" translate="no">
        {parts.map((part) => (
          <li key={part}>{part}</li>
        ))}
      </ul>
    </SideHead>
  )
}
