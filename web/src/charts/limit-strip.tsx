import { scaleLinear } from 'd3-scale'
import { Hatch, usePatternId } from './hatch.tsx'
import { Lettering } from './lettering.tsx'
import type { LimitZone } from './limit-zones.ts'
import { px } from './number-text.ts'

export interface LimitStripProps {
  min: number
  max: number
  zones: readonly LimitZone[]
  /** Limits that are written under the strip. */
  limits: readonly number[]
  value: number
  /** Ends of the reading's doubt: a whisker; where it passes a limit, the verdict is 'cannot tell'. */
  low?: number
  high?: number
  width?: number
  format: (value: number) => string
  /** Spoken: reading, verdict and limits. */
  label: string
}

/** A measurement against its limits: thin = pass, hatched = watch, solid = fail; a violet pointer, because a hand measured it. */
export function LimitStrip(props: LimitStripProps) {
  const { min, max, zones, limits, value, low, high, width = 176, format, label } = props
  const id = usePatternId()
  const scale = scaleLinear([min, max], [2, width - 2]).clamp(true)
  const top = 24
  const pointer = scale(value)
  const beyond = value > max ? 1 : value < min ? -1 : 0
  return (
    <svg width={width} height={52} viewBox={`0 0 ${width} 52`} overflow="visible" role="img" aria-label={label}>
      <defs>
        <Hatch id={id} pitch={4.5} width={1.3} />
      </defs>
      {zones.map((zone) => {
        const [x0, x1] = [scale(zone.from), scale(zone.to)]
        if (zone.verdict === 'pass')
          return <path key={zone.from} d={`M${px(x0)} ${top + 4}H${px(x1)}`} stroke="var(--ink)" strokeWidth={1.3} />
        return (
          <rect
            key={zone.from}
            x={px(x0)}
            y={top}
            width={px(x1 - x0)}
            height={8}
            fill={zone.verdict === 'watch' ? `url(#${id})` : 'var(--ink)'}
            stroke="var(--ink)"
            strokeWidth={1}
          />
        )
      })}
      {limits.map((limit) => (
        <g key={limit}>
          <path d={`M${px(scale(limit))} ${top - 2}v13`} stroke="var(--ink)" strokeWidth={1.3} />
          <Lettering x={px(scale(limit))} y={top + 25} textAnchor="middle" fontSize={13.5} fill="var(--graphite)">
            {format(limit)}
          </Lettering>
        </g>
      ))}
      {low !== undefined && high !== undefined && (
        <path
          d={`M${px(scale(low))} ${top - 10}H${px(scale(high))}M${px(scale(low))} ${top - 15}v10M${px(scale(high))} ${top - 15}v10`}
          stroke="var(--hand)"
          strokeWidth={1.8}
          fill="none"
        />
      )}
      {beyond === 0 ? (
        <path d={`M${px(pointer)} ${top - 1}l-7 -15h14z`} fill="var(--hand)" />
      ) : (
        // Beyond the end of the strip: the pointer lies down and shows the way it went.
        <path d={`M${px(pointer + beyond * 3)} ${top - 8.5}l${-beyond * 15} -7v14z`} fill="var(--hand)" />
      )}
    </svg>
  )
}
