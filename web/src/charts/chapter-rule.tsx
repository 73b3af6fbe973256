import { px } from './number-text.ts'
import { type StepState, stretches } from './step-ruler.tsx'

export interface ChapterRuleProps {
  states: readonly StepState[]
  /** A shut gate stands here, in chapters from the left; 3.5 is the middle of the fourth. */
  gateAt?: number
  width?: number
}

/** A job's chapters as a small rule in a list; the words beside it say the same, so it isn't spoken. */
export function ChapterRule({ states, gateAt, width = 150 }: ChapterRuleProps) {
  const at = (chapter: number) => px((chapter * width) / Math.max(1, states.length))
  return (
    <svg width={width + 4} height={16} viewBox={`-2 -7 ${width + 4} 16`} aria-hidden="true" focusable="false">
      <path
        d={`M0 0H${width}${Array.from({ length: states.length + 1 }, (_, i) => `M${at(i)} 0v7`).join('')}`}
        stroke="var(--ink)"
        strokeWidth={1}
        fill="none"
      />
      {stretches(states)
        .filter(({ state }) => state !== 'to-come')
        .map(({ from, to, state }) => (
          <path
            key={from}
            d={`M${at(from)} 0H${at(to)}`}
            stroke={state === 'now' ? 'var(--hand)' : 'var(--ink)'}
            strokeWidth={5}
          />
        ))}
      {gateAt !== undefined && <path d={`M${at(gateAt)} -6v12`} stroke="var(--ink)" strokeWidth={4.5} />}
    </svg>
  )
}
