/** What the draws gave: how often, the middle, and the band that holds nine in ten. */
import { say } from '@legwork/trade'
import { Hatch, usePatternId } from '../../../charts/hatch.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, roundAxis } from '../../../charts/plot.tsx'
import { useMeasures } from '../../../figures/world.tsx'
import { numericOf } from '../answer-lines.ts'
import { readIn } from '../answer-number.tsx'
import type { Bars } from '../doubt-messages.ts'
import { isRecord } from '../draft.ts'
import { AnswerName } from '../names.tsx'
import { KeyOf, LineKey } from './line-key.tsx'
import type { PictureProps } from './picture.ts'

export function DoubtPicture({ output, bars, width }: PictureProps) {
  return Object.entries(bars).map(([name, drawn]) => {
    const spread = output[name]
    return isRecord(spread) ? <Histogram key={name} name={name} drawn={drawn} spread={spread} width={width} /> : null
  })
}

interface HistogramProps {
  name: string
  drawn: Bars
  spread: Record<string, unknown>
  width: number
}

function Histogram({ name, drawn, spread, width }: HistogramProps) {
  const person = useMeasures()
  const hatch = usePatternId()
  const { median, low, high, unit } = spread
  const most = Math.max(...drawn.counts)
  if (typeof median !== 'number' || typeof low !== 'number' || typeof high !== 'number' || most === 0) return null
  const read = readIn(numericOf({ 'x-unit': 'see unit' }, String(unit)), person, Math.abs(drawn.to))
  const step = (drawn.to - drawn.from) / drawn.counts.length
  const total = drawn.counts.reduce((sum, count) => sum + count, 0)
  const share = (count: number) => (100 * count) / total
  return (
    <figure>
      <figcaption>
        <AnswerName calc="doubt" path={[name]} />
      </figcaption>
      <Plot
        width={width}
        height={260}
        across={{ ...roundAxis([read.of(drawn.from), read.of(drawn.to)], false), unit: read.unit, words: '' }}
        up={{ ...roundAxis([0, share(most)]), unit: '%', words: say('calc.picture.of-draws') }}
        label={say('calc.picture.doubt')}
      >
        {(frame) => (
          <>
            <defs>
              <Hatch id={hatch} pitch={5} width={1} opacity={0.8} />
            </defs>
            {drawn.counts.map((count, index) => {
              const [from, to] = [drawn.from + index * step, drawn.from + (index + 1) * step]
              const [x0, x1] = [frame.x(read.of(from)), frame.x(read.of(to))]
              const middle = (from + to) / 2
              return (
                <rect
                  key={from}
                  x={px(x0)}
                  y={px(frame.y(share(count)))}
                  width={px(Math.max(0, x1 - x0))}
                  height={px(frame.bottom - frame.y(share(count)))}
                  fill={middle >= low && middle <= high ? `url(#${hatch})` : 'none'}
                  stroke="var(--ink)"
                  strokeWidth={0.8}
                />
              )
            })}
            {[low, high].map((end) => (
              <path
                key={end}
                d={`M${px(frame.x(read.of(end)))} ${frame.top}V${frame.bottom}`}
                stroke="var(--ink)"
                strokeWidth={1.3}
              />
            ))}
            <path
              d={`M${px(frame.x(read.of(median)))} ${frame.top - 8}V${frame.bottom}`}
              stroke="var(--ink)"
              strokeWidth={3}
            />
          </>
        )}
      </Plot>
      <LineKey>
        <KeyOf
          sample={
            <path d="M1 0V16M43 0V16M1 15H43V1H1z" fill={`url(#${hatch})`} stroke="var(--ink)" strokeWidth={1.3} />
          }
        >
          {say('calc.picture.doubt.band')}
        </KeyOf>
        <KeyOf sample={<path d="M22 0v16" stroke="var(--ink)" strokeWidth={3} />}>
          {say('calc.picture.doubt.middle')}
        </KeyOf>
      </LineKey>
    </figure>
  )
}
