import { Hatch, usePatternId } from './hatch.tsx'
import { BookWords, Lettering } from './lettering.tsx'
import { px } from './number-text.ts'

export interface WorkRuleProps {
  /** Minutes of work that wait. */
  work: number
  /** Minutes of hands there are today. */
  hands: number
  width?: number
  words: { work: string; hands: string; room?: string }
  formatHours: (hours: number) => string
  /** Spoken, e.g. '54 min of work, 260 min of hands'. */
  label: string
}

/** Work against hands on one rule of minutes: the hatched part is spoken for, the post is the end of the day. */
export function WorkRule({ work, hands, width = 560, words, formatHours, label }: WorkRuleProps) {
  const id = usePatternId()
  const end = Math.max(60, work, hands)
  const at = (minutes: number) => (minutes * width) / end
  const hours = Array.from({ length: Math.floor(end / 60) }, (_, i) => i + 1)
  // Every hour's word needs some 40 px.
  const every = Math.max(1, Math.ceil(40 / at(60)))
  const minor = at(10) >= 4 ? 10 : 30
  const room = at(hands) - at(work)
  return (
    <svg width={width} height={74} viewBox={`0 0 ${width} 74`} overflow="visible" role="img" aria-label={label}>
      <defs>
        <Hatch id={id} pitch={5} width={2.2} />
      </defs>
      <path d={`M0 40H${width}`} stroke="var(--ink)" strokeWidth={1.3} />
      {Array.from({ length: Math.floor(end / minor) + 1 }, (_, i) => i * minor).map((minutes) => (
        <path
          key={minutes}
          d={`M${px(at(minutes))} 40v${minutes % 60 ? 6 : 12}`}
          stroke="var(--ink)"
          strokeWidth={minutes % 60 ? 0.8 : 1.3}
        />
      ))}
      {work > 0 && (
        <path d={`M0 24H${px(at(work))}V39.5H0z`} fill={`url(#${id})`} stroke="var(--ink)" strokeWidth={1.3} />
      )}
      <path d={`M${px(at(hands))} 18v34`} stroke="var(--ink)" strokeWidth={3} />
      <Lettering y={15} fontSize={17} fontWeight={600}>
        {words.work}
      </Lettering>
      <Lettering x={width} y={13} textAnchor="end" fontSize={17} fontWeight={600}>
        {words.hands}
      </Lettering>
      {words.room !== undefined && room > words.room.length * 8 && (
        <BookWords x={px(at(work) + room / 2)} y={31} textAnchor="middle" fontSize={16}>
          {words.room}
        </BookWords>
      )}
      {hours
        .filter((hour) => hour % every === 0)
        .map((hour) => (
          <Lettering
            key={hour}
            x={px(at(hour * 60))}
            y={68}
            textAnchor="middle"
            fontWeight={400}
            fill="var(--graphite)"
          >
            {formatHours(hour)}
          </Lettering>
        ))}
    </svg>
  )
}
