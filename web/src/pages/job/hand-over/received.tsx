/** Who takes it home, and the acts that end a job: handed over, or ready to collect. */
import { say, sayMessage } from '@legwork/trade'
import { useState } from 'react'
import { dayAndYear } from '../../../figures/moment.ts'
import { BottomLine } from '../../../ui/bottom-line.tsx'
import { Button } from '../../../ui/button.tsx'
import { TextField } from '../../../ui/field.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { useNeededText } from '../../../ui/use-needed-text.ts'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'

const receivedForm = 'received-by'

/** Who takes it home: the act itself stands on the bottom line. */
export function Received() {
  const { state, home, keepText, text } = useJobView()
  const { write, refusal } = useWriting()
  const name = useNeededText(say('hand.received-by.missing'))
  const [initials, setInitials] = useState('')
  const { handedOver } = state
  if (handedOver)
    return (
      <SideHead place="above" title={say('hand.done', { when: dayAndYear(handedOver.at) })}>
        {!home && <p translate="no">{say('hand.done.to', { name: text(handedOver.receivedBy) ?? '–' })}</p>}
      </SideHead>
    )
  if (home) return null
  const give = async () => {
    const given = name.take()
    if (given === null) return
    const receivedBy = await keepText(given)
    await write('handed-over', { receivedBy, initials: initials.trim() ? await keepText(initials.trim()) : null })
  }
  return (
    <SideHead
      place="above"
      title={say('hand.received-by')}
      note={state.ready ? say('hand.ready.since', { when: dayAndYear(state.ready.at) }) : null}
    >
      <form
        id={receivedForm}
        className="keep-line"
        onSubmit={(event) => {
          event.preventDefault()
          // The act stands on the bottom line: the field that it waits for may be out of sight.
          if (name.field.value.trim() === '') event.currentTarget.querySelector('input')?.focus()
          void give()
        }}
      >
        <TextField label={say('hand.received-by.name')} {...name.field} />
        <TextField label={say('hand.received-by.initials')} value={initials} onChange={setInitials} />
      </form>
      <Refused refusal={refusal} />
    </SideHead>
  )
}

/** Handing over, or that it waits to be collected; at home there is nobody to hand over to. */
export function HandOverActs() {
  const { state, hands, home, keepText } = useJobView()
  const { write, refusal } = useWriting()
  if (state.handedOver || state.calledOff) return null
  const { blocked, chapter } = state.next
  const close = async () => {
    await write('handed-over', { receivedBy: await keepText(hands.name), initials: null })
  }
  return (
    <BottomLine>
      <div>
        {home && <p className="book">{say('hand.home.note')}</p>}
        {blocked && chapter !== 'hand-over' && <p className="book">{sayMessage(blocked.because)}</p>}
        <Refused refusal={refusal} />
      </div>
      {!home && !state.ready && (
        <Button kind="second" onPress={() => void write('ready', { minutes: null })}>
          {say('hand.ready')}
        </Button>
      )}
      {home ? (
        <Button kind="main" arrow="forward" onPress={() => void close()}>
          {say('hand.home.act')}
        </Button>
      ) : (
        <Button kind="main" type="submit" form={receivedForm} arrow="forward">
          {say('hand.act')}
        </Button>
      )}
    </BottomLine>
  )
}
