/** Diameters height by height and direction by direction, the play between their means, and that play against its limit. */
import { say } from '@legwork/trade'
import { scaleLinear } from 'd3-scale'
import { Dimension } from '../../../charts/dimension.tsx'
import { BookWords, Lettering } from '../../../charts/lettering.tsx'
import { LimitStrip } from '../../../charts/limit-strip.tsx'
import { px } from '../../../charts/number-text.ts'
import { tickText } from '../../../charts/plot.tsx'
import { valueAt } from '../draft.ts'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'
import { useWritten } from './written.ts'

const heights = ['upper', 'lower'] as const
const rowHeight = 118

function directionsOf(input: unknown, part: string, height: number): number[] {
  const list = valueAt(input, [part, height])
  return Array.isArray(list) ? list.filter((one) => typeof one === 'number') : []
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length)

interface RowProps {
  name: (typeof heights)[number]
  stanchion: readonly number[]
  bushing: readonly number[]
  x: (diameter: number) => number
  width: number
  words: string
}

/** One height: readings along the diameter, a ring and a number for each direction; below, what lies between the means. */
function HeightRow({ name, stanchion, bushing, x, width, words }: RowProps) {
  const y = 46
  const [inner, outer] = [mean(stanchion), mean(bushing)]
  return (
    <>
      <Lettering x={0} y={16} fontWeight={600}>
        {say(`calc.picture.clearance.${name}`)}
      </Lettering>
      <path d={`M0 ${y}H${width}`} stroke="var(--rule)" strokeWidth={0.8} />
      {[
        { values: stanchion, above: true },
        { values: bushing, above: false },
      ].map(({ values, above }) =>
        values.map((value, index) => {
          const at = y + (above ? -7 : 7)
          const d = above
            ? `M${px(x(value) - 4)} ${at}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0z`
            : `M${px(x(value))} ${at - 4}l5 9h-10z`
          // biome-ignore lint/suspicious/noArrayIndexKey: a direction keeps its place
          return <path key={`${above}${index}`} d={d} fill="var(--paper)" stroke="var(--hand)" strokeWidth={1.8} />
        }),
      )}
      {[inner, outer].map((at, index) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: stanchion, then bushing
          key={index}
          d={`M${px(x(at))} ${y - 18}V${y + 42}`}
          stroke="var(--ink)"
          strokeWidth={1}
          strokeDasharray="9 2.5 2 2.5"
        />
      ))}
      <Dimension from={[x(inner), y + 34]} to={[x(outer), y + 34]} words={words} side="right" />
    </>
  )
}

export function ClearancePicture({ input, output, width }: PictureProps) {
  const length = useReadAs('length', 0.03)
  const written = useWritten()
  const rows = heights.map((name, index) => ({
    name,
    stanchion: directionsOf(input, 'stanchion', index),
    bushing: directionsOf(input, 'bushing', index),
  }))
  const all = rows.flatMap(({ stanchion, bushing }) => [...stanchion, ...bushing])
  const [least, most] = [Math.min(...all), Math.max(...all)]
  const room = Math.max(1e-5, (most - least) * 0.12)
  const scale = scaleLinear([length.of(least - room), length.of(most + room)], [20, width - 20])
  const x = (diameter: number) => scale(length.of(diameter))
  const ticks = scale.ticks(Math.max(2, Math.floor(width / 96)))
  const [watch, fail] = [numberAt(input, ['limit', 'watch']), numberAt(input, ['limit', 'fail'])]
  const worst = Math.max(numberAt(output, ['clearance', 'upper']), numberAt(output, ['clearance', 'lower']))
  const [low, high] = [numberAt(output, ['band', 0]), numberAt(output, ['band', 1])]
  const stripEnd = Math.max(fail * 1.35, high * 1.1)
  const height = rows.length * rowHeight + 34
  return (
    <figure>
      <figcaption className="book">{say('calc.picture.clearance.marks')}</figcaption>
      <svg
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={say('calc.picture.clearance')}
        overflow="visible"
      >
        {ticks.map((at) => (
          <path
            key={at}
            d={`M${px(scale(at))} 24V${rows.length * rowHeight - 6}`}
            stroke="var(--rule)"
            strokeWidth={0.8}
          />
        ))}
        {rows.map((row, index) => (
          <g key={row.name} transform={`translate(0 ${index * rowHeight})`}>
            <HeightRow
              {...row}
              x={x}
              width={width}
              words={written(numberAt(output, ['clearance', row.name]), 'length')}
            />
          </g>
        ))}
        <g transform={`translate(0 ${rows.length * rowHeight})`}>
          {ticks.map((at, index) => (
            <Lettering key={at} x={px(scale(at))} y={14} textAnchor="middle" fill="var(--graphite)">
              {index === ticks.length - 1 ? `${tickText(at)}\u00a0${length.unit}` : tickText(at)}
            </Lettering>
          ))}
        </g>
      </svg>
      <div className="calc-strip">
        <LimitStrip
          min={0}
          max={stripEnd}
          zones={[
            { from: 0, to: watch, verdict: 'pass' },
            { from: watch, to: fail, verdict: 'watch' },
            { from: fail, to: stripEnd, verdict: 'fail' },
          ]}
          limits={[watch, fail]}
          value={worst}
          low={low}
          high={high}
          width={width - 8}
          format={(value) => written(value, 'length')}
          label={say('calc.picture.clearance.strip', {
            value: written(worst, 'length'),
            low: written(low, 'length'),
            high: written(high, 'length'),
            watch: written(watch, 'length'),
            fail: written(fail, 'length'),
          })}
        />
        <svg width={width} height={22} aria-hidden="true">
          <BookWords x={0} y={15}>
            {say('calc.picture.clearance.worst')}
          </BookWords>
        </svg>
      </div>
    </figure>
  )
}
