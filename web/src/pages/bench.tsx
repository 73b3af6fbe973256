import {
  chapterOrder,
  chassisParts,
  type Due,
  dueOfUnit,
  type JobState,
  type ServiceId,
  type Stream,
  say,
  sayMessage,
  type Unit,
} from '@legwork/trade'
import { Link, useLocation } from 'wouter'
import { ChapterRule } from '../charts/chapter-rule.tsx'
import { UnitProfile } from '../cutaway/unit-profile.tsx'
import { day } from '../figures/moment.ts'
import { LabelScan } from '../labels/label-scan.tsx'
import { GateMark } from '../marks/gate-mark.tsx'
import { SafetySign } from '../marks/safety-sign.tsx'
import { useJobs, useNewestSheet, useNow, useRegisters, useStation } from '../offline/hooks.tsx'
import { LinkButton } from '../ui/button.tsx'
import { Row, SideHead } from '../ui/ledger.tsx'
import { benchGroupOf, benchGroups } from './bench-groups.ts'
import { BenchHead } from './bench-head.tsx'
import { ShopFrame } from './shop-frame.tsx'
import './bench.css'

/** Why it is stopped, in one line; the whole of it stands on the job's own page. */
function stopSays(state: JobState): string | null {
  if (!state.stopped) return null
  const part = chassisParts.find((one) => state.chassis[one]?.verdict === 'condemned')
  return part ? say('bench.stopped.condemned', { part: say(`part.${part}`) }) : sayMessage(state.stopped.because)
}

/** Where it stands: the chapter and step, or why it stands still. */
function whereItStands(state: JobState): string {
  if (state.waiting?.for) return say(`job.waits.${state.waiting.for}`)
  const chapter = say(`chapter.${state.next.chapter}`)
  return state.next.chapter === 'work' && state.currentStep !== null
    ? say('bench.step', { chapter, step: state.currentStep + 1, count: state.steps.length })
    : chapter
}

/** Half of riders alike are there by the day, eight of ten between the other two. */
function DueLine({ service, due, now, after }: { service: ServiceId; due: Due; now: string; after: boolean }) {
  const over = due.date <= now.slice(0, 10)
  const days = { day: day(due.date), early: day(due.early), late: day(due.late) }
  return (
    <span className="due">
      {after && ' · '}
      {say(`bench.${over ? 'due-since' : 'due'}.${service}`, days)}
    </span>
  )
}

interface BenchRowProps {
  stream: Stream
  state: JobState
  jobs: readonly { state: JobState }[]
}

function BenchRow({ stream, state, jobs }: BenchRowProps) {
  const { units, riders, visits } = useRegisters()
  const now = useNow()
  const { texts } = useStation().store.memory
  const unit = units.find(({ id }) => id === state.opened?.unit)
  const rider = riders.find(({ id }) => id === state.opened?.rider)
  const visit = visits.find(({ id }) => id === state.opened?.visit)
  const newest = useNewestSheet(unit?.sheet)
  const sheet = state.sheet ?? newest
  const rides = rider ?? { hoursPerWeek: null, mass: null }
  const next = unit ? dueOfUnit(jobs, unit.id, rides).find((one) => one.due) : undefined
  const asked = state.opened?.asked ? texts.get(state.opened.asked)?.text : null
  const at = chapterOrder.indexOf(state.next.chapter)
  const blocked = state.next.blocked?.because
  const shut = stopSays(state) ?? (blocked ? sayMessage(blocked) : null)
  return (
    <Row href={`/jobs/${encodeURIComponent(stream)}`} className={state.stopped ? 'bench-row is-stopped' : 'bench-row'}>
      <div className="unit" translate="no">
        {unit && sheet && (
          <UnitProfile
            of={{
              kind: unit.kind,
              body: sheet.body,
              stanchion: sheet.stanchion?.value ?? null,
              stroke: sheet.stroke.value,
            }}
          />
        )}
        <small>{unit?.description}</small>
      </div>
      <div className="who">
        <b>{rider ? <span translate="no">{rider.name}</span> : say('bench.no-rider')}</b>
        <p className="book" translate="no">
          <span className="label">{unit?.label}</span> {asked && <em>“{asked}”</em>}
        </p>
      </div>
      <div className="stand">
        <ChapterRule
          states={chapterOrder.map((_, index) => (index < at ? 'done' : index === at ? 'now' : 'to-come'))}
          {...(shut ? { gateAt: at + 1 } : {})}
        />
        <span>{whereItStands(state)}</span>
        <small className="book">
          {shut ? (
            <>
              {!state.stopped && <GateMark open={false} size={22} />} {shut}
            </>
          ) : (
            visit?.promised && say('bench.promised', { day: day(visit.promised) })
          )}
          {!shut && next?.due && (
            <DueLine service={next.service} due={next.due} now={now} after={Boolean(visit?.promised)} />
          )}
        </small>
      </div>
      <div className="minutes">
        {state.stopped && <SafetySign sign="prohibition" size={46} />}
        {!state.stopped && Math.round(state.minutesLeft) > 0 && (
          <>
            <span translate="no">{Math.round(state.minutesLeft)}</span>
            <small>{say('bench.min-left')}</small>
          </>
        )}
      </div>
    </Row>
  )
}

/** Before the first job: what happens once a unit is on the bench. */
function EmptyBook() {
  return (
    <section className="empty-book">
      <p className="empty">{say('bench.empty')}</p>
      <ol>
        <li>{say('bench.empty.take-in')}</li>
        <li>{say('bench.empty.look')}</li>
        <li>{say('bench.empty.work')}</li>
      </ol>
      <p className="book">
        {say('bench.empty.calculations')} <Link href="/calculations">{say('place.calculations')}</Link>
      </p>
    </section>
  )
}

/** Today: what is on the bench, what waits and for what. */
export function Bench() {
  const jobs = useJobs()
  const here = jobs.flatMap((job) => {
    const group = benchGroupOf(job.state.state)
    return group ? [{ ...job, group }] : []
  })
  const [, go] = useLocation()
  /** To its job that is here, else to its card. */
  const turnTo = (unit: Unit) => {
    const job = here.find(({ state }) => state.opened?.unit === unit.id)
    go(job ? `/jobs/${encodeURIComponent(job.stream)}` : `/units/${unit.id}`)
  }
  const minutes = here
    .filter(({ group, state }) => group === 'on-the-bench' && !state.stopped)
    .reduce((sum, { state }) => sum + state.minutesLeft, 0)
  return (
    <ShopFrame
      place="bench"
      title={say('bench.title')}
      actions={
        <>
          <LabelScan size="main" onUnit={turnTo} />
          <LinkButton kind="main" href="/take-in" arrow="forward">
            {say('bench.take-in')}
          </LinkButton>
        </>
      }
    >
      <BenchHead work={minutes} />
      {here.length === 0 && (jobs.length === 0 ? <EmptyBook /> : <p className="empty">{say('bench.clear')}</p>)}
      {benchGroups.map((group) => {
        const rows = here.filter((job) => job.group === group)
        return (
          rows.length > 0 && (
            <SideHead key={group} title={say(`bench.${group}`)} className={group}>
              {rows.map(({ stream, state }) => (
                <BenchRow key={stream} stream={stream} state={state} jobs={jobs} />
              ))}
            </SideHead>
          )
        )
      })}
    </ShopFrame>
  )
}
