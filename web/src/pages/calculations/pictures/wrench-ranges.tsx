/** The shop's wrenches on one scale of torque: what each is made for, and what each would be set to. */
import { say } from '@legwork/trade'
import { scaleLinear } from 'd3-scale'
import { Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { roundAxis, tickText } from '../../../charts/plot.tsx'
import { answerTo, numberAt, rowsAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useReadAs } from './read-as.ts'
import { useWritten } from './written.ts'

const row = 54

export function WrenchRangesPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const { wanted, adapterLength = 0, adapterAngle } = Object(input)
  const best: unknown = Object(output.best).id
  const wrenches = rowsAt(input, 'wrenches').map((wrench) => ({
    id: String(wrench.id),
    low: numberAt(wrench, ['low']),
    high: numberAt(wrench, ['high']),
    set: numberAt(answerTo('torque', { wanted, adapterLength, adapterAngle, wrenchLength: wrench.length }), ['set']),
  }))
  const torque = useReadAs('torque', Math.max(...wrenches.map(({ high }) => high)))
  const axis = roundAxis([...wrenches.flatMap(({ high, set }) => [high, set])].map(torque.of))
  const x = scaleLinear([axis.from, axis.to], [8, width - 16])
  const bottom = wrenches.length * row + 10
  const ticks = x.ticks(Math.max(2, Math.floor(width / 80)))
  return (
    <figure>
      <figcaption className="book">{say('calc.picture.wrench-choice.key')}</figcaption>
      <svg
        width={width}
        height={bottom + 28}
        viewBox={`0 0 ${width} ${bottom + 28}`}
        overflow="visible"
        role="img"
        aria-label={say('calc.picture.wrench-choice')}
      >
        {ticks.map((at, index) => (
          <g key={at}>
            <path d={`M${px(x(at))} 6V${bottom}`} stroke="var(--rule)" strokeWidth={0.8} />
            <Lettering
              x={px(x(at))}
              y={bottom + 20}
              textAnchor={index === ticks.length - 1 ? 'end' : 'middle'}
              fill="var(--graphite)"
            >
              {index === ticks.length - 1 ? `${tickText(at)}\u00a0${torque.unit}` : tickText(at)}
            </Lettering>
          </g>
        ))}
        {wrenches.map(({ id, low, high, set }, index) => {
          const y = index * row + 36
          const isBest = id === best
          const at = x(torque.of(set))
          const isInside = set >= low && set <= high
          return (
            <g key={`${id} ${low}`}>
              <Lettering x={px(x(torque.of(low)))} y={y - 12} fontWeight={isBest ? 700 : 500} halo>
                {id}
              </Lettering>
              <path
                d={`M${px(x(torque.of(low)))} ${y - 5}v10M${px(x(torque.of(high)))} ${y - 5}v10M${px(x(torque.of(low)))} ${y}H${px(x(torque.of(high)))}`}
                stroke="var(--ink)"
                strokeWidth={isBest ? 4 : 1.4}
                strokeDasharray={isInside ? undefined : '4 3'}
              />
              <path
                d={`M${px(at)} ${y + 4}l-6 12h12z`}
                fill={isBest ? 'var(--ink)' : 'var(--paper)'}
                stroke="var(--ink)"
                strokeWidth={1.2}
              />
              <Lettering x={px(at + 10)} y={y + 17} fontSize={isBest ? 17 : 14} halo>
                {written(set, 'torque')}
              </Lettering>
            </g>
          )
        })}
        <path d={`M8 ${bottom}H${width - 16}`} stroke="var(--ink)" strokeWidth={1.4} />
      </svg>
    </figure>
  )
}
