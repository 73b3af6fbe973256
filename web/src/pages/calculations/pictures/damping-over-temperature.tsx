/** Low-speed damping over the oil's temperature: where it was known, and what it comes to. */
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading, roundAxis } from '../../../charts/plot.tsx'
import { answerTo, numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'
import { useWritten } from './written.ts'

function curveOf(input: unknown, from: number, to: number) {
  const kelvins = Array.from({ length: 33 }, (_, index) => from + (index / 32) * (to - from))
  return kelvins.flatMap((kelvin) => {
    const answer = answerTo('damping-at-temperature', { ...Object(input), to: kelvin })
    return answer ? [{ kelvin, damping: numberAt(answer, ['damping', 'linear']) }] : []
  })
}

export function DampingOverTemperaturePicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const [from, to] = [numberAt(input, ['from']), numberAt(input, ['to'])]
  const [low, high] = [Math.min(from, to) - 8, Math.max(from, to) + 8]
  const points = useMemo(() => curveOf(input, low, high), [input, low, high])
  const [given, there] = [numberAt(input, ['damping', 'linear']), numberAt(output, ['damping', 'linear'])]
  const degrees = useReadAs('temperature', 300)
  const damping = useReadAs('damping', Math.max(given, there))
  return (
    <Plot
      width={width}
      height={300}
      across={{
        from: degrees.of(low),
        to: degrees.of(high),
        unit: degrees.unit,
        words: say('calc.field.temperature'),
      }}
      up={{
        ...roundAxis([given, there, ...points.map((one) => one.damping)].map(damping.of)),
        unit: damping.unit,
        words: say('calc.field.damping'),
      }}
      label={say('calc.picture.damping-at-temperature')}
    >
      {(frame) => {
        const [x, y] = [frame.x(degrees.of(to)), frame.y(damping.of(there))]
        const isLeft = x > (frame.left + frame.right) / 2
        return (
          <>
            <path
              d={`M${frame.left} ${px(y)}H${px(x)}V${frame.bottom}`}
              fill="none"
              stroke="var(--ink)"
              strokeWidth={1}
              strokeDasharray="9 2.5 2 2.5"
            />
            <PlotLine
              frame={frame}
              points={points.map((one) => ({ x: degrees.of(one.kelvin), y: damping.of(one.damping) }))}
            />
            <PlotReading frame={frame} at={{ x: degrees.of(from), y: damping.of(given) }} />
            <circle cx={px(x)} cy={px(y)} r={4.5} fill="var(--ink)" />
            <Lettering
              halo
              x={px(x + (isLeft ? -12 : 12))}
              y={px(y + (isLeft ? 22 : -10))}
              textAnchor={isLeft ? 'end' : 'start'}
              fontSize={17}
            >
              {say('calc.picture.at', { value: written(there, 'damping'), place: written(to, 'temperature') })}
            </Lettering>
          </>
        )
      }}
    </Plot>
  )
}
