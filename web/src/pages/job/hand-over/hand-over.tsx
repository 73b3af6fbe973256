/** Hand over: what goes back on, what it leaves with, papers, and who received it. */
import {
  type GateId,
  isServiceId,
  isWordKey,
  type NextService,
  nextServices,
  type PutBackItem,
  type Sheet,
  type SourcedNumber,
  say,
  sayMessage,
} from '@legwork/trade'
import { dayAndYear } from '../../../figures/moment.ts'
import { SourceMark } from '../../../marks/source-mark.tsx'
import { useNow } from '../../../offline/hooks.tsx'
import { LinkButton } from '../../../ui/button.tsx'
import { SideHead, ValueRow } from '../../../ui/ledger.tsx'
import { TickBox } from '../../../ui/tick-box.tsx'
import { ByWhom } from '../by-whom.tsx'
import { useJobView, useNameOf, useWriting } from '../job-view.tsx'
import { Shown, useShownText } from '../readings.tsx'
import { Refused } from '../refused.tsx'
import { HandOverActs, Received } from './received.tsx'

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

/** What the gate is about: its number says nothing to a rider. */
function gateTitle(gate: GateId): string {
  const key = `gate.${gate}`
  // Titles of gates have no parameters.
  return isWordKey(key) ? sayMessage({ key, params: {} }) : gate
}

function LeavesWith() {
  const { state, text } = useJobView()
  const nameOf = useNameOf()
  const shown = useShownText()
  const { setting, plan, waivers } = state
  const coil = state.sheet?.springKind === 'coil'
  return (
    <SideHead place="above" title={say('hand.setting')}>
      {setting ? (
        <ValueRow
          name={<ByWhom made={setting} />}
          note={coil ? null : say('hand.at', { temperature: shown(setting.temperature, 'K') })}
        >
          {coil ? say('hand.setting.coil') : <Shown value={setting.pressure} measure="Pa" size="row" />}
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
                {say('hand.waived.says', {
                  gate: gateTitle(one.gate),
                  name: nameOf(one.person),
                  reason: text(one.reason) ?? '–',
                })}
              </p>
            ))}
      </ValueRow>
    </SideHead>
  )
}

/** What comes round again after this job. */
function useComing(): NextService[] {
  const { rider, state } = useJobView()
  const now = useNow()
  const mass = state.setUp?.riderMass ?? rider?.mass ?? null
  const from = (state.handedOver?.at ?? now).slice(0, 10)
  return nextServices(state, { hoursPerWeek: rider?.hoursPerWeek ?? null, mass }, from)
}

function NextDue() {
  const coming = useComing()
  return (
    <SideHead place="above" title={say('hand.next-due')}>
      {coming.length === 0 && <p className="book">{say('hand.next-due.none')}</p>}
      {coming.map(({ service, hours, due, conditions }) => (
        <ValueRow
          key={service}
          name={
            <>
              <SourceMark kind={due?.source ?? 'common-practice'} /> {say(`service.${service}`)}
            </>
          }
          note={
            <>
              {due ? say('hand.next-due.date', { date: dayAndYear(due.date) }) : say('hand.next-due.no-hours')}
              {conditions.includes('over-95-kg') && `; ${say('hand.next-due.over-95-kg')}`}
            </>
          }
        >
          {say('hand.next-due.hours', hours)}
        </ValueRow>
      ))}
    </SideHead>
  )
}

function Papers() {
  const { paperHref, sent } = useJobView()
  const dated = useComing().some(({ due }) => due)
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
        {dated && (
          <LinkButton kind="second" size="row" href={paperHref('due.ics')}>
            {say('hand.ics')}
          </LinkButton>
        )}
      </div>
    </SideHead>
  )
}

/** The same on the page that is printed. */
const checksOf = {
  fork: ['hand.check.axle', 'hand.check.brake'],
  shock: ['hand.check.shock-bolts', 'hand.check.shock-clear'],
} as const

export function HandOver() {
  const { state } = useJobView()
  const checks = checksOf[state.sheet?.kind.startsWith('shock') ? 'shock' : 'fork']
  const shown = useShownText()
  const coil = state.sheet?.springKind === 'coil'
  return (
    <>
      <div className="two-columns hand-over">
        <div>
          <PutBack />
          <SideHead place="above" title={say('hand.checks')}>
            <ol className="checks">
              {checks.map((check) => (
                <li key={check}>{say(check)}</li>
              ))}
              {state.setting && !coil && (
                <li>{say('hand.check.pressure', { pressure: shown(state.setting.pressure, 'Pa') })}</li>
              )}
            </ol>
            {!coil && <p className="book">{say('hand.pumps')}</p>}
          </SideHead>
        </div>
        <div>
          <LeavesWith />
          <NextDue />
          <Received />
          <Papers />
        </div>
      </div>
      <HandOverActs />
    </>
  )
}
