/** What was read off a fork, as points of its force over its stroke. Pure. */
import type { JobState } from '@legwork/trade'
import type { ForceReading } from '../../charts/force-stroke-props.ts'

/**
 * The sag read from both directions: the rider's load held both times; friction parts the strokes.
 *
 * @param load  along the leg [N]
 */
export function sagReadings(sag: Pick<NonNullable<JobState['sag']>, 'fromAbove' | 'fromBelow'> | null, load: number) {
  if (!sag) return []
  const readings: ForceReading[] = [
    { stroke: sag.fromAbove, force: load, way: 'pressing' },
    { stroke: sag.fromBelow, force: load, way: 'releasing' },
  ]
  return readings
}
