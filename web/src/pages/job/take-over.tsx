/** Another person picks the job up: the pressure is unknown again until their hands let the air out. */
import { say } from '@legwork/trade'
import { Button } from '../../ui/button.tsx'
import { useJobView, useNameOf, useWriting } from './job-view.tsx'
import { Refused } from './refused.tsx'

export function TakeOver() {
  const { state, hands } = useJobView()
  const nameOf = useNameOf()
  const { write, refusal } = useWriting()
  const from = state.hands
  if (from === null || from === hands.id || state.handedOver || state.calledOff) return null
  return (
    <section className="banner" aria-label={say('take-over.act')}>
      <p className="book">
        <span translate="no">{say('take-over.says', { name: nameOf(from) })}</span>
      </p>
      <Button kind="second" size="row" onPress={() => void write('taken-over', { from })}>
        {say('take-over.act')}
      </Button>
      <Refused refusal={refusal} />
    </section>
  )
}
