/** A plan as it was agreed: what and why, what was declined, by whom and when, pinned to its sheet. */
import { isServiceId, type ServiceId, say, sayMessage } from '@legwork/trade'
import { clock, dayAndYear } from '../../../figures/moment.ts'
import { BottomLine } from '../../../ui/bottom-line.tsx'
import { LinkButton } from '../../../ui/button.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { chapterHref } from '../job-address.ts'
import { useJobView, useNameOf } from '../job-view.tsx'
import { Newer } from './plan-newer.tsx'
import { PlanParts } from './plan-parts.tsx'
import { Reasons } from './plan-reasons.tsx'
import { SheetValues } from './sheet-values.tsx'
import { useProposals } from './use-proposals.ts'

export function Agreed() {
  const { state, stream, home } = useJobView()
  const nameOf = useNameOf()
  const proposed = useProposals()
  const reasonsOf = (service: ServiceId) =>
    proposed.find((one) => one.service === service)?.reasons.map(sayMessage) ?? []
  const { plan, sheet } = state
  if (!plan) return null
  const no = plan.answer === 'no'
  const when = { name: nameOf(plan.person), day: dayAndYear(plan.at), time: clock(plan.at) }
  return (
    <>
      <div className="two-columns plan">
        <div>
          <SideHead place="above" title={say(no ? 'agree.done.no' : 'agree.done')}>
            {plan.services.filter(isServiceId).map((service) => (
              <ValueRow
                key={service}
                name={<b>{say(`service.${service}`)}</b>}
                note={<Reasons reasons={reasonsOf(service)} />}
              >
                {null}
              </ValueRow>
            ))}
            {no && <p>{say('agree.said-no')}</p>}
            {!no && (
              <p className="minutes">
                <b translate="no">{state.minutesPlanned}</b> {say('agree.minutes-short')} ·{' '}
                {say('agree.steps', { n: state.steps.length })}
              </p>
            )}
          </SideHead>
          {plan.declined.some(isServiceId) && (
            <SideHead place="above" title={say('agree.declined-head')}>
              {plan.declined.filter(isServiceId).map((service) => (
                <ValueRow
                  key={service}
                  name={say(`service.${service}`)}
                  note={<Reasons reasons={reasonsOf(service)} />}
                >
                  {null}
                </ValueRow>
              ))}
            </SideHead>
          )}
          <SideHead place="above" title={say('agree.by-whom')}>
            <p translate="no">{say(home ? 'agree.written' : `agree.answered.${plan.answeredBy}`, when)}</p>
            {plan.price !== undefined && !no && (
              <p translate="no">
                {say('agree.price.told', { price: plan.price })}
                {state.opened?.spendAllowed != null && ` · ${say('agree.spend', { spend: state.opened.spendAllowed })}`}
              </p>
            )}
            <p className="book" translate="no">
              {say('agree.pinned', {
                when: dayAndYear(plan.at),
                name: sheet?.name ?? '–',
                revision: plan.sheet.revision,
              })}
            </p>
            <Newer />
          </SideHead>
        </div>
        <div>
          {sheet && !no && <SheetValues sheet={sheet} services={plan.services} frozen />}
          {sheet && <PlanParts steps={state.steps} sheet={sheet} />}
        </div>
      </div>
      <BottomLine>
        <LinkButton kind="main" arrow="forward" href={chapterHref(stream, no ? 'hand-over' : 'work')}>
          {no ? say('hand.title') : say('agree.to-work')}
        </LinkButton>
      </BottomLine>
    </>
  )
}
