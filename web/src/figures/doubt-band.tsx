import type { KindName, MeasureName } from '@legwork/engine'
import { say } from '@legwork/trade'
import { scaleLinear } from 'd3-scale'
import { type ReactNode, useId } from 'react'
import { measureFor, shown } from './shown.ts'
import { useMeasures } from './world.tsx'
import './doubt-band.css'

interface DoubtBandProps {
  /** SI */
  value: number
  low: number
  high: number
  kind: KindName
  measure?: MeasureName
  /** What the doubt hangs on. */
  says: ReactNode
}

const width = 246
const rule = 34

/** The band that holds the value nine times in ten, hatched on a rule, and in words. */
export function DoubtBand({ value, low, high, kind, measure, says }: DoubtBandProps) {
  const person = useMeasures()
  const hatch = useId()
  const unit = measure ?? measureFor(kind, person)
  const number = (si: number) => Number(shown(si, unit, 4).number.replace('−', '-').replaceAll('\u2009', ''))
  const [from, to] = [number(low), number(high)]
  const reach = Math.max(to - from, Math.abs(number(value)) * 0.02)
  const scale = scaleLinear([from - reach * 0.6, to + reach * 0.6], [4, width - 4])
  const ticks = scale.ticks(24)
  const named = scale.ticks(4)
  return (
    <div className="doubt-band">
      <svg viewBox={`0 0 ${width} 66`} width={width} height="66" aria-hidden="true">
        <defs>
          <pattern id={hatch} patternUnits="userSpaceOnUse" width="5" height="5" patternTransform="rotate(45)">
            <path d="M0 0V5" stroke="var(--graphite)" strokeWidth="1.2" />
          </pattern>
        </defs>
        <path d={`M0 ${rule}H${width}`} stroke="var(--ink)" strokeWidth="1.3" />
        {ticks.map((at) => (
          <path key={at} d={`M${scale(at)} ${rule}v${named.includes(at) ? 12 : 6}`} stroke="var(--ink)" />
        ))}
        {named.map((at) => (
          <text key={at} x={scale(at)} y="62" textAnchor="middle" fontSize="16" fill="var(--ink)">
            {scale.tickFormat(4)(at)}
          </text>
        ))}
        <rect
          x={scale(from)}
          y={rule - 16}
          width={scale(to) - scale(from)}
          height="16"
          fill={`url(#${CSS.escape(hatch)})`}
        />
        <path
          d={`M${scale(from)} ${rule - 20}v20M${scale(to)} ${rule - 20}v20`}
          stroke="var(--ink)"
          strokeWidth="1.3"
        />
        <path d={`M${scale(number(value))} 4v${rule - 4}`} stroke="var(--ink)" strokeWidth="3" />
      </svg>
      <p className="book">
        <b>{say('doubt.band', { low: shown(low, unit).number, high: shown(high, unit).number })}</b> {says}
      </p>
    </div>
  )
}
