/** The law of an adjuster: damping halves by equal clicks, so on a scale of ratios it is a straight line through its readings. */
import { say } from '@legwork/trade'
import { Hatch, usePatternId } from '../../../charts/hatch.tsx'
import { BookWords, Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, PlotLine, PlotReading, tickText } from '../../../charts/plot.tsx'
import { numberAt, rowsAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'

/** 1, 2, 3, 5, 7 of every power of ten, or finer where the scale is short. */
function ratioMarks(low: number, high: number): number[] {
  const all = (heads: readonly number[]) =>
    Array.from({ length: 9 }, (_, power) => heads.map((head) => head * 10 ** (power - 2)))
      .flat()
      .filter((mark) => mark >= low && mark <= high)
  const coarse = all([1, 2, 3, 5, 7])
  const fine = all([1, 1.2, 1.4, 1.6, 1.8, 2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 9])
  return coarse.length >= 4 ? coarse : fine
}

export function DampingOverClicksPicture({ input, output, width }: PictureProps) {
  const hatch = usePatternId()
  const settings = rowsAt(input, 'settings').map((row) => ({
    x: numberAt(row, ['clicks']),
    y: numberAt(row, ['damping']),
  }))
  const wanted = numberAt(input, ['wanted'])
  const [clicks, closed, perClick] = [
    numberAt(output, ['clicks']),
    numberAt(output, ['closed']),
    numberAt(output, ['perClick']),
  ]
  const band = [numberAt(output, ['band', 0], Number.NaN), numberAt(output, ['band', 1], Number.NaN)] as const
  const damping = useReadAs('damping', closed)
  const last = Math.max(1, ...settings.map(({ x }) => x), clicks, Number.isFinite(band[1]) ? band[1] : 0)
  const end = Math.ceil(last * 1.06)
  const lawAt = (at: number) => closed * (1 - perClick) ** at
  const dampings = [...settings.map(({ y }) => y), wanted, closed, lawAt(end)].map(damping.of)
  const [low, high] = [Math.min(...dampings) / 1.08, Math.max(...dampings) * 1.08]
  const up = (of: number) => Math.log10(damping.of(of))
  return (
    <Plot
      width={width}
      height={340}
      across={{ from: 0, to: end, unit: '', words: say('calc.field.clicks') }}
      up={{
        from: Math.log10(low),
        to: Math.log10(high),
        unit: damping.unit,
        words: say('calc.field.damping'),
        ticks: ratioMarks(low, high).map((mark) => ({ at: Math.log10(mark), text: tickText(mark) })),
      }}
      label={say('calc.picture.clicks')}
    >
      {(frame) => {
        const [x, y] = [frame.x(clicks), frame.y(up(wanted))]
        const [from, to] = [frame.x(Math.max(0, band[0])), frame.x(Math.min(end, band[1]))]
        const isLeft = x > (frame.left + frame.right) / 2
        return (
          <>
            <defs>
              <Hatch id={hatch} pitch={5} width={0.9} opacity={0.7} />
            </defs>
            {Number.isFinite(from) && Number.isFinite(to) && (
              <rect
                x={px(from)}
                y={px(y)}
                width={px(Math.max(1, to - from))}
                height={px(frame.bottom - y)}
                fill={`url(#${hatch})`}
                stroke="var(--ink)"
                strokeWidth={0.8}
              />
            )}
            <path
              d={`M${frame.left} ${px(y)}H${px(x)}V${frame.bottom}`}
              fill="none"
              stroke="var(--ink)"
              strokeWidth={1.2}
              strokeDasharray="9 2.5 2 2.5"
            />
            <PlotLine
              frame={frame}
              points={[
                { x: 0, y: up(closed) },
                { x: end, y: up(lawAt(end)) },
              ]}
            />
            {settings.map((one) => (
              <PlotReading key={`${one.x} ${one.y}`} frame={frame} at={{ x: one.x, y: up(one.y) }} />
            ))}
            <circle cx={px(x)} cy={px(y)} r={4.5} fill="var(--ink)" />
            <Lettering
              halo
              x={px(x + (isLeft ? -12 : 12))}
              y={px(y + (isLeft ? 20 : -10))}
              textAnchor={isLeft ? 'end' : 'start'}
              fontSize={17}
            >
              {say('calc.picture.clicks.found', { n: tickText(Number(clicks.toFixed(1))) })}
            </Lettering>
            <BookWords halo x={frame.left + 8} y={px(y - 8)}>
              {say('calc.picture.wanted')}
            </BookWords>
          </>
        )
      }}
    </Plot>
  )
}
