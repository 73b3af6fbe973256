/** A job as its papers print it: figures in the measures of whoever asks, each with where it comes from. */
import { formatQuantity } from '@legwork/engine'
import { type Digest, dueFrom, intervals, isServiceId, say, sayMessage } from '@legwork/trade'
import type { DueService } from '../papers/due-calendar.ts'
import type { HandOverPage } from '../papers/hand-over-page-data.ts'
import type { Label } from '../papers/label.ts'
import type { Notice } from '../papers/notice.ts'
import { drawingOf } from './fork-on-paper.ts'
import { day, type JobOnPaper, nameOf, pressureIn, riderOf, unitLine, unitOf } from './job-on-paper.ts'
import { settingsOf } from './settings-on-paper.ts'
import { Trouble } from './trouble.ts'
import { beforeAfterOf, doneOf, foundOf, holdsAirOf, pouredInto } from './work-on-paper.ts'

function nextOf(job: JobOnPaper): { service: string; hours: string; date: string; day: string | null } | null {
  if (!job.state.plan || job.state.plan.answer === 'no') return null
  const { low, high } = intervals['lower-legs']
  const hoursPerWeek = riderOf(job)?.hoursPerWeek ?? null
  const from = (job.state.handedOver?.at ?? job.now).slice(0, 10)
  const due = hoursPerWeek ? dueFrom({ service: 'lower-legs', hoursPerWeek, from }) : null
  return {
    service: say('service.lower-legs'),
    hours: say('paper.hours', { low, high }),
    date: due ? say('paper.date', { early: day(due.early), late: day(due.late) }) : say('paper.no-date'),
    day: due?.date ?? null,
  }
}

/** With kit, as the set-up reckoned with it; before a set-up, as the register has it. */
function riderMassOf(job: JobOnPaper): string | null {
  const mass = job.state.setUp?.riderMass ?? riderOf(job)?.mass ?? null
  return mass === null ? null : formatQuantity(mass, 'kg')
}

export function handOverPageOf(job: JobOnPaper): HandOverPage {
  const { state } = job
  const { handedOver, opened, plan, sag, setting, sheet } = state
  const next = nextOf(job)
  const notKnown = Object.entries(state.snapshot).flatMap(([item, kept]) =>
    kept.notKnownBecause
      ? [
          say('paper.not-known', {
            item: say(`snapshot.${item as 'length'}`), // the keys of a snapshot are its items
            reason: job.text(kept.notKnownBecause),
          }),
        ]
      : [],
  )
  return {
    workshop: job.workshop,
    job: job.number,
    date: day(handedOver?.at ?? job.now),
    handedOverBy: handedOver ? nameOf(job, handedOver.person) : '–',
    rider: riderOf(job)?.name ?? null,
    riderMass: riderMassOf(job),
    unit: unitLine(job),
    asked: opened?.asked ? job.text(opened.asked) : null,
    settings: settingsOf(job),
    drawing: sheet
      ? drawingOf(sheet, {
          spacers: setting?.spacers ?? 0,
          sag: sag ? (sag.fromAbove + sag.fromBelow) / 2 : null,
          oil: { left: pouredInto(state, 'left'), right: pouredInto(state, 'right') },
        })
      : null,
    found: foundOf(job),
    done: doneOf(job),
    beforeAfter: beforeAfterOf(job),
    holdsAir: holdsAirOf(job),
    next,
    beforeYouRide: [
      ...(sheet?.kind.startsWith('shock')
        ? [say('paper.check.shock-bolts'), say('paper.check.shock-clear')]
        : [say('paper.check.axle'), say('paper.check.brake')]),
      ...(setting ? [say('paper.check.pressure', { pressure: pressureIn(job, setting.pressure) })] : []),
    ],
    declined: (plan?.declined ?? []).filter(isServiceId).map((service) => say(`service.${service}`)),
    waivers: state.waivers.map((one) =>
      say('paper.waived', { gate: one.gate, name: nameOf(job, one.person), reason: job.text(one.reason) }),
    ),
    notes: notKnown,
    carriedOver: state.carriedOver,
    cautions: [
      say('paper.caution.pump'),
      ...(sheet?.maxPressure
        ? [say('paper.caution.maximum', { maximum: pressureIn(job, sheet.maxPressure.value) })]
        : []),
      say('paper.caution.sheet'),
    ],
    receivedBy: handedOver ? { name: job.text(handedOver.receivedBy), time: day(handedOver.at) } : null,
    address: job.address,
  }
}

export function labelOf(job: JobOnPaper): Label {
  const { setting } = job.state
  return {
    job: job.number,
    date: day(job.state.handedOver?.at ?? job.now),
    pressure: setting
      ? `${pressureIn(job, setting.pressure)} ${say('paper.pressure.detail-plain', { temperature: formatQuantity(setting.temperature, job.measures.temperature) })}`
      : null,
    lines: settingsOf(job)
      .filter((figure) => figure.place !== 'pressure' && figure.place !== 'bath-oil')
      .map((figure) => say(`paper.short.${figure.place}`, { figure: figure.figure })),
    next: nextOf(job)?.hours ?? null,
    address: job.address,
  }
}

/**
 * @param photoOf  the bytes of a photo, null where it is not in the shop's book
 * @throws Trouble 404 where the job is not stopped
 */
export async function noticeOf(
  job: JobOnPaper,
  photoOf: (digest: Digest) => Promise<Uint8Array | null>,
): Promise<Notice> {
  const { state } = job
  const condemned = Object.entries(state.chassis).filter(([, part]) => part.verdict === 'condemned')
  if (!state.stopped && condemned.length === 0)
    throw new Trouble(404, 'No notice', [
      {
        field: 'stream',
        code: 'job.not-stopped',
        came: job.number,
        allowed: 'a stopped job',
        next: 'Print the hand-over page.',
      },
    ])
  const first = condemned[0]?.[1]
  return {
    workshop: job.workshop,
    job: job.number,
    date: day(first?.at ?? job.now),
    unit: unitLine(job),
    rider: riderOf(job)?.name ?? null,
    found: [
      ...condemned.map(
        ([part, { found }]) => `${say(`part.${part as 'crown'}`)}: ${found ? job.text(found) : say('part.condemned')}`,
      ), // the keys of a chassis are its parts
      ...(state.stopped ? [sayMessage(state.stopped.because)] : []),
    ],
    photos: await Promise.all(condemned.flatMap(([, part]) => part.photos.map(photoOf))),
    by: first ? nameOf(job, first.person) : '–',
  }
}

/** @throws Trouble 404 where no date can be worked out */
export function dueOf(job: JobOnPaper): DueService {
  const next = nextOf(job)
  const unit = unitOf(job)
  if (!next?.day || !unit)
    throw new Trouble(404, 'No date', [
      {
        field: 'hoursPerWeek',
        code: 'due.no-hours',
        came: 'nothing',
        allowed: 'the rider’s hours a week',
        next: 'Ask the rider and write it into the register.',
      },
    ])
  const { service, hours } = next
  return { unitId: unit.id, unit: unitLine(job), service, hours, date: next.day, address: job.address }
}
