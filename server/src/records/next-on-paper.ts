/** What comes round again, and what was declined. */
import { isServiceId, nextServices, say } from '@legwork/trade'
import type { DueService } from '../papers/due-calendar.ts'
import type { RuledRow } from '../papers/ruled-section.ts'
import { day, type JobOnPaper, massOf, riderOf, unitLine, unitOf } from './job-on-paper.ts'
import { Trouble } from './trouble.ts'

const comingOf = (job: JobOnPaper) =>
  nextServices(
    job.state,
    { hoursPerWeek: riderOf(job)?.hoursPerWeek ?? null, mass: massOf(job) },
    (job.state.handedOver?.at ?? job.now).slice(0, 10),
  )

export function nextOf(job: JobOnPaper): RuledRow[] {
  return comingOf(job).map(({ service, hours, due, conditions }) => {
    const date = due ? say('paper.date', { early: day(due.early), late: day(due.late) }) : say('paper.no-date')
    const what = say('paper.next', { service: say(`service.${service}`), hours: say('paper.hours', hours), date })
    const sooner = conditions.includes('over-95-kg') ? ` ${say('paper.next.over-95-kg')}` : ''
    return { what: `${what}${sooner}`, source: due?.source ?? 'common-practice' }
  })
}

/** The soonest, as the label says it. */
export function nextHoursOf(job: JobOnPaper): string | null {
  const [first] = comingOf(job)
  return first ? say('paper.label.next', { hours: say('paper.hours', first.hours) }) : null
}

/** At home nobody says no: it is left. */
export function declinedOf(job: JobOnPaper): string[] {
  const { plan } = job.state
  if (!plan) return []
  const services = plan.answer === 'no' ? [...plan.services, ...plan.declined] : plan.declined
  return [...new Set(services)].filter(isServiceId).map((id) => {
    const service = say(`service.${id}`)
    if (job.registers.workshop.home) return say('paper.left-undone', { service })
    return say(`paper.said-no.${plan.answeredBy}`, { service, date: day(plan.at) })
  })
}

/** @throws Trouble 404 where no date can be worked out */
export function duesOf(job: JobOnPaper): DueService[] {
  const unit = unitOf(job)
  const dues = comingOf(job).flatMap(({ service, hours, due }): DueService[] =>
    unit && due
      ? [
          {
            unitId: unit.id,
            unit: unitLine(job),
            serviceId: service,
            service: say(`service.${service}`),
            hours: say('paper.hours', hours),
            date: due.date,
            address: job.address,
          },
        ]
      : [],
  )
  if (dues.length > 0) return dues
  throw new Trouble(404, 'No date', [
    {
      field: 'hoursPerWeek',
      code: 'due.no-hours',
      came: 'nothing',
      allowed: 'the rider’s hours a week',
      next: 'Ask the rider and write it into the register.',
    },
  ])
}
