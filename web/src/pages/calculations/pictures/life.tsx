/** Lives: the share still running, its band, the law laid through it, and where one in ten has failed. */
import { say } from '@legwork/trade'
import { Hatch, usePatternId } from '../../../charts/hatch.tsx'
import { BookWords } from '../../../charts/lettering.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, type PlotFrame, PlotLine, roundAxis } from '../../../charts/plot.tsx'
import { isRecord, valueAt } from '../draft.ts'
import type { PictureProps } from './picture.ts'

interface Step {
  hours: number
  survival: number
  low: number | null
  high: number | null
}

function listAt(value: unknown, name: string): Record<string, unknown>[] {
  const list = valueAt(value, [name])
  return Array.isArray(list) ? list.filter(isRecord) : []
}

const number = (value: unknown): number | null => (typeof value === 'number' ? value : null)

function stepsOf(output: unknown): Step[] {
  return listAt(output, 'curve').map(({ hours, survival, low, high }) => ({
    hours: number(hours) ?? 0,
    survival: number(survival) ?? 0,
    low: number(low),
    high: number(high),
  }))
}

/** The share that holds up to an hour. */
function shareAt(steps: readonly Step[], hours: number): number {
  return steps.findLast((step) => step.hours <= hours)?.survival ?? 1
}

/** A staircase: level up to the next step, then down. */
function stairs(steps: readonly Step[], of: (step: Step) => number, end: number): { x: number; y: number }[] {
  const points = [{ x: 0, y: 100 }]
  for (const step of steps)
    points.push({ x: step.hours, y: points.at(-1)?.y ?? 100 }, { x: step.hours, y: of(step) * 100 })
  return [...points, { x: end, y: points.at(-1)?.y ?? 0 }]
}

function outline(frame: PlotFrame, upper: { x: number; y: number }[], lower: { x: number; y: number }[]): string {
  const all = [...upper, ...lower.toReversed()]
  return `M${all.map(({ x, y }) => `${px(frame.x(x))} ${px(frame.y(y))}`).join('L')}z`
}

export function LifePicture({ input, output, width }: PictureProps) {
  const hatch = usePatternId()
  const steps = stepsOf(output)
  const lives = listAt(input, 'lives')
  const running = lives.filter(({ failed }) => failed === false).map(({ hours }) => number(hours) ?? 0)
  const longest = Math.max(1, ...lives.map(({ hours }) => number(hours) ?? 0))
  const { to } = roundAxis([0, longest * 1.05])
  const [shape, scale, b10] = ['shape', 'scale', 'b10'].map((name) => number(output[name]))
  const law =
    shape && scale
      ? Array.from({ length: 81 }, (_, index) => (index / 80) * to).map((hours) => ({
          x: hours,
          y: 100 * Math.exp(-((hours / scale) ** shape)),
        }))
      : []
  const named = law[Math.floor(law.length * 0.3)]
  return (
    <Plot
      width={width}
      across={{ from: 0, to, unit: 'h', words: say('calc.field.hours') }}
      up={{ from: 0, to: 100, unit: '%', words: say('calc.out.curve') }}
      label={say('calc.picture.life')}
    >
      {(frame) => (
        <>
          <defs>
            <Hatch id={hatch} pitch={5} width={0.8} opacity={0.6} />
          </defs>
          <path
            d={outline(
              frame,
              stairs(steps, ({ high, survival }) => high ?? survival, longest),
              stairs(steps, ({ low, survival }) => low ?? survival, longest),
            )}
            fill={`url(#${hatch})`}
          />
          <PlotLine frame={frame} points={stairs(steps, ({ survival }) => survival, longest)} />
          {running.map((hours, index) => (
            <path
              // biome-ignore lint/suspicious/noArrayIndexKey: lives have no name of their own
              key={index}
              d={`M${px(frame.x(hours))} ${px(frame.y(shareAt(steps, hours) * 100) - 7)}v14`}
              stroke="var(--hand)"
              strokeWidth={1.8}
            />
          ))}
          {law.length > 0 && <PlotLine frame={frame} points={law} look="second" />}
          {named && (
            <BookWords halo x={px(frame.x(named.x) - 8)} y={px(frame.y(named.y) + 24)} textAnchor="end">
              {say('calc.picture.law')}
            </BookWords>
          )}
          {b10 && (
            <>
              <path
                d={`M${px(frame.x(b10))} ${px(frame.y(90))}V${frame.bottom}`}
                stroke="var(--ink)"
                strokeWidth={1}
                strokeDasharray="9 2.5 2 2.5"
              />
              <BookWords halo x={px(frame.x(b10) + 6)} y={frame.bottom - 8}>
                {say('calc.picture.b10')}
              </BookWords>
            </>
          )}
        </>
      )}
    </Plot>
  )
}
