/** Both zones of tolerance beside the line of the nominal size, as a fit is drawn: the hole's above, the shaft's below it. */
import { say } from '@legwork/trade'
import { scaleLinear } from 'd3-scale'
import { Hatch, usePatternId } from '../../../charts/hatch.tsx'
import { BookWords, Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { tickText } from '../../../charts/plot.tsx'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

const height = 300
const micrometres = (metres: number) => `${tickText(Math.round(metres * 1e7) / 10)}\u00a0µm`

export function ToleranceZonesPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const [hole, shaft] = [usePatternId(), usePatternId()]
  const names = { hole: String(Object(input).hole), shaft: String(Object(input).shaft) }
  const zones = (['hole', 'shaft'] as const).map((part) => ({
    part,
    low: numberAt(output, ['deviations', part, 0]),
    high: numberAt(output, ['deviations', part, 1]),
  }))
  const all = zones.flatMap(({ low, high }) => [low, high])
  const y = scaleLinear([Math.min(0, ...all), Math.max(0, ...all)], [height - 34, 30])
  const [first, wide] = [60, Math.min(110, (width - 210) / 2)]
  const [least, most] = [numberAt(output, ['clearance', 0]), numberAt(output, ['clearance', 1])]
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      overflow="visible"
      role="img"
      aria-label={say('calc.picture.fit')}
    >
      <defs>
        <Hatch id={hole} pitch={6} width={0.9} />
        <Hatch id={shaft} pitch={6} angle={-45} width={0.9} />
      </defs>
      {zones.map(({ part, low, high }, index) => {
        const x = first + index * (wide + 20)
        return (
          <g key={part}>
            <rect
              x={x}
              y={px(y(high))}
              width={wide}
              height={px(Math.max(2, y(low) - y(high)))}
              fill={`url(#${part === 'hole' ? hole : shaft})`}
              stroke="var(--ink)"
              strokeWidth={1.25}
            />
            <Lettering x={x + wide / 2} y={px((y(low) + y(high)) / 2 + 7)} textAnchor="middle" fontSize={21} halo>
              {names[part]}
            </Lettering>
            {[high, low]
              .filter((end) => Math.abs(end) > 1e-9)
              .map((end) => (
                <Lettering
                  key={end}
                  x={index === 0 ? x - 6 : x + wide + 6}
                  y={px(y(end) + 5)}
                  textAnchor={index === 0 ? 'end' : 'start'}
                  halo
                >
                  {micrometres(end)}
                </Lettering>
              ))}
          </g>
        )
      })}
      <path d={`M0 ${px(y(0))}H${width}`} stroke="var(--ink)" strokeWidth={1.4} />
      <BookWords x={width} y={px(y(0) - 7)} textAnchor="end" halo>
        {say('calc.picture.fit.size', { size: written(numberAt(input, ['size']), 'length') })}
      </BookWords>
      <Lettering x={width} y={height - 8} textAnchor="end">
        {say('calc.picture.fit.play', { least: micrometres(least), most: micrometres(most) })}
      </Lettering>
    </svg>
  )
}
