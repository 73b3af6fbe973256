/** Fields for what a step asks beside its own reading, and what was written there. */
import { judgeMeasured, type Leg, type StepState, say, sayMessage } from '@legwork/trade'
import { useJobView } from '../job-view.tsx'
import { ReadingField, Shown } from '../readings.tsx'
import { extrasOf, type StepExtra } from './step-extras.ts'
import type { TickDraft } from './ticking.ts'

interface FieldsProps {
  step: StepState
  draft: TickDraft
  setDraft: (draft: TickDraft) => void
}

export function StepExtraFields({ step, draft, setDraft }: FieldsProps) {
  const { sheet } = useJobView()
  // Over its limit is said at once; where there is none, nobody judges.
  const judge =
    ({ what }: StepExtra) =>
    (value: number) =>
      judgeMeasured(what, value, sheet).verdict === 'fail' ? say('work.read.over') : null
  return (
    <>
      {extrasOf(step).map((extra) => (
        <ReadingField
          key={extra.what}
          label={sayMessage(extra.label)}
          measure={extra.measure}
          fine={extra.fine ?? false}
          value={draft.also[extra.what] ?? null}
          judge={judge(extra)}
          onChange={(value) => setDraft({ ...draft, also: { ...draft.also, [extra.what]: value } })}
        />
      ))}
    </>
  )
}

/** What was written at a step that is ticked; at its first place. */
export function StepExtrasWritten({ step, place }: { step: StepState; place: Leg | 'once' }) {
  const { state } = useJobView()
  if (place !== (step.legs?.[0] ?? 'once')) return null
  return extrasOf(step).map(({ what, label, fine }) => {
    const written = state.measured.findLast((one) => one.what === what && one.phase === 'during')
    return (
      written && (
        <p key={what} className="book written">
          {sayMessage(label)}{' '}
          <Shown value={written.reading.value} measure={written.reading.measure} fine={fine ?? false} hand />
        </p>
      )
    )
  })
}
