/** Plan: what is proposed and why, what the sheet says for it, minutes, and the answer. */
import { isServiceId, planSteps, type ServiceId, type Sheet, say, sayMessage } from '@legwork/trade'
import { useState } from 'react'
import { dayAndYear } from '../../figures/moment.ts'
import { Button, LinkButton } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import { ByWhom } from './by-whom.tsx'
import { judgedMeasurements } from './findings.ts'
import { chapterHref } from './job-address.ts'
import { useJobView, useWriting } from './job-view.tsx'
import { proposals } from './proposed.ts'
import { Refused } from './refused.tsx'
import { SheetValues } from './sheet-values.tsx'

function Agreed() {
  const { state, stream } = useJobView()
  const { plan, sheet } = state
  if (!plan) return null
  const no = plan.answer === 'no'
  return (
    <div className="two-columns plan">
      <SideHead place="above" title={say('agree.done')} note={<ByWhom made={plan} />}>
        <ul className="services">
          {plan.services.filter(isServiceId).map((service) => (
            <li key={service} className="row service">
              <b>{say(`service.${service}`)}</b>
            </li>
          ))}
        </ul>
        {plan.declined.filter(isServiceId).map((service) => (
          <p key={service} className="book">
            {say('agree.declined', { what: say(`service.${service}`) })}
          </p>
        ))}
        {no && <p>{say('agree.said-no')}</p>}
        <p className="book" translate="no">
          {say('agree.pinned', {
            when: dayAndYear(plan.at),
            name: sheet?.name ?? '–',
            revision: plan.sheet.revision,
          })}
        </p>
        <p className="minutes">
          <b translate="no">{state.minutesPlanned}</b> {say('agree.minutes-short')} ·{' '}
          {say('agree.steps', { n: state.steps.length })}
        </p>
        <div className="bottom">
          <LinkButton kind="main" arrow="forward" href={chapterHref(stream, no ? 'hand-over' : 'work')}>
            {no ? say('hand.title') : say('agree.to-work')}
          </LinkButton>
        </div>
      </SideHead>
      {sheet && <SheetValues sheet={sheet} services={plan.services} frozen />}
    </div>
  )
}

function Propose({ sheet }: { sheet: Sheet }) {
  const { state, bikeHere, instruments, text } = useJobView()
  const { write, refusal } = useWriting()
  const asked = state.opened?.asked ? text(state.opened.asked) : null
  const proposed = proposals(state, sheet, judgedMeasurements(state.measured, sheet, instruments, 'received'), asked)
  const [picked, setPicked] = useState<readonly ServiceId[]>(() =>
    proposed.filter((one) => one.wanted).map((one) => one.service),
  )
  const [by, setBy] = useState<'rider' | 'workshop'>(state.opened?.rider ? 'rider' : 'workshop')
  const all = proposed.map((one) => one.service)
  const declined = all.filter(
    (service) => !picked.includes(service) && proposed.find((one) => one.service === service)?.wanted,
  )
  const steps = picked.length > 0 ? planSteps(picked, sheet, { alone: !bikeHere }) : []
  const minutes = steps.reduce((sum, step) => sum + step.minutes, 0)
  const agree = (answer: 'yes' | 'no' | 'partly') =>
    write('plan-agreed', {
      services: answer === 'no' ? [] : [...picked],
      sheet: { id: sheet.id, revision: sheet.revision },
      steps: answer === 'no' ? [] : [...steps],
      answer,
      declined: answer === 'no' ? [...all.filter((service) => picked.includes(service))] : [...declined],
      answeredBy: by,
    })
  return (
    <div className="two-columns plan">
      <div>
        <SideHead place="above" title={say('agree.title')}>
          {proposed.map(({ service, reason }) => (
            <TickBox
              key={service}
              label={say(`service.${service}`)}
              detail={<span translate="no">{sayMessage(reason)}</span>}
              ticked={picked.includes(service)}
              onTick={(on) =>
                setPicked(
                  on
                    ? all.filter((one) => one === service || picked.includes(one))
                    : picked.filter((one) => one !== service),
                )
              }
            />
          ))}
          <p className="minutes">
            <b translate="no">{minutes}</b> {say('agree.minutes-short')} · {say('agree.steps', { n: steps.length })}
          </p>
        </SideHead>
        <SideHead place="above" title={say('agree.answer')}>
          <Choice
            label={say('agree.answer.by')}
            options={(['rider', 'workshop'] as const).map((value) => ({ value, label: say(`agree.by.${value}`) }))}
            value={by}
            onChange={setBy}
          />
          <div className="acts answers">
            <Button kind="second" onPress={() => void agree('no')}>
              {say('agree.no')}
            </Button>
            <Button kind="main" onPress={() => void agree(declined.length > 0 ? 'partly' : 'yes')}>
              {declined.length > 0 ? say('agree.partly') : say('agree.yes')}
            </Button>
          </div>
          <Refused refusal={refusal} />
        </SideHead>
      </div>
      <SheetValues sheet={sheet} services={picked} frozen={false} />
    </div>
  )
}

export function Plan() {
  const { state, sheet } = useJobView()
  if (state.plan) return <Agreed />
  if (!sheet) return <p>{say('value.sheet')}</p>
  if (sheet.kind !== 'fork-air' && sheet.kind !== 'fork-coil') return <p>{say('page.kind-not-covered')}</p>
  return <Propose sheet={sheet} />
}
