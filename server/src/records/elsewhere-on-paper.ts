/** What the setting becomes on the rider's trail, and what the rider's own pump shows. */
import { ambientShift, formatQuantity, prepareSpring, Refusal, type Spring, standardAir } from '@legwork/engine'
import { say, springOf } from '@legwork/trade'
import type { RuledRow } from '../papers/ruled-section.ts'
import { type JobOnPaper, lengthIn, pressureIn, riderOf } from './job-on-paper.ts'
import { chamberOf, pumpShows } from './pump-on-paper.ts'

function ownPumpRow(job: JobOnPaper): RuledRow[] {
  const { setting, sheet } = job.state
  const pump = riderOf(job)?.pump
  const shown = setting && pump ? pumpShows(sheet, setting.spacers, setting.pressure, pump) : null
  return shown === null ? [] : [{ what: say('paper.own-pump'), figure: pressureIn(job, shown), source: 'worked-out' }]
}

/** What the leg carries [N]: by the sag that was measured at this setting, else as the set-up reckoned; null where neither is. */
function loadOn({ state }: JobOnPaper, spring: Spring, pressure: number, ambient: number): number | null {
  if (!state.sag) return state.setUp?.load ?? null
  return prepareSpring(spring, pressure, { ambient }).force((state.sag.fromAbove + state.sag.fromBelow) / 2)
}

function trailRows(job: JobOnPaper): RuledRow[] {
  const { setting, setUp, sheet, trail } = job.state
  if (!setting || !trail || !sheet || chamberOf(sheet, setting.spacers) === null) return []
  const spring = springOf(sheet, { spacers: setting.spacers })
  const ambient = setUp?.ambient ?? standardAir(0).ambient
  const load = loadOn(job, spring, setting.pressure, ambient)
  const shift = ambientShift(spring, {
    pressure: setting.pressure,
    ...(load === null ? {} : { load }),
    from: { temperature: setting.temperature, ambient },
    to: { altitude: trail.altitude, temperature: trail.temperature },
  })
  const place = {
    altitude: formatQuantity(trail.altitude, 'm', { digits: 0 }),
    temperature: formatQuantity(trail.temperature, job.measures.temperature),
  }
  const source = 'worked-out'
  return [
    ...(shift.pressure === undefined
      ? []
      : [{ what: say('paper.trail', place), figure: pressureIn(job, shift.pressure), source } as const]),
    ...(shift.strokeThere === undefined
      ? []
      : [{ what: say('paper.trail.sag'), figure: lengthIn(job, shift.strokeThere), source } as const]),
    ...(shift.overMaximum ? [{ what: say('paper.trail.over') }] : []),
  ]
}

/** What can't be worked out, as a sag read beyond the stroke, is left out. */
function where(rows: () => RuledRow[]): RuledRow[] {
  try {
    return rows()
  } catch (refused) {
    if (refused instanceof Refusal) return []
    throw refused
  }
}

export const elsewhereOf = (job: JobOnPaper): RuledRow[] => [
  ...where(() => trailRows(job)),
  ...where(() => ownPumpRow(job)),
]
