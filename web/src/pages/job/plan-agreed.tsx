/** A plan as it was agreed: what and why, what was declined, by whom and when, pinned to its sheet. */
import { isServiceId, type ServiceId, say, sayMessage } from '@legwork/trade'
import { clock, dayAndYear } from '../../figures/moment.ts'
import { LinkButton } from '../../ui/button.tsx'
import { SideHead, ValueRow } from '../../ui/ledger.tsx'
import { judgedMeasurements } from './findings.ts'
import { chapterHref } from './job-address.ts'
import { useJobView, useNameOf } from './job-view.tsx'
import { Newer } from './plan-newer.tsx'
import { PlanParts } from './plan-parts.tsx'
import { proposals } from './proposed.ts'
import { SheetValues } from './sheet-values.tsx'
import { useLastService } from './use-last-service.ts'

/** The reason for each service, as it stood in the book when it was agreed. */
function useReasons(): (service: ServiceId) => string | null {
  const { state, sheet, instruments, text } = useJobView()
  const last = useLastService()
  if (!sheet) return () => null
  const asked = state.opened?.asked ? text(state.opened.asked) : null
  const judged = judgedMeasurements(state.measured, sheet, instruments, 'received')
  const all = proposals(state, sheet, judged, asked, last)
  return (service) => {
    const found = all.find((one) => one.service === service)
    return found ? sayMessage(found.reason) : null
  }
}

export function Agreed() {
  const { state, stream, home } = useJobView()
  const nameOf = useNameOf()
  const reasonOf = useReasons()
  const { plan, sheet } = state
  if (!plan) return null
  const no = plan.answer === 'no'
  const when = { name: nameOf(plan.person), day: dayAndYear(plan.at), time: clock(plan.at) }
  return (
    <div className="two-columns plan">
      <div>
        <SideHead place="above" title={say(no ? 'agree.done.no' : 'agree.done')}>
          {plan.services.filter(isServiceId).map((service) => (
            <ValueRow
              key={service}
              name={<b>{say(`service.${service}`)}</b>}
              note={<span translate="no">{reasonOf(service)}</span>}
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
                note={<span translate="no">{reasonOf(service)}</span>}
              >
                {null}
              </ValueRow>
            ))}
          </SideHead>
        )}
        <SideHead place="above" title={say('agree.by-whom')}>
          <p translate="no">{say(home ? 'agree.written' : `agree.answered.${plan.answeredBy}`, when)}</p>
          <p className="book" translate="no">
            {say('agree.pinned', {
              when: dayAndYear(plan.at),
              name: sheet?.name ?? '–',
              revision: plan.sheet.revision,
            })}
          </p>
          <Newer />
        </SideHead>
        <div className="bottom">
          <LinkButton kind="main" arrow="forward" href={chapterHref(stream, no ? 'hand-over' : 'work')}>
            {no ? say('hand.title') : say('agree.to-work')}
          </LinkButton>
        </div>
      </div>
      <div>
        {sheet && !no && <SheetValues sheet={sheet} services={plan.services} frozen />}
        <PlanParts steps={state.steps} />
      </div>
    </div>
  )
}
