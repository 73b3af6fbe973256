/** A gate that may be passed: by the owner or a technician, with a reason that is printed on the hand-over page. */
import { type GateId, isWaivable, isWordKey, say, sayMessage } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { useNeededText } from '../../ui/use-needed-text.ts'
import { mayDecide, useJobView, useWriting } from './job-view.tsx'
import { WhyRefused } from './why-refused.tsx'

export function Waive({ gate }: { gate: GateId }) {
  const { keepText, hands, state } = useJobView()
  const { write, refusal } = useWriting()
  const [asks, setAsks] = useState(false)
  const why = useNeededText(say('work.waive.reason.missing'))
  const title = `gate.${gate}`
  const passed = state.waivers.some((one) => one.gate === gate)
  if (!isWaivable(gate) || !mayDecide(hands) || passed || state.stopped) return null
  if (!asks)
    return (
      <Button kind="second" size="row" onPress={() => setAsks(true)}>
        {say('work.waive')}
      </Button>
    )
  return (
    <>
      <form
        className="keep-line"
        onSubmit={async (event) => {
          event.preventDefault()
          const reason = why.take()
          if (reason !== null) await write('gate-waived', { gate, reason: await keepText(reason) })
        }}
      >
        <TextField label={say('work.waive.reason')} {...why.field} />
        <Button kind="second" type="submit">
          {say('work.waive.act', { gate: isWordKey(title) ? sayMessage({ key: title, params: {} }) : gate })}
        </Button>
      </form>
      <div role="alert">{refusal && <WhyRefused refusal={refusal} />}</div>
    </>
  )
}
