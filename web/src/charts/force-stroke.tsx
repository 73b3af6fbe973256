import { curvePath, type ForceStrokeFrame, forceAt, forceStrokeFrame, type Plot } from './force-stroke-geometry.ts'
import { Grip } from './force-stroke-grip.tsx'
import { Paper } from './force-stroke-paper.tsx'
import type { ForceStrokeProps } from './force-stroke-props.ts'
import { FingerForce, LineWords } from './force-stroke-words.tsx'
import { Hatch, usePatternId } from './hatch.tsx'
import { px } from './number-text.ts'

/** Forces stand left of the paper, names of the curves right of it [px]. */
export const besidePaper = { left: 48, right: 96 }

export const defaultPlot = (width: number, height: number): Plot => ({
  left: besidePaper.left,
  width: width - besidePaper.left - besidePaper.right,
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
  // The load's own words stand there.
  const atLoad = load && reading !== null && Math.abs(reading - load.force) < frame.maxForce / 12
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
      <g aria-hidden="true" className="squared-paper">
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
          key={`${point.when}${point.way}${point.stroke}`}
          className={`reading ${point.way}`}
          d={
            point.way === 'pressing'
              ? `M${px(x(point.stroke) - 4)} ${px(y(point.force))}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0z`
              : `M${px(x(point.stroke))} ${px(y(point.force) - 5)}l5 9h-10z`
          }
          fill="var(--paper)"
          stroke={point.when === 'today' ? 'var(--hand)' : 'var(--graphite)'}
          strokeWidth={point.when === 'today' ? 1.8 : 1.2}
        />
      ))}
      <LineWords frame={frame} {...props} />
      {!atLoad && <FingerForce frame={frame} {...props} />}
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
