/** A leg on its way back: the stroke over the time, and where it was timed. */
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { BookWords } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, type PlotPoint, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { answerTo, numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'

const steps = 24

/** The way told by the calculation itself: the time to each of a row of strokes between both. */
function wayOf(input: unknown, damping: number): { time: number; stroke: number }[] {
  const { time: _time, timeResolution: _resolution, ...asked } = Object(input)
  const [from, to] = [numberAt(asked, ['from']), numberAt(asked, ['to'])]
  const way = [{ time: 0, stroke: from }]
  for (let step = 1; step <= steps; step += 1) {
    // Closer together where it begins, slowly.
    const stroke = from + (to - from) * (step / steps) ** 1.6
    const answer = answerTo('return-time', { ...asked, to: stroke, damping })
    if (answer) way.push({ time: numberAt(answer, ['time']), stroke })
  }
  return way
}

export function ReturnOverTimePicture({ input, output, width }: PictureProps) {
  const asked = numberAt(input, ['damping'], Number.NaN)
  const found = numberAt(output, ['damping'], Number.NaN)
  const damping = Number.isFinite(asked) ? asked : Number.isFinite(found) ? found : numberAt(output, ['below'])
  const way = useMemo(() => wayOf(input, damping), [input, damping])
  const taken = numberAt(input, ['time'], numberAt(output, ['time']))
  const time = useReadAs('duration', Math.max(0.2, taken))
  const stroke = useReadAs('length', 0.1)
  const points = way.map((one): PlotPoint => ({ x: time.of(one.time), y: stroke.of(one.stroke) }))
  const end = { x: time.of(taken), y: stroke.of(numberAt(input, ['to'])) }
  const isTimed = !Number.isFinite(asked)
  return (
    <Plot
      width={width}
      height={300}
      across={{
        ...roundAxis([0, end.x, ...points.map(({ x }) => x)]),
        unit: time.unit,
        words: say('calc.picture.time'),
      }}
      up={{ ...roundAxis(points.map(({ y }) => y)), unit: stroke.unit, words: say('calc.out.stroke') }}
      label={say('calc.picture.return')}
    >
      {(frame) => (
        <>
          <path
            d={`M${frame.left} ${px(frame.y(end.y))}H${px(frame.x(end.x))}V${frame.bottom}`}
            fill="none"
            stroke="var(--ink)"
            strokeWidth={0.9}
            strokeDasharray="9 2.5 2 2.5"
          />
          <PlotLine frame={frame} points={points} />
          {isTimed ? (
            <PlotReading frame={frame} at={end} />
          ) : (
            <circle cx={px(frame.x(end.x))} cy={px(frame.y(end.y))} r={4.5} fill="var(--ink)" />
          )}
          <BookWords halo x={px(frame.x(points[0]?.x ?? 0) + 40)} y={px(frame.y(points[0]?.y ?? 0) + 8)}>
            {say('calc.picture.return.let-go')}
          </BookWords>
        </>
      )}
    </Plot>
  )
}
