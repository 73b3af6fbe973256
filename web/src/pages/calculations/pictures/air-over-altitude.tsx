/** The standard atmosphere, and the place in it that was asked for. */
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, roundAxis } from '../../../charts/plot.tsx'
import { answerTo, numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'
import { useWritten } from './written.ts'

export function AirOverAltitudePicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const altitude = useReadAs('altitude', 1000)
  const pressure = useReadAs('absolutePressure', 1e5)
  const [asked, ambient] = [numberAt(input, ['altitude']), numberAt(output, ['ambient'])]
  const [from, to] = [Math.min(0, asked), Math.min(11_000, Math.max(4000, asked * 1.2))]
  const points = useMemo(
    () =>
      Array.from({ length: 41 }, (_, index) => from + (index / 40) * (to - from)).map((height) => ({
        height,
        ambient: numberAt(answerTo('air-pressure', { altitude: height }), ['ambient']),
      })),
    [from, to],
  )
  return (
    <Plot
      width={width}
      height={290}
      across={{ from: altitude.of(from), to: altitude.of(to), unit: altitude.unit, words: say('calc.field.altitude') }}
      up={{
        ...roundAxis(
          points.map((one) => pressure.of(one.ambient)),
          false,
        ),
        unit: pressure.unit,
        words: say('calc.out.ambient'),
      }}
      label={say('calc.picture.air-pressure')}
    >
      {(frame) => {
        const [x, y] = [frame.x(altitude.of(asked)), frame.y(pressure.of(ambient))]
        const isLeft = x > (frame.left + frame.right) / 2
        return (
          <>
            <path
              d={`M${px(x)} ${frame.bottom}V${px(y)}H${frame.left}`}
              fill="none"
              stroke="var(--ink)"
              strokeWidth={1}
              strokeDasharray="9 2.5 2 2.5"
            />
            <PlotLine
              frame={frame}
              points={points.map((one) => ({ x: altitude.of(one.height), y: pressure.of(one.ambient) }))}
            />
            <circle cx={px(x)} cy={px(y)} r={4.5} fill="var(--ink)" />
            <Lettering
              halo
              x={px(x + (isLeft ? -10 : 12))}
              y={px(y + (isLeft ? 24 : -10))}
              textAnchor={isLeft ? 'end' : 'start'}
              fontSize={17}
            >
              {written(ambient, 'absolutePressure')}
            </Lettering>
          </>
        )
      }}
    </Plot>
  )
}
