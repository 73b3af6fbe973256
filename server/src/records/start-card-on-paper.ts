/** The start card of a unit that came alone, as it is printed. */
import { formatQuantity, standardAir } from '@legwork/engine'
import { type CardBasis, cardRows, middleShare, say } from '@legwork/trade'
import type { RuledRow } from '../papers/ruled-section.ts'
import type { StartCard } from '../papers/start-card.ts'
import { drawingOf } from './fork-on-paper.ts'
import { day, type JobOnPaper, lengthIn, pressureIn, unitLine, unitOf } from './job-on-paper.ts'
import { cautionsOf } from './job-papers.ts'
import { chamberOf } from './pump-on-paper.ts'
import { Trouble } from './trouble.ts'

/** The bike it is reckoned for. */
export type CardBike = Pick<CardBasis, 'headAngle' | 'frontMass' | 'sag'>

/** @throws Trouble 404 where the sheet has not what a pressure is worked out from */
export function startCardOf(job: JobOnPaper, bike: CardBike): StartCard {
  const { setting, sheet } = job.state
  const spacers = setting?.spacers ?? sheet?.spacers?.value ?? 0
  if (!sheet?.kind.startsWith('fork') || chamberOf(sheet, spacers) === null)
    throw new Trouble(404, 'No start card', [
      {
        field: 'sheet',
        code: 'card.no-spring',
        came: sheet?.name ?? 'nothing',
        allowed: 'a sheet of an air fork with its chambers',
        next: 'Fill the chambers in on the unit’s sheet.',
      },
    ])
  const frontShare = middleShare('standing')
  const basis = { sheet, spacers, frontShare, ambient: standardAir(0).ambient, ...bike }
  const mass = (value: number) => formatQuantity(value, 'kg', { digits: 0 })
  const percent = (share: number) => Math.round(100 * share)
  return {
    shop: job.shop,
    job: job.number,
    date: day(job.state.handedOver?.at ?? job.now),
    unit: unitLine(job),
    serial: unitOf(job)?.serial ?? null,
    drawing: drawingOf(sheet, { spacers, sag: bike.sag * sheet.stroke.value, oil: { left: null, right: null } }),
    rows: cardRows(basis).map(
      ({ riderMass, pressure }): RuledRow =>
        pressure === null
          ? { what: mass(riderMass), figure: say('paper.start-card.none') }
          : { what: mass(riderMass), figure: pressureIn(job, pressure), source: 'worked-out' },
    ),
    rests: [
      say('paper.start-card.rests', {
        share: percent(frontShare),
        angle: Math.round(10 * bike.headAngle) / 10,
        mass: formatQuantity(bike.frontMass, 'kg'),
      }),
      say('paper.start-card.set', {
        sag: lengthIn(job, bike.sag * sheet.stroke.value),
        percent: percent(bike.sag),
        spacers,
      }),
    ],
    cautions: cautionsOf(job),
    address: job.address,
  }
}
