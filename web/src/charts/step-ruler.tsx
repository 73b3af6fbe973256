import { Lettering } from './lettering.tsx'
import { px } from './number-text.ts'

export type StepState = 'done' | 'now' | 'to-come'

/** A post across the rule behind the step with this number (0 = before the first). */
export interface RulerGate {
  readonly after: number
  readonly open: boolean
}

export interface StepRulerProps {
  states: readonly StepState[]
  gates?: readonly RulerGate[]
  width?: number
  /** Every step's number, or only the one that is open with the two words at the ends (phone). */
  numbers?: 'all' | 'now' | 'none'
  words?: { step: string; of: string }
  /** Spoken, e.g. 'Step 13 of 17. A gate is shut after step 13.' */
  label: string
}

/** Neighbouring steps in one state, as stretches of the rule. */
export function stretches(states: readonly StepState[]): { from: number; to: number; state: StepState }[] {
  const found: { from: number; to: number; state: StepState }[] = []
  states.forEach((state, i) => {
    const last = found.at(-1)
    if (last?.state === state) last.to = i + 1
    else found.push({ from: i, to: i + 1, state })
  })
  return found
}

/** Progress as a steel rule: heavy = done, violet = now, thin = to come; a post = a shut gate, leaning = opened. */
export function StepRuler({ states, gates = [], width = 876, numbers = 'all', words, label }: StepRulerProps) {
  const steps = states.length
  const at = (step: number) => (step * width) / Math.max(1, steps)
  // Narrower than this, every number would touch its neighbour.
  const shown = numbers === 'all' && at(1) < 22 ? 'now' : numbers
  const height = numbers === 'none' ? 22 : 46
  return (
    <svg
      width={width + 8}
      height={height}
      viewBox={`-4 -12 ${width + 8} ${height}`}
      overflow="visible"
      role="img"
      aria-label={label}
    >
      {Array.from({ length: steps + 1 }, (_, i) => `M${px(at(i))} 0v${i % 5 ? 9 : 15}`).map((d) => (
        <path key={d} d={d} stroke="var(--ink)" strokeWidth={1.2} />
      ))}
      <path d={`M0 0H${width}`} stroke="var(--ink)" strokeWidth={1.2} />
      {stretches(states)
        .filter(({ state }) => state !== 'to-come')
        .map(({ from, to, state }) => (
          <path
            key={from}
            d={`M${px(at(from))} 0H${px(at(to))}`}
            stroke={state === 'now' ? 'var(--hand)' : 'var(--ink)'}
            strokeWidth={6}
          />
        ))}
      {states.map((state, i) =>
        shown === 'all' || (shown === 'now' && state === 'now') ? (
          <Lettering
            // biome-ignore lint/suspicious/noArrayIndexKey: a step is its place on the rule
            key={i}
            x={px(Math.min(width - 8, Math.max(shown === 'now' ? 44 : 0, at(i + 0.5))))}
            y={state === 'now' ? 26 : 25}
            textAnchor="middle"
            fontSize={state === 'now' ? 22 : 14}
            fontWeight={state === 'now' ? 700 : 400}
            fill={state === 'now' ? 'var(--hand)' : state === 'done' ? 'var(--graphite)' : 'var(--faint)'}
          >
            {i + 1}
          </Lettering>
        ) : null,
      )}
      {shown === 'now' && words && (
        <>
          <Lettering y={28} fontWeight={400} fill="var(--graphite)">
            {words.step}
          </Lettering>
          <Lettering x={width} y={28} textAnchor="end" fontWeight={400} fill="var(--graphite)">
            {words.of}
          </Lettering>
        </>
      )}
      {gates.map((gate) =>
        gate.open ? (
          <path
            key={gate.after}
            d={`M${px(at(gate.after))} 3l9 -13`}
            stroke="var(--ink)"
            strokeWidth={3}
            strokeLinecap="round"
          />
        ) : (
          <path key={gate.after} d={`M${px(at(gate.after))} 3v-13`} stroke="var(--ink)" strokeWidth={5} />
        ),
      )}
    </svg>
  )
}
