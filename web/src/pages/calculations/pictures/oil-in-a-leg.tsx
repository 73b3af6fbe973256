/** An open bath cut open and laid down: top edge right, foot left, where the oil lies. */
import { say } from '@legwork/trade'
import { Dimension } from '../../../charts/dimension.tsx'
import { Hatch, usePatternId } from '../../../charts/hatch.tsx'
import { Lettering } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { numberAt } from './asked-of.ts'
import type { PictureProps } from './picture.ts'
import { useWritten } from './written.ts'

export function OilInALegPicture({ input, output, width }: PictureProps) {
  const written = useWritten()
  const [cut, liquid] = [usePatternId(), usePatternId()]
  const [bore, rod, depth] = [numberAt(input, ['bore']), numberAt(input, ['rod']), numberAt(input, ['legLength'])]
  const [height, volume, airGap] = ['height', 'volume', 'airGap'].map((name) => numberAt(output, [name]))
  const [left, right, middle] = [30, width - 22, 92]
  const scale = (right - left) / depth
  // Along to scale; across twice as wide, or a leg would be a thread on a small screen.
  const half = Math.min(46, Math.max(16, bore * scale))
  const rodHalf = (half * rod) / bore
  const level = right - (height ?? 0) * scale
  const wall = Math.max(4, half * 0.16)
  const pen = { stroke: 'var(--ink)', strokeWidth: 1.25 } as const
  return (
    <svg
      width={width}
      height={206}
      viewBox={`0 0 ${width} 206`}
      overflow="visible"
      role="img"
      aria-label={say('calc.picture.oil-height')}
    >
      <defs>
        <Hatch id={cut} pitch={4} width={0.8} />
        <pattern id={liquid} width={14} height={6} patternUnits="userSpaceOnUse">
          <path d="M3 0V4" stroke="var(--ink)" strokeWidth={0.6} strokeOpacity={0.7} />
          <path d="M10 3V6" stroke="var(--ink)" strokeWidth={0.6} strokeOpacity={0.7} />
        </pattern>
      </defs>
      <path
        d={`M${left} ${middle - half}H${px(level)}V${middle + half}H${left}z`}
        fill="var(--oil)"
        fillOpacity={0.55}
      />
      <path d={`M${left} ${middle - half}H${px(level)}V${middle + half}H${left}z`} fill={`url(#${liquid})`} />
      {[-1, 1].map((side) => (
        <path
          key={side}
          d={`M${left} ${px(middle + side * half)}H${right}v${px(side * wall)}H${left}z`}
          fill={`url(#${cut})`}
          {...pen}
        />
      ))}
      <path
        d={`M${left} ${px(middle - half - wall)}h-${px(wall * 1.6)}v${px(2 * (half + wall))}h${px(wall * 1.6)}`}
        fill={`url(#${cut})`}
        {...pen}
      />
      {rodHalf > 0 && (
        <path
          d={`M${left} ${px(middle - rodHalf)}H${right + 14}V${px(middle + rodHalf)}H${left}`}
          fill="var(--steel)"
          {...pen}
        />
      )}
      {/* The oil's surface, with the sign of a level. */}
      <path
        d={`M${px(level)} ${px(middle - half)}V${px(middle - rodHalf)}M${px(level)} ${px(middle + rodHalf)}V${px(middle + half)}`}
        {...pen}
      />
      <path
        d={`M${px(level + 2)} ${px(middle - half * 0.62)}l9 -5v10z`}
        fill="none"
        stroke="var(--ink)"
        strokeWidth={1}
      />
      <path
        d={`M${left - 14} ${middle}H${right + 20}`}
        stroke="var(--ink)"
        strokeWidth={0.6}
        strokeDasharray="16 3 2.5 3"
      />
      <Lettering x={px((left + level) / 2)} y={px(middle - half - wall - 12)} textAnchor="middle" fontSize={17}>
        {say('calc.picture.oil-height.oil', { volume: written(volume ?? 0, 'volume') })}
      </Lettering>
      {right - level > 56 && (
        <Lettering x={px((level + right) / 2)} y={px(middle - half - wall - 12)} textAnchor="middle" fontSize={15}>
          {say('calc.picture.oil-height.air', { volume: written(airGap ?? 0, 'volume') })}
        </Lettering>
      )}
      <Dimension
        from={[level, middle + half + wall + 20]}
        to={[right, middle + half + wall + 20]}
        words={written(height ?? 0, 'length')}
        reach={16}
      />
      <Dimension
        from={[left, middle + half + wall + 50]}
        to={[right, middle + half + wall + 50]}
        words={written(depth, 'length')}
        reach={46}
      />
    </svg>
  )
}
