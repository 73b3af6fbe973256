/** Hand over: what goes back on, what it leaves with, papers, and who received it. */
import {
  dueFrom,
  intervals,
  isServiceId,
  type PutBackItem,
  type Sheet,
  type SourcedNumber,
  say,
  sayMessage,
} from '@legwork/trade'
import { useState } from 'react'
import { dayAndYear } from '../../figures/moment.ts'
import { SourceMark } from '../../marks/source-mark.tsx'
import { useNow } from '../../offline/hooks.tsx'
import { Button, LinkButton } from '../../ui/button.tsx'
import { TextField } from '../../ui/field.tsx'
import { SideHead, ValueRow } from '../../ui/ledger.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import { ByWhom } from './by-whom.tsx'
import { useJobView, useNameOf, useWriting } from './job-view.tsx'
import { Shown, useShownText } from './readings.tsx'
import { Refused } from './refused.tsx'

const putBackItems: readonly PutBackItem[] = ['wheel', 'axle', 'caliper', 'cables', 'brake-holds', 'wheel-free']

/** What is torqued to by the sheet as it goes back. */
function torqueOf(sheet: Sheet | null, item: PutBackItem): SourcedNumber | null {
  return item === 'axle' || item === 'caliper' ? (sheet?.torques?.[item] ?? null) : null
}

function PutBackHow({ item }: { item: PutBackItem }) {
  const { state } = useJobView()
  const shown = useShownText()
  if (item === 'brake-holds') return say('hand.brake-dry')
  if (item !== 'axle' && item !== 'caliper') return null
  const torque = torqueOf(state.sheet, item)
  if (!torque) return say('hand.torque.silent')
  return (
    <>
      <SourceMark kind={torque.source.kind} /> {say('hand.torque', { torque: shown(torque.value, 'N·m') })}
    </>
  )
}

function PutBack() {
  const { state } = useJobView()
  const { write, refusal } = useWriting()
  const off = state.steps.some((one) => one.step === 'outside-off')
  const putBack = (item: PutBackItem) => {
    const torque = torqueOf(state.sheet, item)
    const reading = torque && ({ value: torque.value, measure: 'N·m', instrument: null, how: null } as const)
    return write('put-back', { item, reading })
  }
  return (
    <SideHead place="above" title={say('hand.put-back')} note={say('hand.put-back.note')}>
      {off ? (
        putBackItems.map((item) => {
          const done = state.putBack[item]
          return (
            <TickBox
              key={item}
              label={say(`put-back.${item}`)}
              detail={done ? <ByWhom made={done} /> : <PutBackHow item={item} />}
              ticked={Boolean(done)}
              {...(done ? {} : { onTick: () => void putBack(item) })}
            />
          )
        })
      ) : (
        <p className="book">{say('hand.put-back.untouched')}</p>
      )}
      <Refused refusal={refusal} />
    </SideHead>
  )
}

function LeavesWith() {
  const { state, text } = useJobView()
  const nameOf = useNameOf()
  const shown = useShownText()
  const { setting, plan, waivers } = state
  return (
    <SideHead place="above" title={say('hand.setting')}>
      {setting ? (
        <ValueRow
          name={<ByWhom made={setting} />}
          note={say('hand.at', { temperature: shown(setting.temperature, 'K') })}
        >
          <Shown value={setting.pressure} measure="Pa" size="row" />
        </ValueRow>
      ) : (
        <p className="book">{say('hand.setting.none')}</p>
      )}
      <ValueRow name={say('hand.declined')}>
        {plan && plan.declined.length > 0
          ? plan.declined
              .filter(isServiceId)
              .map((service) => say(`service.${service}`))
              .join(', ')
          : say('hand.declined.none')}
      </ValueRow>
      <ValueRow name={say('hand.waived')}>
        {waivers.length === 0
          ? say('hand.waived.none')
          : waivers.map((one) => (
              <p key={one.entry} translate="no">
                {say('hand.waived.says', { gate: one.gate, name: nameOf(one.person), reason: text(one.reason) ?? '–' })}
              </p>
            ))}
      </ValueRow>
    </SideHead>
  )
}

function NextDue() {
  const { rider } = useJobView()
  const now = useNow()
  const { low, high } = intervals['lower-legs']
  const hours = rider?.hoursPerWeek ?? null
  const due = hours ? dueFrom({ service: 'lower-legs', hoursPerWeek: hours, from: now.slice(0, 10) }) : null
  return (
    <SideHead place="above" title={say('hand.next-due')}>
      <p>{say('hand.next-due.hours', { low, high })}</p>
      <p className="book">
        {due ? say('hand.next-due.date', { date: dayAndYear(due.date) }) : say('hand.next-due.no-hours')}
      </p>
    </SideHead>
  )
}

function Papers() {
  const { paperHref, sent } = useJobView()
  if (!sent) return <p className="book">{say('hand.papers.offline')}</p>
  return (
    <SideHead place="above" title={say('hand.papers')}>
      <div className="acts">
        <LinkButton kind="second" size="row" href={paperHref('hand-over.pdf')}>
          {say('hand.page-pdf')}
        </LinkButton>
        <LinkButton kind="second" size="row" href={paperHref('label.pdf')}>
          {say('hand.label-pdf')}
        </LinkButton>
        <LinkButton kind="second" size="row" href={paperHref('due.ics')}>
          {say('hand.ics')}
        </LinkButton>
      </div>
    </SideHead>
  )
}

function Received() {
  const { state, hands, home, keepText, text } = useJobView()
  const { write, refusal } = useWriting()
  const [name, setName] = useState('')
  const [initials, setInitials] = useState('')
  const { handedOver } = state
  if (handedOver)
    return (
      <SideHead place="above" title={say('hand.done', { when: dayAndYear(handedOver.at) })}>
        {!home && <p translate="no">{say('hand.done.to', { name: text(handedOver.receivedBy) ?? '–' })}</p>}
      </SideHead>
    )
  if (home)
    return (
      <SideHead place="above" title={say('hand.home')} note={say('hand.home.note')}>
        <Button
          kind="main"
          arrow="forward"
          onPress={() =>
            void keepText(hands.name).then((receivedBy) => write('handed-over', { receivedBy, initials: null }))
          }
        >
          {say('hand.home.act')}
        </Button>
        <Refused refusal={refusal} />
        {state.next.blocked && state.next.chapter !== 'hand-over' && (
          <p className="book">{sayMessage(state.next.blocked.because)}</p>
        )}
      </SideHead>
    )
  const give = async () => {
    if (name.trim() === '') return
    const receivedBy = await keepText(name.trim())
    await write('handed-over', { receivedBy, initials: initials.trim() ? await keepText(initials.trim()) : null })
  }
  return (
    <SideHead place="above" title={say('hand.received-by')}>
      <form
        className="keep-line"
        onSubmit={(event) => {
          event.preventDefault()
          void give()
        }}
      >
        <TextField label={say('hand.received-by.name')} value={name} onChange={setName} />
        <TextField label={say('hand.received-by.initials')} value={initials} onChange={setInitials} />
        <Button kind="main" type="submit" arrow="forward">
          {say('hand.act')}
        </Button>
      </form>
      <Refused refusal={refusal} />
      {state.next.blocked && state.next.chapter !== 'hand-over' && (
        <p className="book">{sayMessage(state.next.blocked.because)}</p>
      )}
    </SideHead>
  )
}

export function HandOver() {
  const { state } = useJobView()
  const shown = useShownText()
  return (
    <div className="two-columns hand-over">
      <div>
        <PutBack />
        <SideHead place="above" title={say('hand.checks')}>
          <ol className="checks">
            <li>{say('hand.check.axle')}</li>
            <li>{say('hand.check.brake')}</li>
            {state.setting && <li>{say('hand.check.pressure', { pressure: shown(state.setting.pressure, 'Pa') })}</li>}
          </ol>
          <p className="book">{say('hand.pumps')}</p>
        </SideHead>
      </div>
      <div>
        <LeavesWith />
        <NextDue />
        <Received />
        <Papers />
      </div>
    </div>
  )
}
