/** The settings as the hand-over page and the label print them. */
import { formatQuantity } from '@legwork/engine'
import { legs, type Sheet, say } from '@legwork/trade'
import type { PageFigure } from '../papers/hand-over-page-data.ts'
import { type JobOnPaper, lengthIn, pressureIn } from './job-on-paper.ts'
import { pumpOf, pumpShows } from './pump-on-paper.ts'
import { pouredInto } from './work-on-paper.ts'

/** None for a coil: it is written with a pressure of 0. */
function pressureFigure(job: JobOnPaper, sheet: Sheet | null): PageFigure[] {
  const { setting, setUp } = job.state
  if (!setting || sheet?.springKind === 'coil') return []
  const temperature = formatQuantity(setting.temperature, job.measures.temperature)
  const pump = pumpOf(job, setting.pump)
  const shown = pump && pumpShows(sheet, setting.spacers, setting.pressure, pump)
  const detail =
    shown !== null && pump
      ? say('paper.pressure.detail', { temperature, pump: pump.name, shown: pressureIn(job, shown) })
      : say('paper.pressure.detail-plain', { temperature })
  const same = setUp && Math.abs(setUp.pressure - setting.pressure) < 1
  const source = same ? 'worked-out' : 'measured-here'
  return [{ place: 'pressure', name: say('paper.pressure'), figure: pressureIn(job, setting.pressure), source, detail }]
}

function clicksFigure(job: JobOnPaper, place: 'rebound' | 'compression'): PageFigure[] {
  const n = job.state.setting?.clicks[place] ?? null
  if (n === null) return []
  const of = job.state.sheet?.clicks[place]?.value
  const figure = of === undefined ? say('paper.clicks', { n }) : say('paper.clicks.of', { n, of })
  return [{ place, name: say(`paper.${place}`), figure, source: 'measured-here', detail: null }]
}

function spacersFigure(job: JobOnPaper): PageFigure[] {
  const { setting, sheet } = job.state
  if (!setting || sheet?.springKind === 'coil') return []
  const each = sheet?.spring.spacerVolume?.value
  const detail =
    each !== undefined && setting.spacers > 0 ? say('paper.spacers.each', { volume: formatQuantity(each, 'ml') }) : null
  const figure = say('paper.pieces', { n: setting.spacers })
  return [{ place: 'spacers', name: say('paper.spacers'), figure, source: 'measured-here', detail }]
}

/** What was poured in, per leg, with the grade that the sheet asks for. */
function bathOilFigure(job: JobOnPaper): PageFigure[] {
  const poured = legs.flatMap((leg) => {
    const volume = pouredInto(job.state, leg)
    return volume === null ? [] : [{ volume: formatQuantity(volume, 'ml'), leg: say(`leg.${leg}`) }]
  })
  if (poured.length === 0) return []
  const viscosity = legs
    .map((leg) => job.state.sheet?.legs?.[leg].bathOilViscosity?.value)
    .find((one) => one !== undefined)
  return [
    {
      place: 'bath-oil',
      name: say('paper.bath-oil'),
      figure: poured.map((one) => say('paper.bath-oil.leg', one)).join(', '),
      source: 'measured-here',
      detail:
        viscosity === undefined
          ? null
          : say('paper.bath-oil.grade', { viscosity: formatQuantity(viscosity, 'mm²/s', { digits: 0 }) }),
    },
  ]
}

function sagFigure(job: JobOnPaper): PageFigure[] {
  const { sag, sheet } = job.state
  if (!sag) return []
  const mean = (sag.fromAbove + sag.fromBelow) / 2
  const detail = sheet ? say('paper.sag.detail', { percent: Math.round((100 * mean) / sheet.stroke.value) }) : null
  return [{ place: 'sag', name: say('paper.sag'), figure: lengthIn(job, mean), source: 'measured-here', detail }]
}

/** Every setting that was written, and the oil that was poured in, in the order of reading. */
export function settingsOf(job: JobOnPaper): PageFigure[] {
  return [
    ...pressureFigure(job, job.state.sheet),
    ...spacersFigure(job),
    ...clicksFigure(job, 'rebound'),
    ...clicksFigure(job, 'compression'),
    ...sagFigure(job),
    ...bathOilFigure(job),
  ]
}
