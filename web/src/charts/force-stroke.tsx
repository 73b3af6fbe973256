import { Fragment, type KeyboardEvent, type PointerEvent, useRef } from 'react'
import {
  type AxisMeasure,
  type Curve,
  curvePath,
  type ForceStrokeFrame,
  forceAt,
  forceStrokeFrame,
  gripPath,
  type Plot,
  squares,
  strokeByKey,
  strokeUnder,
} from './force-stroke-geometry.ts'
import { Hatch, usePatternId } from './hatch.tsx'
import { BookWords, Figure, Lettering } from './lettering.tsx'
import { px } from './number-text.ts'

export interface ForceStrokeProps {
  /** Full stroke of the axis [m]. */
  fullStroke: number
  slow: Curve
  fast?: Curve
  lastVisit?: Curve
  /** The slow curve of the setting that a what-if is held against. */
  before?: Curve
  /** Where the load rests and where friction may leave it [m]. */
  sag?: { stroke: number; low: number; high: number }
  /** Readings of the press: ring = pressing, triangle = releasing. */
  readings?: readonly { stroke: number; force: number; way: 'pressing' | 'releasing' }[]
  /** Load along the leg with its doubt [N]. */
  load?: { force: number; low: number; high: number; value: string; unit: string; words: string }
  /** The zone of sag that is wanted [m]. */
  wanted?: { from: number; to: number; words: string }
  /** Where the finger is [m]; its force is read off the slow curve. */
  stroke: number
  onStroke?: (stroke: number) => void
  /** One step of the keys and the finger [m]. */
  step?: number
  strokeMeasure: AxisMeasure
  forceMeasure: AxisMeasure
  words: {
    /** Spoken name of the chart. */
    chart: string
    slow: string
    fast?: string
    lastVisit?: string
    before?: string
    /** Spoken name of the grip, e.g. 'stroke', and what it stands at, e.g. '30 mm, 351 N'. */
    grip: string
    gripValue: string
  }
  width?: number
  height?: number
  /** Where the paper lies in the picture; taken from the cutaway so that both share one stroke axis. */
  plot?: Plot
  /** Draws the wiper lines up to here [px], to join with the drawing above. */
  joinUpTo?: number
}

export const defaultPlot = (width: number, height: number): Plot => ({
  left: 14,
  width: width - 14 - 68,
  top: 14,
  height: height - 14 - 56,
})

/** Force over stroke on squared paper, with a grip under the axis that is a real slider. */
export function ForceStroke(props: ForceStrokeProps) {
  const { fullStroke, slow, fast, lastVisit, before, load, wanted, stroke, words, width = 349, height = 360 } = props
  const id = usePatternId()
  const plot = props.plot ?? defaultPlot(width, height)
  const frame = forceStrokeFrame(plot, fullStroke, [slow, fast ?? [], lastVisit ?? [], before ?? []])
  const { x, y } = frame
  const bottom = plot.top + plot.height
  const right = plot.left + plot.width
  const reading = forceAt(slow, stroke)
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing with a slider in it is a group; SVG has no fieldset
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      overflow="visible"
      role="group"
      aria-label={words.chart}
    >
      <defs>
        <Hatch id={`${id}w`} pitch={5} angle={-45} width={0.8} opacity={0.55} />
        <Hatch id={`${id}d`} pitch={4} />
      </defs>
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes the focus; the numbers of the axes are for the eye */}
      <g aria-hidden="true">
        <Paper frame={frame} {...props} />
      </g>
      {wanted && (
        <rect
          x={px(x(wanted.from))}
          y={plot.top}
          width={px(x(wanted.to) - x(wanted.from))}
          height={plot.height}
          fill={`url(#${id}w)`}
        />
      )}
      {props.joinUpTo !== undefined &&
        [0, fullStroke].map((end) => (
          <path
            key={end}
            d={`M${px(x(end))} ${px(props.joinUpTo ?? 0)}V${px(bottom + 8)}`}
            stroke="var(--ink)"
            strokeWidth={0.7}
            strokeDasharray="9 2.5 2 2.5"
          />
        ))}
      <path
        d={`M${px(x(stroke))} ${px(props.joinUpTo ?? plot.top)}V${px(bottom + 14)}`}
        stroke="var(--hand)"
        strokeWidth={1.6}
      />
      {lastVisit && (
        <path
          d={curvePath(frame, lastVisit)}
          fill="none"
          stroke="var(--ink)"
          strokeWidth={1.4}
          strokeDasharray="0.1 4"
          strokeLinecap="round"
        />
      )}
      {before && <path d={curvePath(frame, before)} fill="none" stroke="var(--graphite)" strokeWidth={1.2} />}
      <path d={curvePath(frame, slow)} fill="none" stroke="var(--ink)" strokeWidth={2.6} strokeLinejoin="round" />
      {fast && (
        <path
          d={curvePath(frame, fast)}
          fill="none"
          stroke="var(--ink)"
          strokeWidth={1.8}
          strokeDasharray="8 4"
          strokeLinejoin="round"
        />
      )}
      {load && (
        <>
          <rect
            x={plot.left}
            y={px(y(Math.min(frame.maxForce, load.high)))}
            width={plot.width}
            height={px(y(load.low) - y(Math.min(frame.maxForce, load.high)))}
            fill={`url(#${id}d)`}
            opacity={0.5}
          />
          <path d={`M${plot.left - 8} ${px(y(load.force))}H${right + 8}`} stroke="var(--ink)" strokeWidth={1.2} />
        </>
      )}
      <path
        d={`M${plot.left} ${bottom}V${plot.top}M${plot.left} ${bottom}H${right}`}
        stroke="var(--ink)"
        strokeWidth={1.4}
        fill="none"
      />
      {props.sag && load && <SagBand frame={frame} sag={props.sag} force={load.force} />}
      {props.readings?.map((point) => (
        <path
          key={`${point.way}${point.stroke}`}
          d={
            point.way === 'pressing'
              ? `M${px(x(point.stroke) - 4)} ${px(y(point.force))}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0z`
              : `M${px(x(point.stroke))} ${px(y(point.force) - 5)}l5 9h-10z`
          }
          fill="var(--paper)"
          stroke="var(--hand)"
          strokeWidth={1.8}
        />
      ))}
      <LineWords frame={frame} {...props} />
      {reading !== null && (
        <circle
          cx={px(x(stroke))}
          cy={px(y(reading))}
          r={5}
          fill="var(--paper)"
          stroke="var(--hand)"
          strokeWidth={2.6}
        />
      )}
      <Grip frame={frame} {...props} />
    </svg>
  )
}

/** A whisker on the load line: the sag may be read anywhere along it. */
function SagBand({
  frame,
  sag,
  force,
}: {
  frame: ForceStrokeFrame
  sag: { low: number; high: number }
  force: number
}) {
  const [from, to, at] = [frame.x(sag.low), frame.x(sag.high), frame.y(force)]
  return (
    <path
      className="sag-band"
      d={`M${px(from)} ${px(at - 9)}v18M${px(to)} ${px(at - 9)}v18M${px(from)} ${px(at)}H${px(to)}`}
      stroke="var(--ink)"
      strokeWidth={2.4}
      fill="none"
    />
  )
}

interface Framed extends ForceStrokeProps {
  frame: ForceStrokeFrame
}

function Paper({ frame, fullStroke, strokeMeasure, forceMeasure, stroke }: Framed) {
  const { x, y, plot, maxForce } = frame
  const bottom = plot.top + plot.height
  const right = plot.left + plot.width
  const across = squares(fullStroke, strokeMeasure.size, plot.width)
  const up = squares(maxForce, forceMeasure.size, plot.height)
  const ink = (heavy: boolean) => ({ stroke: heavy ? 'var(--rule)' : 'var(--hair)', strokeWidth: heavy ? 1 : 0.6 })
  const lastHeavy = across.filter((square) => square.heavy).at(-1)?.at
  const highest = up.filter((square) => square.heavy).at(-1)?.at
  return (
    <>
      {across.map(({ at, heavy }) => (
        <path key={at} d={`M${px(x(at))} ${plot.top}V${bottom}`} {...ink(heavy)} />
      ))}
      {up.map(({ at, heavy }) => (
        <Fragment key={at}>
          <path d={`M${plot.left} ${px(y(at))}H${right}`} {...ink(heavy)} />
          {heavy && (
            <>
              <path d={`M${right} ${px(y(at))}h5`} stroke="var(--ink)" strokeWidth={1.2} />
              <Lettering x={right + 9} y={px(y(at) + 5)} fill="var(--graphite)">
                {forceMeasure.format(at / forceMeasure.size)}
                {at === highest ? ` ${forceMeasure.unit}` : ''}
              </Lettering>
            </>
          )}
        </Fragment>
      ))}
      {across
        .filter(({ at, heavy }) => heavy && Math.abs(x(at) - x(stroke)) > (at === lastHeavy ? 34 : 21))
        .map(({ at }) => (
          <Lettering key={at} x={px(x(at))} y={bottom + 30} textAnchor="middle" fill="var(--graphite)">
            {strokeMeasure.format(at / strokeMeasure.size)}
            {at === lastHeavy ? ` ${strokeMeasure.unit}` : ''}
          </Lettering>
        ))}
    </>
  )
}

/** Words stand on their line: the reader needs no legend. */
function LineWords({ frame, fullStroke, slow, fast, lastVisit, before, load, wanted, words }: Framed) {
  const { x, y, plot } = frame
  const on = (curve: Curve, share: number) => y(forceAt(curve, fullStroke * share) ?? 0)
  const inside = (at: number) => px(Math.min(plot.top + plot.height - 8, Math.max(plot.top + 34, at)))
  return (
    <>
      <BookWords halo x={px(x(fullStroke * 0.77))} y={inside(on(slow, 0.83) + 34)}>
        {words.slow}
      </BookWords>
      {fast && words.fast !== undefined && (
        <BookWords halo x={px(x(fullStroke * 0.69))} y={inside(on(fast, 0.72) - 14)} textAnchor="end">
          {words.fast}
        </BookWords>
      )}
      {lastVisit && words.lastVisit !== undefined && (
        <BookWords halo x={px(x(fullStroke * 0.5))} y={inside(on(lastVisit, 0.5) + 30)}>
          {words.lastVisit}
        </BookWords>
      )}
      {before && words.before !== undefined && (
        <BookWords halo x={px(x(fullStroke * 0.58))} y={inside(on(before, 0.58) + 26)}>
          {words.before}
        </BookWords>
      )}
      {wanted && (
        <BookWords halo x={px(x(wanted.to) + 5)} y={plot.top + 17}>
          {wanted.words}
        </BookWords>
      )}
      {load && (
        <Lettering halo x={px(x(fullStroke * 0.27))} y={px(y(load.low) + 17)} fontWeight={600}>
          <Figure value={load.value} unit={load.unit} size={17} />
          <tspan
            dx={12}
            fontSize={14.5}
            fontWeight={400}
            fill="var(--graphite)"
            style={{ fontFamily: 'var(--book)', fontFeatureSettings: 'normal' }}
          >
            {load.words}
          </tspan>
        </Lettering>
      )}
    </>
  )
}

function Grip({ frame, fullStroke, stroke, onStroke, step = 0.001, words, strokeMeasure }: Framed) {
  const held = useRef(false)
  const at = frame.x(stroke)
  const bottom = frame.plot.top + frame.plot.height
  if (!onStroke) return null
  const moveTo = (event: PointerEvent<SVGElement>) => {
    const svg = event.currentTarget.ownerSVGElement
    if (!svg) return
    const box = svg.getBoundingClientRect()
    const scale = box.width === 0 ? 1 : svg.viewBox.baseVal.width / box.width
    onStroke(strokeUnder(frame, (event.clientX - box.left) * scale, fullStroke, step))
  }
  const take = {
    onPointerDown: (event: PointerEvent<SVGElement>) => {
      held.current = true
      event.currentTarget.setPointerCapture(event.pointerId)
      moveTo(event)
    },
    onPointerMove: (event: PointerEvent<SVGElement>) => {
      if (held.current) moveTo(event)
    },
    onPointerUp: () => {
      held.current = false
    },
    onPointerCancel: () => {
      held.current = false
    },
  }
  const onKeyDown = (event: KeyboardEvent<SVGElement>) => {
    const to = strokeByKey(event.key, stroke, fullStroke, step)
    if (to === null) return
    event.preventDefault()
    onStroke(to)
  }
  return (
    <>
      {/* A tap anywhere on the paper brings the grip there; scrolling up and down stays with the page. */}
      <rect
        x={frame.plot.left}
        y={frame.plot.top}
        width={frame.plot.width}
        height={frame.plot.height}
        fill="transparent"
        style={{ touchAction: 'pan-y', cursor: 'ew-resize' }}
        {...take}
      />
      <g
        role="slider"
        tabIndex={0}
        aria-label={words.grip}
        aria-valuemin={0}
        aria-valuemax={Number((fullStroke / strokeMeasure.size).toPrecision(6))}
        aria-valuenow={Number((stroke / strokeMeasure.size).toPrecision(6))}
        aria-valuetext={words.gripValue}
        style={{ touchAction: 'none', cursor: 'ew-resize' }}
        onKeyDown={onKeyDown}
        {...take}
      >
        <rect x={px(at - 28)} y={bottom} width={56} height={56} fill="transparent" />
        <path d={gripPath(at, bottom)} fill="var(--hand)" />
        <path
          d={`M${px(at - 4)} ${bottom + 21}v14M${px(at + 4)} ${bottom + 21}v14`}
          stroke="var(--on-hand)"
          strokeWidth={1.6}
        />
      </g>
    </>
  )
}
