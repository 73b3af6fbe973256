/** The day, and the work on the bench against the hands there are for it. */
import { say } from '@legwork/trade'
import { HandsRule } from '../charts/hands-rule.tsx'
import { day } from '../figures/moment.ts'
import { useHome, useNow, useStation } from '../offline/hooks.tsx'
import { minutesOfHands, usualHands } from './hands-today.ts'

/** What the lower legs take (common practice, no source): room is told in services a bench knows. */
const bathService = 60

export function BenchHead({ work }: { work: number }) {
  const now = useNow()
  const home = useHome()
  const { meta } = useStation().store.memory
  const minutes = Math.round(work)
  const hands = minutesOfHands(meta.bench ?? usualHands, new Date(now))
  const room = Math.floor((hands - minutes) / bathService)
  const words = {
    work: say('bench.work', { n: minutes }),
    hands: say('bench.hands', { n: hands }),
    room: room > 0 ? say('bench.room', { n: room }) : '',
    hour: (n: number) => say('bench.hour', { n }),
  }
  return (
    <div className="bench-head">
      <h1 translate="no">{day(now)}</h1>
      {home ? (
        minutes > 0 && <p>{words.work}</p>
      ) : (
        <>
          <div className="hands-rule">
            <HandsRule
              work={minutes}
              hands={hands}
              words={words}
              label={`${words.work}, ${words.hands}. ${words.room}`}
            />
          </div>
          <p className="hands-words">
            {words.work}
            <br />
            {words.hands}
          </p>
        </>
      )}
    </div>
  )
}
