/** How the air was watched: what it was filled to, what the gauge showed at the end, and what it had to show. */
import { formatQuantity, leakDown, Refusal } from '@legwork/engine'
import { type MeasuredEntry, say } from '@legwork/trade'
import type { RuledRow } from '../papers/ruled-section.ts'
import { type JobOnPaper, pressureIn } from './job-on-paper.ts'
import { chamberOf, pumpOf } from './pump-on-paper.ts'

const minute = 60_000
/** Taken where nobody read a thermometer: a workshop's own [K]. */
const benchTemperature = 293.15

/** A temperature is written just before its reading: an older one belongs to an earlier test. */
function temperatureBeside(job: JobOnPaper, reading: MeasuredEntry): number | null {
  const found = job.state.measured.findLast((one) => one.what === `${reading.what}-temperature`)
  return found && Math.abs(Date.parse(found.at) - Date.parse(reading.at)) < minute ? found.reading.value : null
}

function expectedAt(job: JobOnPaper, start: MeasuredEntry, end: MeasuredEntry): number | null {
  const { setting, setUp, sheet } = job.state
  const volume = chamberOf(sheet, setting?.spacers ?? setUp?.spacers ?? 0)
  const pump = pumpOf(job, end.reading.instrument)
  if (volume === null || !pump) return null
  const from = temperatureBeside(job, start) ?? benchTemperature
  const error = 1 + pump.offset
  const question = {
    volume,
    hoseVolume: pump.hoseVolume,
    start: { reading: start.reading.value / error, temperature: from },
    end: { reading: end.reading.value / error, temperature: temperatureBeside(job, end) ?? from, how: 'attached' },
    duration: Math.max(1, (Date.parse(end.at) - Date.parse(start.at)) / 1000),
    gaugeResolution: pump.resolution,
  } as const
  try {
    return leakDown(question).expectedReading * error
  } catch (refused) {
    // What can't be worked out is left out; the readings stand.
    if (refused instanceof Refusal) return null
    throw refused
  }
}

export function holdsAirOf(job: JobOnPaper): RuledRow[] {
  const { measured } = job.state
  const end = measured.findLast((one) => one.what === 'leak-down-end')
  const start = measured.findLast((one) => one.what === 'leak-down-start' && (!end || one.at <= end.at))
  if (!start || !end) return []
  const minutes = Math.round((Date.parse(end.at) - Date.parse(start.at)) / minute)
  const time =
    minutes < 180 ? say('paper.minutes', { n: minutes }) : say('paper.hours-long', { n: Math.round(minutes / 60) })
  const at = (reading: MeasuredEntry): string | null => {
    const kelvin = temperatureBeside(job, reading)
    return kelvin === null ? null : formatQuantity(kelvin, job.measures.temperature)
  }
  const [before, after] = [at(start), at(end)]
  const pump = pumpOf(job, end.reading.instrument)?.name ?? say('paper.a-gauge')
  const expected = expectedAt(job, start, end)
  const source = 'measured-here'
  const read = (reading: MeasuredEntry) => ({ figure: pressureIn(job, reading.reading.value), source }) as const
  return [
    {
      what: before ? say('paper.holds-air.filled', { temperature: before }) : say('paper.holds-air.filled-plain'),
      ...read(start),
    },
    ...(expected === null
      ? []
      : [{ what: say('paper.holds-air.should'), figure: pressureIn(job, expected), source: 'worked-out' } as const]),
    {
      what: after
        ? say('paper.holds-air.showed', { pump, time, temperature: after })
        : say('paper.holds-air.showed-plain', { pump, time }),
      ...read(end),
    },
  ]
}
