/** A stopped job: why, both versions of what is contested, and the decision with its reason. */
import { type Contested, say, sayMessage } from '@legwork/trade'
import { SafetySign } from '../../marks/safety-sign.tsx'
import { ByWhom } from './by-whom.tsx'
import { useEntryText } from './entry-says.ts'
import { mayDecide, useJobView, useNameOf, useWriting } from './job-view.tsx'
import { ReasonForm } from './reason-form.tsx'
import { Refused } from './refused.tsx'

function Decide({ contested }: { contested: Contested }) {
  const { entries, hands } = useJobView()
  const { write, refusal } = useWriting()
  const textOf = useEntryText()
  const entry = entries.find((one) => one.id === contested.entry)
  const ruled = (ruling: 'stands' | 'struck') => (reason: string) =>
    write('ruled', { entry: contested.entry, ruling, reason })
  return (
    <section className="contested" aria-label={say('stop.contested')}>
      <h2>{say('stop.contested')}</h2>
      <p className="book">{say('stop.contested.note')}</p>
      <dl>
        <div>
          <dt>{say('stop.entered')}</dt>
          <dd>
            <b translate="no">{entry ? textOf(entry) : '–'}</b>
            <small>
              <ByWhom made={contested} />
            </small>
          </dd>
        </div>
        <div>
          <dt>{say('stop.in-the-way')}</dt>
          <dd>
            <b>{sayMessage(contested.because)}</b>
          </dd>
        </div>
      </dl>
      {mayDecide(hands) ? (
        <ReasonForm
          label={say('stop.why')}
          acts={[
            { name: say('stop.stands'), act: ruled('stands') },
            { name: say('stop.struck'), act: ruled('struck') },
          ]}
        />
      ) : (
        <p className="book">{say('stop.only-decides', { name: hands.name })}</p>
      )}
      <Refused refusal={refusal} />
    </section>
  )
}

export function Stopped() {
  const { state, stream, hands, text } = useJobView()
  const nameOf = useNameOf()
  const { write, refusal } = useWriting()
  const { stopped } = state
  if (!stopped) return null
  const contested = state.contested.find((one) => one.entry === stopped.entry && one.ruling === null)
  if (contested) return <Decide contested={contested} />
  const id = stream.slice('job:'.length)
  const condemned = Object.values(state.chassis).find((found) => found.entry === stopped.entry)
  return (
    <section className="stopped" aria-label={say('stop.title')}>
      <SafetySign sign="prohibition" size={64} />
      <div>
        <h2>{say('stop.title')}</h2>
        <p>{sayMessage(stopped.because)}</p>
        {condemned && (
          <p className="book" translate="no">
            {condemned.found ? text(condemned.found) : ''} {nameOf(condemned.person)}
          </p>
        )}
        <p>
          <NoticeLink job={id} />
        </p>
        {!condemned &&
          (mayDecide(hands) ? (
            <ReasonForm
              label={say('stop.why')}
              hint={say('stop.lift.note')}
              acts={[{ name: say('stop.lift'), act: (why) => write('stop-lifted', { why }) }]}
            />
          ) : (
            <p className="book">{say('stop.only-decides', { name: hands.name })}</p>
          ))}
        <Refused refusal={refusal} />
      </div>
    </section>
  )
}

function NoticeLink({ job }: { job: string }) {
  const { paperHref } = useJobView()
  return (
    <a href={paperHref(job, 'notice.pdf')} target="_blank" rel="noreferrer">
      {say('stop.pdf')}
    </a>
  )
}
