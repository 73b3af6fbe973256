/** A job as its papers print it: figures in the measures of whoever asks, each with where it comes from. */
import { formatQuantity } from '@legwork/engine'
import { type Digest, isWordKey, say, sayMessage } from '@legwork/trade'
import type { HandOverPage } from '../papers/hand-over-page-data.ts'
import type { Label } from '../papers/label.ts'
import type { Notice } from '../papers/notice.ts'
import { elsewhereOf } from './elsewhere-on-paper.ts'
import { drawingOf } from './fork-on-paper.ts'
import { holdsAirOf } from './holds-air-on-paper.ts'
import { day, type JobOnPaper, massOf, nameOf, pressureIn, riderOf, unitLine, unitOf } from './job-on-paper.ts'
import { keptOf } from './marks-on-paper.ts'
import { declinedOf, nextHoursOf, nextOf } from './next-on-paper.ts'
import { settingsOf } from './settings-on-paper.ts'
import { Trouble } from './trouble.ts'
import { beforeAfterOf, doneOf, foundOf, handsOf, limitsOf, pouredInto } from './work-on-paper.ts'

/** Mass with kit and posture, as far as they are known. */
function riderKitOf(job: JobOnPaper): string | null {
  const mass = massOf(job)
  const posture = riderOf(job)?.posture ?? null
  const key = `paper.posture.${posture}`
  const words = [
    ...(mass === null
      ? []
      : [say('paper.kit.mass', { mass: formatQuantity(mass, 'kg', { digits: Number.isInteger(mass) ? 0 : 1 }) })]),
    ...(posture === null ? [] : [isWordKey(key) ? sayMessage({ key, params: {} }) : posture]),
  ]
  return words.length === 0 ? null : words.join(', ')
}

/** What is said on every paper that goes along with a unit. */
export function cautionsOf(job: JobOnPaper): string[] {
  const { sheet } = job.state
  const holdsAir = sheet === null || sheet.springKind === 'air'
  return [
    ...(holdsAir ? [say('paper.caution.air'), say('paper.caution.pump')] : []),
    ...(sheet?.maxPressure
      ? [say('paper.caution.maximum', { maximum: pressureIn(job, sheet.maxPressure.value) })]
      : []),
    say('paper.caution.sheet'),
  ]
}

export function handOverPageOf(job: JobOnPaper): HandOverPage {
  const { state } = job
  const { handedOver, opened, sag, setting, sheet } = state
  const coil = sheet?.springKind === 'coil'
  return {
    shop: job.shop,
    job: job.number,
    date: day(handedOver?.at ?? job.now),
    handedOverBy: handedOver ? nameOf(job, handedOver.person) : null,
    rider: riderOf(job)?.name ?? null,
    riderKit: riderKitOf(job),
    unit: unitLine(job),
    serial: unitOf(job)?.serial ?? null,
    coil,
    asked: opened?.asked ? job.text(opened.asked) : null,
    settings: settingsOf(job),
    drawing: sheet
      ? drawingOf(sheet, {
          spacers: setting?.spacers ?? sheet.spacers?.value ?? 0,
          sag: sag ? (sag.fromAbove + sag.fromBelow) / 2 : null,
          oil: { left: pouredInto(state, 'left'), right: pouredInto(state, 'right') },
        })
      : null,
    found: foundOf(job),
    limits: limitsOf(job),
    done: doneOf(job),
    hands: handsOf(job),
    beforeAfter: beforeAfterOf(job),
    holdsAir: holdsAirOf(job),
    elsewhere: elsewhereOf(job),
    next: nextOf(job),
    beforeYouRide: [
      ...(sheet?.kind.startsWith('shock')
        ? [say('paper.check.shock-bolts'), say('paper.check.shock-clear')]
        : [say('paper.check.axle'), say('paper.check.brake')]),
      ...(setting && !coil ? [say('paper.check.pressure', { pressure: pressureIn(job, setting.pressure) })] : []),
    ],
    declined: declinedOf(job),
    kept: keptOf(job),
    carriedOver: state.carriedOver,
    cautions: cautionsOf(job),
    receivedBy: handedOver ? { name: job.text(handedOver.receivedBy), time: day(handedOver.at) } : null,
    address: job.address,
  }
}

export function labelOf(job: JobOnPaper): Label {
  const { setting, sheet } = job.state
  const coil = sheet?.springKind === 'coil'
  return {
    job: job.number,
    date: day(job.state.handedOver?.at ?? job.now),
    pressure: setting && !coil ? pressureIn(job, setting.pressure) : null,
    coil,
    at:
      setting && !coil
        ? say('paper.pressure.detail-plain', {
            temperature: formatQuantity(setting.temperature, job.measures.temperature),
          })
        : null,
    lines: settingsOf(job)
      .filter((figure) => figure.place !== 'pressure' && figure.place !== 'bath-oil')
      .map((figure) => say(`paper.short.${figure.place}`, { figure: figure.figure })),
    next: nextHoursOf(job),
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
  const byHand = state.basis.stop?.why
  return {
    shop: job.shop,
    job: job.number,
    date: day(first?.at ?? job.now),
    unit: unitLine(job),
    serial: unitOf(job)?.serial ?? null,
    rider: riderOf(job)?.name ?? null,
    found: [
      ...condemned.map(
        ([part, { found }]) => `${say(`part.${part as 'crown'}`)}: ${found ? job.text(found) : say('part.condemned')}`,
      ), // the keys of a chassis are its parts
      // Of a condemned part the part itself says it.
      ...(state.stopped && condemned.length === 0 && !byHand ? [sayMessage(state.stopped.because)] : []),
      ...(byHand ? [job.text(byHand)] : []),
    ],
    photos: await Promise.all(condemned.flatMap(([, part]) => part.photos.map(photoOf))),
    by: first ? nameOf(job, first.person) : null,
  }
}
