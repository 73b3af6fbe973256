/** Later revisions than the plan's: offered, and taken only by agreeing anew. What is done stays done. */
import { planSteps, say } from '@legwork/trade'
import { Button } from '../../../ui/button.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'

export function Newer() {
  const { state, bikeHere } = useJobView()
  const { write, refusal } = useWriting()
  const { plan, newer, sheet } = state
  const current = newer?.sheet ?? sheet
  if (!plan || !newer || !current || state.handedOver || state.calledOff || state.carriedOver) return null
  const { services, answer, declined, answeredBy, price } = plan
  const agree = () =>
    void write('plan-agreed', {
      services,
      sheet: { id: current.id, revision: current.revision },
      steps: [...planSteps(services, current, { alone: !bikeHere })],
      answer,
      declined,
      answeredBy,
      // What was told stays told.
      ...(price === undefined ? {} : { price }),
    })
  return (
    <div>
      <p>
        {newer.sheet && say('agree.newer.sheet', { revision: newer.sheet.revision })}{' '}
        {newer.procedures.length > 0 &&
          say('agree.newer.procedure', { what: newer.procedures.map((one) => say(`service.${one}`)).join(', ') })}
      </p>
      <Button kind="second" onPress={agree}>
        {say('agree.newer.act')}
      </Button>
      <Refused refusal={refusal} />
    </div>
  )
}
