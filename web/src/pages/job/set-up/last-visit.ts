/** What a unit left with the last time it was here: the setting that today's is held against. Pure. */
import { gaugeElsewhere, standardAir } from '@legwork/engine'
import type { JobState, Sheet, Stream } from '@legwork/trade'
import { bench, type Standing, standing } from './what-if.ts'

export interface LastVisit {
  /** When it was handed over, ISO 8601. */
  at: string
  setting: NonNullable<JobState['setting']>
  measured: JobState['measured']
}

/**
 * The newest other job of the unit that was handed over with a setting.
 *
 * @returns null where none of the jobs that are here was
 */
export function lastVisitOf(
  jobs: readonly { stream: Stream; state: Pick<JobState, 'handedOver' | 'setting' | 'measured'> }[],
  stream: Stream,
): LastVisit | null {
  return jobs
    .filter((job) => job.stream !== stream)
    .flatMap(({ state }): LastVisit[] =>
      state.handedOver && state.setting
        ? [{ at: state.handedOver.at, setting: state.setting, measured: state.measured }]
        : [],
    )
    .reduce<LastVisit | null>((newest, one) => (newest === null || one.at > newest.at ? one : newest), null)
}

/** The fork as it left then, brought to the bench as it is now: the same air at the bench's temperature. */
export function standingThen(sheet: Sheet, { setting }: LastVisit): Standing {
  const { ambient } = standardAir(bench.altitude)
  const pressure = gaugeElsewhere({
    pressure: setting.pressure,
    from: { temperature: setting.temperature, ambient },
    to: { temperature: bench.temperature, ambient },
  })
  return standing(sheet, Math.max(0, pressure), { spacers: setting.spacers, oilMore: 0, there: bench })
}
