/** The section drawing of a fork: named shapes as SVG, laid down, crown right, hatched after ISO 128. */
import {
  axisOf,
  type Extent,
  extentOf,
  type ForkParameters,
  type ForkStations,
  type ForkTable,
  type ForkView,
  forkShapes,
  forkStations,
  legGap,
  ringFrom,
  type Shape,
} from '@legwork/drawing'
import { memo, useId, useRef } from 'react'
import { px } from '../charts/number-text.ts'
import { type Balloon, Balloons, balloonRoom } from './balloons.tsx'
import { type CalloutPart, type CalloutPlace, calloutPlaces, wordsAcross } from './callout-places.ts'
import { DrawnShape } from './drawn-shape.tsx'
import { Hatchings } from './hatchings.tsx'
import { keptShapes } from './kept-shapes.ts'
import { type StrokeGrip, useStrokeHold } from './use-stroke-hold.ts'
import './cutaway.css'

/** Figures of a chamber and what it does. */
export interface Callout {
  figures: readonly { value: string; unit: string }[]
  words: string
}

/** The words of the drawing: they stand where they act. */
export interface CutawayWords {
  callouts: Readonly<Record<CalloutPart, Callout>>
  leftLeg: string
  rightLeg: string
}

export interface ForkCutawayProps {
  fork: ForkParameters
  view?: ForkView
  /** Spoken. */
  label: string
  /** Only with both legs: they stand between them. */
  words?: CutawayWords
  /** Left out, the drawing stands still. */
  grip?: StrokeGrip
  /** Over the spring leg alone. */
  balloons?: readonly Balloon[]
}

const papers = new WeakMap<ForkStations, Partial<Record<ForkView, Extent>>>()

/** What a table's drawing takes up: the same at every stroke, so that the paper stands still under the fork. */
function paperOf(table: ForkTable, view: ForkView): Extent {
  const stations = forkStations(table)
  const before = papers.get(stations)?.[view]
  if (before) return before
  const still = { ...table, stroke: 0, pressures: { positive: 0, negative: 0, left: 0, right: 0 }, ring: 0 }
  const paper = extentOf(forkShapes(still, view), view === 'both-legs')
  papers.set(stations, { ...papers.get(stations), [view]: paper })
  return paper
}

/**
 * Where strokes 0 and full stand in the width of the drawing (0 … 1), for a chart under it that takes them for its axis; and
 * the drawing's own height, as a share of its width.
 */
export function strokeAxisOf(
  fork: ForkTable,
  view: ForkView = 'both-legs',
): { from: number; to: number; height: number } {
  const { x, width, height } = paperOf(fork, view)
  const zero = ringFrom(forkStations(fork), 0)
  return { from: (zero - x) / width, to: (zero + fork.travel * 1e3 - x) / width, height: height / width }
}

/** A line from the words to a dot inside their part. */
const Leader = memo(function Leader({ along, across, from }: { along: number; across: number; from: number }) {
  const y = (value: number) => px(axisOf('left', true) - value)
  return (
    <g className="cutaway-leader">
      <path
        d={`M${px(along)} ${y(across)}L${px(from + 6)} ${y(wordsAcross)}`}
        stroke="var(--ink)"
        strokeWidth={0.5}
        fill="none"
      />
      <circle cx={px(along)} cy={y(across)} r={1.4} fill="var(--ink)" />
    </g>
  )
})

/** The plumb bob hangs to the left: the drawing lies down. */
export const Down = memo(function Down({ word }: { word: string }) {
  return (
    <span className="down">
      <svg width={66} height={14} viewBox="0 0 66 14" aria-hidden="true" focusable="false">
        <path d="M64 7H24M64 2v10" stroke="var(--ink)" strokeWidth={1} fill="none" />
        <path d="M1 7l9 -5.5h13v11h-13z" fill="var(--ink)" />
      </svg>
      {word}
    </span>
  )
})

function CalloutWords({ callout, left, top }: { callout: Callout; left: string; top: string }) {
  return (
    <div className="cutaway-callout" style={{ left, top }}>
      <dt>
        {callout.figures.map(({ value, unit }) => (
          <span key={unit} translate="no">
            {value}
            {'\u2009'}
            <small>{unit}</small>
          </span>
        ))}
      </dt>
      <dd>{callout.words}</dd>
    </div>
  )
}

/** The fork as it is cut, to scale along and across; the legs stand closer than they do. */
export function ForkCutaway({ fork, view = 'both-legs', label, words, grip, balloons }: ForkCutawayProps) {
  const id = useId()
  const both = view === 'both-legs'
  const paper = paperOf(fork, view)
  const { x, y, width, height } = paper
  const hold = useStrokeHold(grip, fork.stroke)
  const before = useRef<Shape[]>([])
  const shapes = keptShapes(forkShapes(fork, view), before.current)
  before.current = shapes
  const places: readonly CalloutPlace[] = words && both ? calloutPlaces(fork) : []
  const drawing = (
    <svg
      className="cutaway"
      viewBox={`${px(x)} ${px(y)} ${px(width)} ${px(height)}`}
      width="100%"
      preserveAspectRatio="xMidYMin meet"
      role="img"
      aria-label={label}
      data-stroke={fork.stroke}
      {...hold}
    >
      <defs>
        <Hatchings id={id} />
      </defs>
      {shapes.map((shape, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the list is made anew from the table, in the drawing's order
        <DrawnShape key={index} shape={shape} both={both} id={id} />
      ))}
      {places.map(({ part, anchor, from }) => (
        <Leader key={part} along={anchor[0]} across={anchor[1]} from={from} />
      ))}
    </svg>
  )
  if (balloons && balloons.length > 0 && !both)
    return (
      <div className="cutaway-with-balloons" style={{ paddingTop: balloonRoom }}>
        {drawing}
        <Balloons fork={fork} balloons={balloons} paper={paper} />
      </div>
    )
  if (!words || !both) return drawing
  const share = (value: number, of: number) => `${px((value / of) * 100)}%`
  return (
    <figure className="cutaway-figure">
      <p className="cutaway-leg right">{words.rightLeg}</p>
      <div className="cutaway-drawing">
        {drawing}
        <dl className="cutaway-callouts">
          {places.map(({ part, from }) => (
            <CalloutWords
              key={part}
              callout={words.callouts[part]}
              left={share(from - x, width)}
              top={share(legGap / 2 - y, height)}
            />
          ))}
        </dl>
      </div>
      <p className="cutaway-leg left" style={{ top: share(legGap - y, height) }}>
        {words.leftLeg}
      </p>
    </figure>
  )
}
