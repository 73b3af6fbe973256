import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { strokeByKey } from '../charts/force-stroke-geometry.ts'

/** A stroke that a hand moves on the drawing itself. */
export interface StrokeGrip {
  /** How far the spring lets it go [m]. */
  readonly fullStroke: number
  readonly onStroke: (stroke: number) => void
  /** Spoken name, and what it stands at, e.g. '30 mm of 150 mm'. */
  readonly label: string
  readonly says: string
  /** The rule or the chart under the drawing takes the keys: one slider a picture is enough to step through. */
  readonly keysElsewhere?: boolean
}

const step = 0.001

/** The stroke after a finger went so far over the drawing, in whole millimetres and within its ends [m]. */
export function draggedTo(from: number, pixels: number, metresPerPixel: number, fullStroke: number): number {
  const stroke = Math.round((from + pixels * metresPerPixel) / step) * step
  return Number(Math.min(fullStroke, Math.max(0, stroke)).toPrecision(9))
}

/**
 * What makes a drawing a slider: the finger takes the lower legs and moves them as far as it goes, wherever it was put
 * down; a tap changes nothing. Up and down stay with the page.
 */
export function useStrokeHold(grip: StrokeGrip | undefined, stroke: number) {
  const held = useRef<{ x: number; stroke: number } | null>(null)
  if (!grip) return {}
  const { fullStroke, onStroke, label, says } = grip
  const keys = {
    role: 'slider',
    tabIndex: 0,
    'aria-label': label,
    'aria-valuemin': 0,
    'aria-valuemax': Math.round(fullStroke * 1e3),
    'aria-valuenow': Math.round(stroke * 1e3),
    'aria-valuetext': says,
    onKeyDown(event: KeyboardEvent<SVGSVGElement>) {
      const to = strokeByKey(event.key, stroke, fullStroke, step)
      if (to === null) return
      event.preventDefault()
      onStroke(to)
    },
  }
  return {
    ...(grip.keysElsewhere ? {} : keys),
    style: { touchAction: 'pan-y', cursor: 'ew-resize' },
    onPointerDown(event: PointerEvent<SVGSVGElement>) {
      held.current = { x: event.clientX, stroke }
      event.currentTarget.setPointerCapture(event.pointerId)
    },
    onPointerMove(event: PointerEvent<SVGSVGElement>) {
      if (!held.current) return
      const { width } = event.currentTarget.getBoundingClientRect()
      const metres = event.currentTarget.viewBox.baseVal.width / 1e3
      onStroke(draggedTo(held.current.stroke, event.clientX - held.current.x, metres / width, fullStroke))
    },
    onPointerUp() {
      held.current = null
    },
    onPointerCancel() {
      held.current = null
    },
  } as const
}
