/** Readings of the press over the stroke, with the sheet, what fits best, and the press as it came in. */
import { say } from '@legwork/trade'
import { BookWords } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { useOwnWidth } from '../../../charts/use-own-width.ts'
import type { PressAsked } from './press-asked.ts'
import type { PressCurve, PressFitted } from './press-fit.ts'

const inMillimetres = 1e3

interface PressChartProps {
  asked: PressAsked
  fitted: PressFitted
  /** As it came in, beside the test after the work. */
  before: PressAsked | null
}

export function PressChart({ asked, fitted, before }: PressChartProps) {
  const [ref, width] = useOwnWidth(440)
  const readings = asked.presses.flatMap((press) => press.readings)
  const was = (before?.presses ?? []).map(({ readings: received }) =>
    received
      .map(({ stroke, pressing, releasing }) => ({ stroke, force: (pressing + releasing) / 2 }))
      .sort((one, other) => one.stroke - other.stroke),
  )
  const lines = [...fitted.sheet, ...fitted.best].flatMap(({ points }) => points)
  const point = ({ stroke, force }: { stroke: number; force: number }) => ({ x: stroke * inMillimetres, y: force })
  const forces = [
    ...readings.flatMap(({ pressing, releasing }) => [pressing, releasing]),
    ...lines.map(({ force }) => force),
    ...was.flat().map(({ force }) => force),
  ]
  const furthest = Math.max(...lines.map(({ stroke }) => stroke), ...readings.map(({ stroke }) => stroke))
  return (
    <figure ref={ref} className="press-chart">
      <Plot
        width={width}
        height={340}
        across={{ from: 0, to: furthest * inMillimetres, unit: 'mm', words: say('press.stroke') }}
        up={{ ...roundAxis(forces), unit: 'N', words: say('press.force') }}
        label={say('press.chart')}
      >
        {(frame) => {
          const curves = (all: readonly PressCurve[], look: 'heavy' | 'second') =>
            all.map(({ points }, press) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: presses keep their places
              <PlotLine key={`${look}${press}`} frame={frame} look={look} points={points.map(point)} />
            ))
          return (
            <>
              {was.map((points, press) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: presses keep their places
                <PlotLine key={press} frame={frame} look="before" points={points.map(point)} />
              ))}
              {curves(fitted.sheet, 'second')}
              {curves(fitted.best, 'heavy')}
              {readings.map(({ stroke, pressing, releasing }, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: readings have no name of their own
                <g key={index}>
                  <PlotReading frame={frame} at={point({ stroke, force: pressing })} />
                  <PlotReading frame={frame} at={point({ stroke, force: releasing })} way="triangle" />
                </g>
              ))}
              {before && (
                <BookWords x={px(frame.left + 12)} y={frame.top + 16} halo>
                  {say('press.chart.before')}
                </BookWords>
              )}
            </>
          )
        }}
      </Plot>
      <figcaption className="book">{say('press.chart.key')}</figcaption>
    </figure>
  )
}
