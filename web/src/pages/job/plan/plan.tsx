/** Plan: what is proposed and why, what the sheet says for it, what is laid out, minutes, price, and the answer. */
import { planSteps, type ServiceId, type Sheet, say, sayMessage } from '@legwork/trade'
import { useState } from 'react'
import { BottomLine } from '../../../ui/bottom-line.tsx'
import { Button } from '../../../ui/button.tsx'
import { SideHead } from '../../../ui/ledger.tsx'
import { TickBox } from '../../../ui/tick-box.tsx'
import { useJobView, useWriting } from '../job-view.tsx'
import { Refused } from '../refused.tsx'
import { Agreed } from './plan-agreed.tsx'
import { overSpend, PlanAnswer, type PlanAnswerDraft } from './plan-answer.tsx'
import { PlanParts } from './plan-parts.tsx'
import { Reasons } from './plan-reasons.tsx'
import { SheetValues } from './sheet-values.tsx'
import { useProposals } from './use-proposals.ts'

type Answer = 'yes' | 'no' | 'partly'

function Propose({ sheet }: { sheet: Sheet }) {
  const { state, bikeHere, home } = useJobView()
  const { write, refusal } = useWriting()
  const proposed = useProposals()
  const [picked, setPicked] = useState<readonly ServiceId[]>(() =>
    proposed.filter((one) => one.wanted).map((one) => one.service),
  )
  const [given, setGiven] = useState<PlanAnswerDraft>({ by: 'rider', price: null })
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
  const partly = declined.length > 0
  // The workshop answers for the rider only within what may be spent.
  const may = home || overSpend(given, state.opened?.spendAllowed ?? null) === null
  const agree = (answer: Answer) =>
    void write('plan-agreed', {
      services: answer === 'no' ? [] : [...picked],
      sheet: { id: sheet.id, revision: sheet.revision },
      steps: answer === 'no' ? [] : [...steps],
      answer,
      declined: answer === 'no' ? all.filter((one) => picked.includes(one) || declined.includes(one)) : [...declined],
      answeredBy: home ? 'workshop' : given.by,
      ...(given.price === null ? {} : { price: given.price }),
    })
  return (
    <>
      <div className="two-columns plan">
        <div>
          <SideHead place="above" title={say('agree.title')}>
            {proposed.map(({ service, reasons }) => (
              <TickBox
                key={service}
                label={say(`service.${service}`)}
                detail={
                  <>
                    <Reasons reasons={reasons.map(sayMessage)} /> {say('agree.adds', { n: adds(service) })}
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
          <PlanAnswer given={given} onGiven={setGiven} />
          <Refused refusal={refusal} />
        </div>
        <div>
          <SheetValues sheet={sheet} services={picked} frozen={false} />
          <PlanParts steps={steps} sheet={sheet} />
        </div>
      </div>
      <BottomLine>
        <Button kind="second" onPress={() => agree('no')}>
          {say(home ? 'agree.not-now' : 'agree.no')}
        </Button>
        {picked.length > 0 && may && (
          <Button kind="main" onPress={() => agree(partly ? 'partly' : 'yes')}>
            {say(home ? 'agree.do-it' : partly ? 'agree.partly' : 'agree.yes')}
          </Button>
        )}
      </BottomLine>
    </>
  )
}

export function Plan() {
  const { state, sheet } = useJobView()
  if (state.plan) return <Agreed />
  if (!sheet) return <p>{say('value.sheet')}</p>
  if (sheet.kind !== 'fork-air' && sheet.kind !== 'fork-coil') return <p>{say('page.kind-not-covered')}</p>
  return <Propose sheet={sheet} />
}
