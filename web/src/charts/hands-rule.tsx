/** Work against hands, in minutes on one rule: what is left to do as a hatched bar, the end of the day as a post. */
import { useId } from 'react'
import { Lettering } from './lettering.tsx'
import { px } from './number-text.ts'

export interface HandsRuleProps {
  /** [min] */
  work: number
  hands: number
  width?: number
  words: { work: string; hands: string; room: string; hour: (n: number) => string }
  /** Spoken. */
  label: string
}

/** Minutes that the rule is long: the larger of both, an hour at least. */
export const ruleLength = (work: number, hands: number): number => Math.max(60, work, hands)

export function HandsRule({ work, hands, width = 540, words, label }: HandsRuleProps) {
  const hatch = useId()
  const length = ruleLength(work, hands)
  const at = (minutes: number) => (minutes * width) / length
  // Ticks of ten minutes as long as they can be told apart.
  const step = at(10) < 4 ? 30 : 10
  const ticks = Array.from({ length: Math.floor(length / step) + 1 }, (_, i) => i * step)
  const hours = Array.from({ length: Math.floor((length - 1) / 60) }, (_, i) => i + 1)
  const free = at(hands) - at(work)
  return (
    <svg
      width={width + 4}
      height={76}
      viewBox={`-2 0 ${width + 4} 76`}
      overflow="visible"
      role="img"
      aria-label={label}
    >
      <defs>
        <pattern id={hatch} patternUnits="userSpaceOnUse" width="5" height="5" patternTransform="rotate(45)">
          <path d="M0 0V5" stroke="var(--ink)" strokeWidth={2.2} />
        </pattern>
      </defs>
      <path d={`M0 40H${px(at(length))}`} stroke="var(--ink)" strokeWidth={1.3} />
      {ticks.map((minute) => (
        <path
          key={minute}
          d={`M${px(at(minute))} 40v${minute % 60 ? 6 : 12}`}
          stroke="var(--ink)"
          strokeWidth={minute % 60 ? 0.8 : 1.3}
        />
      ))}
      {work > 0 && (
        <path d={`M0 24H${px(at(work))}V39.5H0z`} fill={`url(#${hatch})`} stroke="var(--ink)" strokeWidth={1.3} />
      )}
      <path d={`M${px(at(hands))} 18v34`} stroke="var(--ink)" strokeWidth={3} />
      <Lettering y={15} fontSize={17} fontWeight={600}>
        {words.work}
      </Lettering>
      <Lettering x={px(Math.max(300, at(hands)))} y={13} textAnchor="end" fontSize={17} fontWeight={600}>
        {words.hands}
      </Lettering>
      {free > 170 && (
        <text
          x={px(at(work) + free / 2)}
          y={33}
          textAnchor="middle"
          fontSize={16}
          fill="var(--graphite)"
          style={{ fontFamily: 'var(--book)' }}
        >
          {words.room}
        </text>
      )}
      {hours.map((hour) => (
        <Lettering
          key={hour}
          x={px(at(hour * 60))}
          y={68}
          textAnchor="middle"
          fontSize={14}
          fontWeight={400}
          fill="var(--graphite)"
        >
          {words.hour(hour)}
        </Lettering>
      ))}
    </svg>
  )
}
