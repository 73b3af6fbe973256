/** A wrench that turns through an adapter, to scale: what is set stands at its scale, what arrives stands at the nut. */
import { say } from '@legwork/trade'
import { Arrow, type At, Dimension } from '../../../charts/dimension.tsx'
import { Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

interface Lengths {
  wrench: number
  adapter: number
  /** Angle of the adapter, 0 in line. */
  turn: number
}

/** Where the parts stand [px]; the square of the wrench is the origin, the hand to the right. */
function placesOf({ wrench, adapter, turn }: Lengths, width: number) {
  const nutX = -adapter * Math.cos(turn)
  const nutY = adapter * Math.sin(turn)
  const least = Math.min(0, nutX)
  const margin = 34
  const scale = (width - 2 * margin - 26) / (wrench - least)
  const rise = Math.max(0, nutY * scale)
  const origin: At = [margin - least * scale, 78 + 0]
  const nut: At = [origin[0] + nutX * scale, origin[1] + rise]
  const hand: At = [origin[0] + wrench * scale, origin[1]]
  return { scale, origin, nut, hand, height: origin[1] + rise + 128 }
}

const hexagon = ([x, y]: At, radius: number) =>
  Array.from({ length: 6 }, (_, side) => {
    const angle = (side * Math.PI) / 3 + 0.12
    return `${px(x + radius * Math.cos(angle))},${px(y + radius * Math.sin(angle))}`
  }).join(' ')

export function WrenchWithAdapterPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const [wrench, adapter] = [numberAt(input, ['wrenchLength']), numberAt(input, ['adapterLength'])]
  const degrees = numberAt(input, ['adapterAngle'])
  const turn = (degrees * Math.PI) / 180
  const lever = wrench + adapter * Math.cos(turn)
  const { scale, origin, nut, hand, height } = placesOf({ wrench, adapter, turn }, width)
  const pen = { stroke: 'var(--ink)', strokeWidth: 1.25, strokeLinejoin: 'round' } as const
  const grip = Math.min(46, wrench * scale * 0.3)
  const adapterLong = adapter * scale
  const angle = (Math.atan2(nut[1] - origin[1], nut[0] - origin[0]) * 180) / Math.PI
  const dimensionAt = Math.max(origin[1], nut[1]) + 46
  const drop = (from: At, to: number) => `M${px(from[0])} ${px(from[1] + 8)}V${px(to + 6)}`
  return (
    <svg
      width={width}
      height={px(height)}
      viewBox={`0 0 ${width} ${px(height)}`}
      overflow="visible"
      role="img"
      aria-label={say('calc.picture.torque', {
        set: written(numberAt(output, ['set']), 'torque'),
        wanted: written(numberAt(input, ['wanted']), 'torque'),
      })}
    >
      <path
        d={drop(nut, dimensionAt + 34) + drop(origin, dimensionAt) + drop(hand, dimensionAt + 34)}
        stroke="var(--ink)"
        strokeWidth={0.6}
      />
      {/* The body with its scale's window, then the grip. */}
      <path
        d={`M${px(origin[0])} ${px(origin[1] - 6)}H${px(hand[0] - grip)}V${px(origin[1] + 6)}H${px(origin[0])}z`}
        fill="var(--steel)"
        {...pen}
      />
      <path
        d={`M${px(hand[0] - grip - 56)} ${px(origin[1] - 8)}H${px(hand[0] - grip)}V${px(origin[1] + 8)}H${px(hand[0] - grip - 56)}z`}
        fill="var(--leaf)"
        {...pen}
      />
      {Array.from({ length: 9 }, (_, tick) => hand[0] - grip - 52 + tick * 6).map((tick, index) => (
        <path
          key={tick}
          d={`M${px(tick)} ${px(origin[1] - 8)}v${index % 4 ? 4 : 7}`}
          stroke="var(--ink)"
          strokeWidth={0.9}
        />
      ))}
      <rect
        x={px(hand[0] - grip)}
        y={px(origin[1] - 10)}
        width={px(grip * 2)}
        height={20}
        rx={6}
        fill="var(--alloy)"
        {...pen}
      />
      {adapterLong > 0 && (
        <g transform={`translate(${px(origin[0])} ${px(origin[1])}) rotate(${px(angle)})`}>
          <path d={`M0 -6H${px(adapterLong)}V6H0z`} fill="var(--steel)" {...pen} />
        </g>
      )}
      <circle cx={px(origin[0])} cy={px(origin[1])} r={12} fill="var(--steel)" {...pen} />
      <path d={`M${px(origin[0] - 4)} ${px(origin[1] - 4)}h8v8h-8z`} fill="var(--paper)" {...pen} />
      {adapterLong > 0 && <circle cx={px(nut[0])} cy={px(nut[1])} r={11} fill="var(--alloy)" {...pen} />}
      <polygon points={hexagon(nut, 7)} fill="var(--paper)" {...pen} />
      <path
        d={`M${px(Math.min(nut[0], origin[0]) - 20)} ${px(origin[1])}H${px(hand[0] + grip + 10)}`}
        stroke="var(--ink)"
        strokeWidth={0.6}
        strokeDasharray="16 3 2.5 3"
      />
      <Arrow from={[hand[0], origin[1] - 56]} to={[hand[0], origin[1] - 13]} />
      {/* The figure that is acted on stands at the scale it is dialled on. */}
      <Lettering x={px(hand[0] - grip - 28)} y={px(origin[1] - 20)} textAnchor="middle" fontSize={24}>
        {written(numberAt(output, ['set']), 'torque')}
      </Lettering>
      <Lettering x={px(Math.max(4, nut[0] - 16))} y={px(nut[1] - 22)} fontSize={17} halo>
        {written(numberAt(input, ['wanted']), 'torque')}
      </Lettering>
      <Dimension
        from={[origin[0], dimensionAt]}
        to={[hand[0], dimensionAt]}
        words={written(wrench, 'length')}
        side="right"
      />
      {Math.abs(origin[0] - nut[0]) > 3 && (
        <Dimension
          from={[Math.min(nut[0], origin[0]), dimensionAt]}
          to={[Math.max(nut[0], origin[0]), dimensionAt]}
          words={written(Math.abs(adapter * Math.cos(turn)), 'length')}
          side="right"
        />
      )}
      <Dimension
        from={[nut[0], dimensionAt + 34]}
        to={[hand[0], dimensionAt + 34]}
        words={say('calc.picture.torque.lever', { length: written(lever, 'length') })}
        side="right"
      />
    </svg>
  )
}
