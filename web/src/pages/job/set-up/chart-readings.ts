/** What was read off a fork, as points of its force over its stroke. Pure. */
import { type JobState, type MeasuredEntry, pressesIn } from '@legwork/trade'
import type { ForceReading } from '../../../charts/force-stroke-props.ts'

/**
 * The sag read from both directions: the rider's load held both times; friction parts the strokes.
 *
 * @param load  along the leg [N]
 */
export function sagReadings(
  sag: Pick<NonNullable<JobState['sag']>, 'fromAbove' | 'fromBelow'> | null,
  load: number,
): readonly ForceReading[] {
  if (!sag) return []
  return [
    { stroke: sag.fromAbove, force: load, way: 'pressing', when: 'today' },
    { stroke: sag.fromBelow, force: load, way: 'releasing', when: 'today' },
  ]
}

/** A press filled to another pressure belongs to another curve; so far apart it is still the same one [-]. */
const samePressure = 0.03

/**
 * The readings of the last press after the work that was filled to about this pressure.
 *
 * @param pressure  gauge at full length [Pa]
 */
export function pressReadings(
  measured: readonly MeasuredEntry[],
  pressure: number,
  when: ForceReading['when'],
): readonly ForceReading[] {
  const press = pressesIn(measured, 'done').findLast(
    ({ filling }) => Math.abs(filling.reading.value - pressure) <= samePressure * pressure,
  )
  return (press?.stops ?? []).flatMap(({ stroke, pressing, releasing }) =>
    ([pressing, releasing] as const).flatMap((read, index): ForceReading[] =>
      read ? [{ stroke, force: read.reading.value, way: index === 0 ? 'pressing' : 'releasing', when }] : [],
    ),
  )
}
