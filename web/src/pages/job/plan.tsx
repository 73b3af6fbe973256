/** Plan: what is proposed and why, what the sheet says for it, minutes, and the answer. */
import { planSteps, type ServiceId, type Sheet, say, sayMessage } from '@legwork/trade'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { Choice } from '../../ui/choice.tsx'
import { SideHead } from '../../ui/ledger.tsx'
import { TickBox } from '../../ui/tick-box.tsx'
import { judgedMeasurements } from './findings.ts'
import { useJobView, useWriting } from './job-view.tsx'
import { Agreed } from './plan-agreed.tsx'
import { PlanParts } from './plan-parts.tsx'
import { proposals } from './proposed.ts'
import { Refused } from './refused.tsx'
import { SheetValues } from './sheet-values.tsx'
import { useLastService } from './use-last-service.ts'

type Answer = 'yes' | 'no' | 'partly'

interface AnswerFormProps {
  /** Of what was proposed, something is not ticked. */
  partly: boolean
  /** Nothing is ticked. */
  nothing: boolean
  onAnswer: (answer: Answer, by: 'rider' | 'workshop') => void
}

/** At home there is nobody to ask. */
function AnswerForm({ partly, nothing, onAnswer }: AnswerFormProps) {
  const { state, home } = useJobView()
  const [by, setBy] = useState<'rider' | 'workshop'>(state.opened?.rider ? 'rider' : 'workshop')
  const spend = state.opened?.spendAllowed ?? null
  const yes = home ? 'agree.do-it' : partly ? 'agree.partly' : 'agree.yes'
  const answer = (given: Answer) => onAnswer(given, home ? 'workshop' : by)
  return (
    <SideHead place="above" title={say(home ? 'agree.answer.home' : 'agree.answer')}>
      {!home && (
        <Choice
          label={say('agree.answer.by')}
          options={(['rider', 'workshop'] as const).map((value) => ({
            value,
            label: say(`agree.by.${value}`),
            ...(value === 'workshop'
              ? { detail: spend === null ? say('agree.spend.none') : say('agree.spend', { spend }) }
              : {}),
          }))}
          value={by}
          onChange={setBy}
        />
      )}
      <div className="acts answers">
        <Button kind="second" onPress={() => answer('no')}>
          {say(home ? 'agree.not-now' : 'agree.no')}
        </Button>
        {!nothing && (
          <Button kind="main" onPress={() => answer(partly ? 'partly' : 'yes')}>
            {say(yes)}
          </Button>
        )}
      </div>
    </SideHead>
  )
}

function Propose({ sheet }: { sheet: Sheet }) {
  const { state, bikeHere, instruments, text } = useJobView()
  const { write, refusal } = useWriting()
  const asked = state.opened?.asked ? text(state.opened.asked) : null
  const last = useLastService()
  const judged = judgedMeasurements(state.measured, sheet, instruments, 'received')
  const proposed = proposals(state, sheet, judged, asked, last)
  const [picked, setPicked] = useState<readonly ServiceId[]>(() =>
    proposed.filter((one) => one.wanted).map((one) => one.service),
  )
  const all = proposed.map((one) => one.service)
  const declined = all.filter(
    (service) => !picked.includes(service) && proposed.find((one) => one.service === service)?.wanted,
  )
  const stepsOf = (services: readonly ServiceId[]) =>
    services.length > 0 ? planSteps(services, sheet, { alone: !bikeHere }) : []
  const minutesOf = (services: readonly ServiceId[]) => stepsOf(services).reduce((sum, step) => sum + step.minutes, 0)
  const steps = stepsOf(picked)
  /** What a service takes beside the others that are ticked: shared steps are done once. */
  const adds = (service: ServiceId): number => {
    const others = picked.filter((one) => one !== service)
    return minutesOf(all.filter((one) => one === service || others.includes(one))) - minutesOf(others)
  }
  const agree = (answer: Answer, answeredBy: 'rider' | 'workshop') =>
    write('plan-agreed', {
      services: answer === 'no' ? [] : [...picked],
      sheet: { id: sheet.id, revision: sheet.revision },
      steps: answer === 'no' ? [] : [...steps],
      answer,
      declined: answer === 'no' ? all.filter((one) => picked.includes(one) || declined.includes(one)) : [...declined],
      answeredBy,
    })
  return (
    <div className="two-columns plan">
      <div>
        <SideHead place="above" title={say('agree.title')}>
          {proposed.map(({ service, reason }) => (
            <TickBox
              key={service}
              label={say(`service.${service}`)}
              detail={
                <>
                  <span translate="no">{sayMessage(reason)}</span> · {say('agree.adds', { n: adds(service) })}
                </>
              }
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
            <b translate="no">{minutesOf(picked)}</b> {say('agree.minutes-short')} ·{' '}
            {say('agree.steps', { n: steps.length })}
          </p>
        </SideHead>
        <AnswerForm
          partly={declined.length > 0}
          nothing={picked.length === 0}
          onAnswer={(answer, by) => void agree(answer, by)}
        />
        <Refused refusal={refusal} />
      </div>
      <div>
        <SheetValues sheet={sheet} services={picked} frozen={false} />
        <PlanParts steps={steps} />
      </div>
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
