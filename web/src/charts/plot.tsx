/** Squared paper for any two quantities: the frame of the pictures that are no force over stroke. */
import { type ScaleLinear, scaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import { Fragment, type ReactNode } from 'react'
import { Lettering } from './lettering.tsx'
import { px } from './number-text.ts'

/** One axis, in the measure it is read in. */
export interface PlotAxis {
  readonly from: number
  readonly to: number
  readonly unit: string
  /** What is read along it, in words. */
  readonly words: string
  /** Where numbers stand, on an axis that is no straight scale; round numbers otherwise. */
  readonly ticks?: readonly { readonly at: number; readonly text: string }[]
}

export interface PlotFrame {
  readonly x: ScaleLinear<number, number>
  readonly y: ScaleLinear<number, number>
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

interface PlotProps {
  width: number
  height?: number
  across: PlotAxis
  up: PlotAxis
  /** Spoken instead of the picture. */
  label: string
  children: (frame: PlotFrame) => ReactNode
}

/** An axis that ends at round numbers and holds all of these; `zero` keeps 0 on the paper. */
export function roundAxis(values: readonly number[], zero = true): { from: number; to: number } {
  const finite = values.filter(Number.isFinite)
  const [least, most] = [Math.min(...finite, ...(zero ? [0] : [])), Math.max(...finite, ...(zero ? [0] : []))]
  const wide = most > least ? [least, most] : [least - 1, most + 1]
  const [from = 0, to = 1] = scaleLinear(wide, [0, 1]).nice(10).domain()
  return { from, to }
}

export const tickText = (value: number): string => String(Number(value.toPrecision(6))).replace('-', '−')

const written = (values: readonly number[]) => values.map((at) => ({ at, text: tickText(at) }))

/** Numbers stand under and beside the paper, the unit with the last of them; the words of an axis stand along it. */
export function Plot({ width, height = 320, across, up, label, children }: PlotProps) {
  const [left, right, top, bottom] = [54, width - 16, 30, height - 48]
  const x = scaleLinear([across.from, across.to], [left, right])
  const y = scaleLinear([up.from, up.to], [bottom, top])
  const acrossTicks = across.ticks ?? written(x.ticks(Math.max(2, Math.floor((right - left) / 76))))
  const upTicks = up.ticks ?? written(y.ticks(Math.max(2, Math.floor((bottom - top) / 52))))
  const lastAcross = acrossTicks.at(-1)
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={label}
      overflow="visible"
    >
      {acrossTicks.map(({ at, text }) => (
        <Fragment key={at}>
          <path d={`M${px(x(at))} ${top}V${bottom}`} stroke="var(--rule)" strokeWidth={0.8} />
          <Lettering x={px(x(at))} y={bottom + 20} textAnchor="middle" fill="var(--graphite)">
            {text}
          </Lettering>
        </Fragment>
      ))}
      {upTicks.map(({ at, text }) => (
        <Fragment key={at}>
          <path d={`M${left} ${px(y(at))}H${right}`} stroke="var(--rule)" strokeWidth={0.8} />
          <Lettering x={left - 8} y={px(y(at) + 5)} textAnchor="end" fill="var(--graphite)">
            {text}
          </Lettering>
        </Fragment>
      ))}
      <Lettering x={left - 8} y={14} textAnchor="start" dx={-38} fill="var(--graphite)" fontSize={13}>
        {[up.words, up.unit].filter(Boolean).join(', ')}
      </Lettering>
      <Lettering x={right} y={bottom + 40} textAnchor="end" fill="var(--graphite)" fontSize={13}>
        {[across.words, lastAcross === undefined ? '' : across.unit].filter(Boolean).join(', ')}
      </Lettering>
      {children({ x, y, left, right, top, bottom })}
      <path d={`M${left} ${top}V${bottom}H${right}`} stroke="var(--ink)" strokeWidth={1.4} fill="none" />
    </svg>
  )
}

export interface PlotPoint {
  readonly x: number
  readonly y: number
}

const looks = {
  /** The one that counts. */
  heavy: { strokeWidth: 2.6 },
  second: { strokeWidth: 1.8, strokeDasharray: '8 4' },
  third: { strokeWidth: 1.8, strokeDasharray: '10 3 2 3' },
  fourth: { strokeWidth: 1.8, strokeDasharray: '3 3' },
  fifth: { strokeWidth: 1.8, strokeDasharray: '14 3 2 3 2 3' },
  before: { strokeWidth: 1.4, strokeDasharray: '0.1 4', strokeLinecap: 'round' },
  thin: { strokeWidth: 1.2 },
} as const

export function PlotLine({
  frame,
  points,
  look = 'heavy',
}: {
  frame: { x: (value: number) => number; y: (value: number) => number }
  points: readonly PlotPoint[]
  look?: keyof typeof looks
}) {
  const draw = line<PlotPoint>()
    .x((point) => frame.x(point.x))
    .y((point) => frame.y(point.y))
    .digits(1)
  return <path d={draw(points) ?? ''} fill="none" stroke="var(--ink)" strokeLinejoin="round" {...looks[look]} />
}

/** A reading: a ring, or a triangle where there are two kinds. Violet, because a hand took it. */
export function PlotReading({
  frame,
  at,
  way = 'ring',
}: {
  frame: PlotFrame
  at: PlotPoint
  way?: 'ring' | 'triangle'
}) {
  const [x, y] = [frame.x(at.x), frame.y(at.y)]
  return (
    <path
      d={way === 'ring' ? `M${px(x - 4)} ${px(y)}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0z` : `M${px(x)} ${px(y - 5)}l5 9h-10z`}
      fill="var(--paper)"
      stroke="var(--hand)"
      strokeWidth={1.8}
    />
  )
}
