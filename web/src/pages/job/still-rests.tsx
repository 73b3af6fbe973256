/** How long something still rests; where no clock here can tell, it is waited for again by this station alone. */
import { type Rest, say } from '@legwork/trade'
import { useStation } from '../../offline/hooks.tsx'
import { useRest } from '../../offline/use-rest.ts'
import { Button } from '../../ui/button.tsx'
import { useWriting } from './job-view.tsx'
import { Refused } from './refused.tsx'

export function StillRests({ rest }: { rest: Rest }) {
  const { write, refusal } = useWriting()
  const station = useStation()
  const left = useRest(rest)
  if (left === 0) return <p className="book rest">{say(`rest.${rest.kind}.over`)}</p>
  if (left !== null)
    return (
      <p role="timer" className="rest">
        {say(`rest.${rest.kind}.left`, { minutes: Math.ceil(left) })}
      </p>
    )
  const again = () => {
    const until = new Date(Date.parse(station.now()) + rest.wanted * 60_000).toISOString()
    void write('waiting', { for: 'rest', rest: rest.kind, until, why: null })
  }
  return (
    <div className="rest">
      <p>{say('rest.no-clock')}</p>
      <Button kind="second" size="row" onPress={again}>
        {say('rest.again', { minutes: rest.wanted })}
      </Button>
      <Refused refusal={refusal} />
    </div>
  )
}
