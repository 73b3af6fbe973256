import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { gripPath, strokeByKey, strokeUnder } from './force-stroke-geometry.ts'
import type { Framed } from './force-stroke-props.ts'
import { px } from './number-text.ts'

/** A real slider under the axis; a tap anywhere on the paper brings it there. */
export function Grip({ frame, fullStroke, stroke, onStroke, step = 0.001, words, strokeMeasure }: Framed) {
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
