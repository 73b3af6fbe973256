/** Lives: the share still running with its band, the fitted law with its own, one in ten, and the interval that costs least. */
import { type FailedBy, failedBy, weibull } from '@legwork/engine/life/weibull.ts'
import { say } from '@legwork/trade'
import { useMemo } from 'react'
import { Hatch, usePatternId } from '../../../charts/hatch.tsx'
import { px } from '../../../charts/number-text.ts'
import { Plot, type PlotFrame, PlotLine, type PlotPoint, roundAxis } from '../../../charts/plot.tsx'
import { isRecord, valueAt } from '../draft.ts'
import { KeyLine, KeyOf, LineKey } from './line-key.tsx'
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
function stairs(steps: readonly Step[], of: (step: Step) => number, end: number): PlotPoint[] {
  const points = [{ x: 0, y: 100 }]
  for (const step of steps)
    points.push({ x: step.hours, y: points.at(-1)?.y ?? 100 }, { x: step.hours, y: of(step) * 100 })
  return [...points, { x: end, y: points.at(-1)?.y ?? 0 }]
}

function outline(frame: PlotFrame, upper: readonly PlotPoint[], lower: readonly PlotPoint[]): string {
  const all = [...upper, ...lower.toReversed()]
  return `M${all.map(({ x, y }) => `${px(frame.x(x))} ${px(frame.y(y))}`).join('L')}z`
}

interface Law {
  /** By when each share has failed. */
  readonly by: readonly (FailedBy & { readonly failed: number })[]
}

/** Shares of the law that are drawn: close together where it is steep at either end. */
const shares = Array.from({ length: 97 }, (_, index) => 0.5 - 0.4995 * Math.cos((Math.PI * index) / 96))

function lawOf(lives: readonly Record<string, unknown>[]): Law | null {
  const fit = weibull(lives.map(({ hours, failed }) => ({ hours: number(hours) ?? 0, failed: failed === true })))
  return fit && { by: shares.map((failed) => ({ failed, ...failedBy(fit, failed) })) }
}

/** The law dashed, its band between two thin lines: hours by which each share has failed, nine times in ten. */
function LawLines({ frame, law, clip }: { frame: PlotFrame; law: Law; clip: string }) {
  const along = (of: (one: FailedBy) => number) =>
    law.by.map((one) => ({ x: Math.min(of(one), 20 * (frame.x.domain()[1] ?? 1)), y: 100 * (1 - one.failed) }))
  return (
    <g clipPath={`url(#${clip})`}>
      <PlotLine frame={frame} look="thin" points={along(({ low }) => low)} />
      <PlotLine frame={frame} look="thin" points={along(({ high }) => high)} />
      <PlotLine frame={frame} look="second" points={along(({ hours }) => hours)} />
    </g>
  )
}

/** Where one in ten has failed by the law: its hours with their band across, and down to the axis. */
function OneInTen({ frame, at, band }: { frame: PlotFrame; at: number; band: readonly number[] }) {
  const y = frame.y(90)
  const [low = at, high = at] = band.map((hours) => Math.min(hours, frame.x.domain()[1] ?? hours))
  return (
    <>
      <path
        d={`M${px(frame.x(at))} ${px(y)}V${frame.bottom}`}
        stroke="var(--ink)"
        strokeWidth={1}
        strokeDasharray="9 2.5 2 2.5"
      />
      <path
        d={`M${px(frame.x(low))} ${px(y - 6)}v12m0 -6H${px(frame.x(high))}m0 -6v12`}
        stroke="var(--ink)"
        strokeWidth={1.8}
      />
    </>
  )
}

export function LifePicture({ input, output, width }: PictureProps) {
  const hatch = usePatternId()
  const clip = usePatternId()
  const steps = stepsOf(output)
  const lives = useMemo(() => listAt(input, 'lives'), [input])
  // Under five failures the curve alone.
  const law = useMemo(() => (output.enough === true ? lawOf(lives) : null), [lives, output.enough])
  const running = lives.filter(({ failed }) => failed === false).map(({ hours }) => number(hours) ?? 0)
  const longest = Math.max(1, ...lives.map(({ hours }) => number(hours) ?? 0))
  const { to } = roundAxis([0, longest * 1.05])
  const [b10, best] = ['b10', 'bestInterval'].map((name) => number(output[name]))
  const band = valueAt(output, ['bands', 'b10'])
  return (
    <figure>
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
              <clipPath id={clip}>
                <rect x={frame.left} y={frame.top} width={frame.right - frame.left} height={frame.bottom - frame.top} />
              </clipPath>
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
            {law && <LawLines frame={frame} law={law} clip={clip} />}
            {b10 && <OneInTen frame={frame} at={b10} band={Array.isArray(band) ? band : []} />}
            {best && (
              <path
                d={`M${px(frame.x(best))} ${frame.bottom}l-7 -12h14z`}
                fill="var(--paper)"
                stroke="var(--ink)"
                strokeWidth={1.6}
              />
            )}
          </>
        )}
      </Plot>
      <LineKey>
        <KeyOf
          sample={
            <>
              <rect width={44} height={16} fill={`url(#${hatch})`} />
              <KeyLine />
            </>
          }
        >
          {say('calc.picture.life.counted')}
        </KeyOf>
        {running.length > 0 && (
          <KeyOf sample={<path d="M22 1v14" stroke="var(--hand)" strokeWidth={1.8} />}>
            {say('calc.picture.life.running')}
          </KeyOf>
        )}
        {law && (
          <KeyOf
            sample={
              <>
                <path d="M1 2H43M1 14H43" stroke="var(--ink)" strokeWidth={1.2} />
                <KeyLine look="second" />
              </>
            }
          >
            {say('calc.picture.law')}
          </KeyOf>
        )}
        {b10 && (
          <KeyOf
            sample={
              <>
                <path d="M22 4V16" stroke="var(--ink)" strokeDasharray="5 2 1 2" />
                <path d="M1 0v8M1 4H43M43 0v8" stroke="var(--ink)" strokeWidth={1.8} />
              </>
            }
          >
            {say('calc.picture.b10')}
          </KeyOf>
        )}
        {best && (
          <KeyOf sample={<path d="M22 15l-7 -12h14z" fill="var(--paper)" stroke="var(--ink)" strokeWidth={1.6} />}>
            {say('calc.out.bestInterval')}
          </KeyOf>
        )}
      </LineKey>
    </figure>
  )
}
