/** What stops a job: a gate, a person's word, or an entry that does not fit and waits for a decision. */
import { type ChassisPart, chassisParts, say, sayMessage } from '@legwork/trade'
import { clock } from '../../figures/moment.ts'
import { SafetySign } from '../../marks/safety-sign.tsx'
import { useStation, useStationStatus } from '../../offline/hooks.tsx'
import { Button, LinkButton } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { useNeededText } from '../../ui/use-needed-text.ts'
import { mayDecide, useJobView, useNameOf, useWriting } from './job-view.tsx'
import { Refused } from './refused.tsx'

function Decide({ entry, name }: { entry: string; name: string }) {
  const { keepText, hands } = useJobView()
  const { write, refusal } = useWriting()
  const why = useNeededText(say('book.why.missing'))
  if (!mayDecide(hands)) return <p className="book">{say('stop.only-decides', { name: hands.name })}</p>
  const rule = async (ruling: 'stands' | 'struck') => {
    const reason = why.take()
    if (reason !== null) await write('ruled', { entry, ruling, reason: await keepText(reason) })
  }
  return (
    <div className="decide">
      <TextField label={`${say('stop.why')}: ${name}`} {...why.field} />
      <div className="acts">
        <Button kind="second" onPress={() => void rule('stands')}>
          {say('stop.stands')}
        </Button>
        <Button kind="second" onPress={() => void rule('struck')}>
          {say('stop.struck')}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </div>
  )
}

function Lift() {
  const { keepText, hands } = useJobView()
  const { write, refusal } = useWriting()
  const why = useNeededText(say('book.why.missing'))
  if (!mayDecide(hands)) return null
  return (
    <form
      onSubmit={async (event) => {
        event.preventDefault()
        const reason = why.take()
        if (reason !== null) await write('stop-lifted', { why: await keepText(reason) })
      }}
    >
      <TextField label={say('stop.why')} hint={say('stop.lift.note')} {...why.field} />
      <Button kind="second" type="submit">
        {say('stop.lift')}
      </Button>
      <Refused refusal={refusal} />
    </form>
  )
}

/** What was found at it: it stands on the notice too. */
function Condemned({ part }: { part: ChassisPart }) {
  const { state, text } = useJobView()
  const nameOf = useNameOf()
  const found = state.chassis[part]
  if (!found) return null
  return (
    <p className="book" translate="no">
      {found.found && `${text(found.found) ?? say('book.text-gone')} `}
      {say('page.by', { name: nameOf(found.person), time: clock(found.at) })}
    </p>
  )
}

/** A person's own stop: in their words. */
function ByHand({ entry }: { entry: string }) {
  const { entries, text } = useJobView()
  const nameOf = useNameOf()
  const stop = entries.find((one) => one.id === entry)
  if (stop?.kind !== 'stopped') return null
  return (
    <p translate="no">
      {text(stop.body.why) ?? say('book.text-gone')}{' '}
      <span className="hand">{say('page.by', { name: nameOf(stop.person), time: clock(stop.madeAt) })}</span>
    </p>
  )
}

export function Stopped() {
  const { state } = useJobView()
  const nameOf = useNameOf()
  const open = state.contested.filter((one) => one.ruling === null)
  if (!state.stopped && open.length === 0) return null
  // A condemned part is not talked away: its line is struck, with a reason, or the unit goes back in parts.
  const condemned = chassisParts.filter((part) => state.chassis[part]?.verdict === 'condemned')
  const mayBeLifted = condemned.length === 0 && (state.basis.stop !== null || state.basis.lateStop !== null)
  return (
    <section className="stopped" aria-label={say('stop.title')}>
      <SafetySign sign="prohibition" size={64} />
      <div>
        <h2>{say('stop.title')}</h2>
        {state.stopped && <p>{sayMessage(state.stopped.because)}</p>}
        {state.stopped?.entry && <ByHand entry={state.stopped.entry} />}
        {condemned.map((part) => (
          <Condemned key={part} part={part} />
        ))}
        {open.map((one) => (
          <div key={one.entry}>
            <h3>{say('stop.contested')}</h3>
            <p className="book">{say('stop.contested.note')}</p>
            <p>
              {sayMessage(one.because)} <span translate="no">{nameOf(one.person)}</span>
            </p>
            <Decide entry={one.entry} name={nameOf(one.person)} />
          </div>
        ))}
        {mayBeLifted && open.length === 0 && !state.handedOver && <Lift />}
        {state.stopped && <Notice />}
      </div>
    </section>
  )
}

/** The written notice: a paper of the server's, so it is there once every line and every photo is. */
function Notice() {
  const { paperHref, sent, stream, unit } = useJobView()
  const { memory } = useStation().store
  const { unsentPhotos } = useStationStatus()
  const waits = unsentPhotos > 0 && memory.unsentPhotos.some((photo) => photo.stream === stream)
  if (!sent || waits) return <p className="book">{say('stop.notice.offline')}</p>
  return (
    <LinkButton
      kind="second"
      size="row"
      href={paperHref('notice.pdf')}
      download={`notice-${unit?.label ?? 'unit'}.pdf`}
    >
      {say('stop.pdf')}
    </LinkButton>
  )
}
