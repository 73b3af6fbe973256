/** What gauges show when they are put on again: the hose takes its share, and the gauge has its own error. */
import { pumpReading } from '@legwork/engine'
import { type Instrument, type Sheet, springOf } from '@legwork/trade'
import type { JobOnPaper } from './job-on-paper.ts'

/** Hose with gauge [m³], and how much it reads too high [-]. */
type Pump = Pick<Extract<Instrument, { kind: 'pump' }>, 'hoseVolume' | 'offset'>

/** Of the chamber that a pump is put on at full length [m³]; null where the sheet gives none. */
export function chamberOf(sheet: Sheet | null, spacers: number): number | null {
  if (!sheet?.spring.positiveVolume || !sheet.spring.negativeVolume || sheet.springKind !== 'air') return null
  const spring = springOf(sheet, { spacers })
  if (spring.kind !== 'air') return null
  return spring.positiveVolume - spacers * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
}

/** [Pa gauge]; null where the sheet gives no chamber. */
export function pumpShows(sheet: Sheet | null, spacers: number, pressure: number, pump: Pump): number | null {
  const volume = chamberOf(sheet, spacers)
  if (volume === null) return null
  return pumpReading({ volume, hoseVolume: pump.hoseVolume, pressure }).reading * (1 + pump.offset)
}

/** The pump or gauge of that id, where the register has it. */
export function pumpOf(job: JobOnPaper, id: string | null): Extract<Instrument, { kind: 'pump' | 'gauge' }> | null {
  const found = job.registers.instruments.find((line) => line.body.id === id)?.body
  return found?.kind === 'pump' || found?.kind === 'gauge' ? found : null
}
