import { scaleLinear } from 'd3-scale'
import { Hatch, usePatternId } from './hatch.tsx'
import { Lettering } from './lettering.tsx'
import { px } from './number-text.ts'
import { ruleTicks } from './rule-ticks.ts'

export interface DoubtBandProps {
  /** All in the measure shown, e.g. psi. */
  value: number
  low: number
  high: number
  /** Ends of the rule; left out, the band takes the middle half of it. */
  domain?: readonly [number, number]
  width?: number
  format: (value: number) => string
  /** Spoken: what the band says, e.g. '80 to 96, nine times in ten'. */
  label: string
}

/** Ends of a rule on which low…high takes about half the length, cut at 0 when nothing is below it. */
export function doubtDomain(value: number, low: number, high: number): [number, number] {
  const reach = Math.max(high - low, Math.abs(value) * 0.01, Number.MIN_VALUE)
  const from = Math.min(low, value) - reach * 0.65
  return [low >= 0 ? Math.max(0, from) : from, Math.max(high, value) + reach * 0.6]
}

/** A worked-out figure's doubt: a hatched band on a rule, the figure a heavy line in it. */
export function DoubtBand({ value, low, high, domain, width = 246, format, label }: DoubtBandProps) {
  const id = usePatternId()
  const ends = domain ?? doubtDomain(value, low, high)
  const scale = scaleLinear(ends, [6, width - 6])
  const [a, b, at] = [scale(low), scale(high), scale(value)].map((x) => Math.min(width - 6, Math.max(6, x))) as [
    number,
    number,
    number,
  ] // three in, three out
  return (
    <svg width={width} height={66} viewBox={`0 0 ${width} 66`} overflow="visible" role="img" aria-label={label}>
      <defs>
        <Hatch id={id} pitch={4} />
      </defs>
      <rect x={px(a)} y={16} width={px(b - a)} height={16} fill={`url(#${id})`} opacity={0.75} />
      <path d={`M${px(a)} 12v24M${px(b)} 12v24`} stroke="var(--ink)" strokeWidth={1.6} />
      <path d={`M${px(at)} 4v32`} stroke="var(--ink)" strokeWidth={3} />
      <path d={`M6 36H${width - 6}`} stroke="var(--ink)" strokeWidth={1.2} />
      {ruleTicks(ends, width - 12).map((tick) => (
        <g key={tick.at}>
          <path
            d={`M${px(6 + tick.x)} 36v${tick.major ? 9 : 5}`}
            stroke="var(--ink)"
            strokeWidth={tick.major ? 1.2 : 0.8}
          />
          {tick.major && (
            <Lettering x={px(6 + tick.x)} y={60} textAnchor="middle" fill="var(--graphite)">
              {format(tick.at)}
            </Lettering>
          )}
        </g>
      ))}
    </svg>
  )
}
