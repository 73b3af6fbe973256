/** A steel rule under the drawing whose zero lies under the wiper: its grip moves the stroke. */
import { type PointerEvent, useRef } from 'react'
import { gripPath, strokeByKey } from '../charts/force-stroke-geometry.ts'
import { Lettering } from '../charts/lettering.tsx'
import { px } from '../charts/number-text.ts'
import { useOwnWidth } from '../charts/use-own-width.ts'
import type { StrokeGrip } from './use-stroke-hold.ts'

const step = 0.001
const height = 62

interface StrokeRuleProps {
  grip: StrokeGrip
  stroke: number
  /** Where strokes 0 and full lie in the drawing above, 0 … 1 of its width. */
  axis: { from: number; to: number }
  travel: number
  unit: string
}

export function StrokeRule({ grip, stroke, axis, travel, unit }: StrokeRuleProps) {
  const [place, width] = useOwnWidth(876)
  const held = useRef(false)
  const [left, right] = [axis.from * width, axis.to * width]
  const x = (at: number) => left + ((right - left) * at) / travel
  const millimetres = travel * 1e3
  const every = (right - left) / millimetres > 1.2 ? 5 : 10
  const ticks = Array.from({ length: Math.floor(millimetres / every) + 1 }, (_, index) => index * every)
  const moveTo = (event: PointerEvent<SVGElement>) => {
    const box = event.currentTarget.ownerSVGElement?.getBoundingClientRect()
    if (!box || box.width === 0) return
    const at = (event.clientX - box.left) * (width / box.width)
    const to = Math.round((((at - left) / (right - left)) * travel) / step) * step
    grip.onStroke(Number(Math.min(grip.fullStroke, Math.max(0, to)).toPrecision(9)))
  }
  const take = {
    onPointerDown(event: PointerEvent<SVGElement>) {
      held.current = true
      event.currentTarget.setPointerCapture(event.pointerId)
      moveTo(event)
    },
    onPointerMove: (event: PointerEvent<SVGElement>) => held.current && moveTo(event),
    onPointerUp() {
      held.current = false
    },
    onPointerCancel() {
      held.current = false
    },
  }
  return (
    <div className="stroke-rule screen-only" ref={place}>
      {/* biome-ignore lint/a11y/useSemanticElements: a drawing with a slider in it is a group; SVG has no fieldset */}
      <svg width="100%" height={height} viewBox={`0 0 ${width} ${height}`} role="group" aria-label={grip.label}>
        <path d={`M${px(left)} 1H${px(right)}`} stroke="var(--ink)" strokeWidth={1.4} />
        {ticks.map((at) => (
          <path
            key={at}
            d={`M${px(x(at / 1e3))} 1v${at % 50 === 0 ? 12 : at % 10 === 0 ? 8 : 5}`}
            stroke="var(--ink)"
            strokeWidth={at % 50 === 0 ? 1.4 : 0.8}
          />
        ))}
        {ticks
          .filter((at) => at % 50 === 0 && Math.abs(x(at / 1e3) - x(stroke)) > 24)
          .map((at) => (
            <Lettering key={at} x={px(x(at / 1e3))} y={30} textAnchor="middle" fill="var(--graphite)">
              {at}
              {at + 50 > millimetres ? ` ${unit}` : ''}
            </Lettering>
          ))}
        <rect
          x={px(left - 20)}
          y={0}
          width={px(right - left + 40)}
          height={height}
          fill="transparent"
          style={{ touchAction: 'pan-y', cursor: 'ew-resize' }}
          {...take}
        />
        <g
          role="slider"
          tabIndex={0}
          aria-label={grip.label}
          aria-valuemin={0}
          aria-valuemax={Math.round(grip.fullStroke * 1e3)}
          aria-valuenow={Math.round(stroke * 1e3)}
          aria-valuetext={grip.says}
          style={{ touchAction: 'none', cursor: 'ew-resize' }}
          onKeyDown={(event) => {
            const to = strokeByKey(event.key, stroke, grip.fullStroke, step)
            if (to === null) return
            event.preventDefault()
            grip.onStroke(to)
          }}
          {...take}
        >
          <rect x={px(x(stroke) - 28)} y={4} width={56} height={58} fill="transparent" />
          <path d={gripPath(x(stroke), 6)} fill="var(--hand)" />
          <path
            d={`M${px(x(stroke) - 4)} 29v14M${px(x(stroke) + 4)} 29v14`}
            stroke="var(--on-hand)"
            strokeWidth={1.6}
          />
        </g>
      </svg>
    </div>
  )
}
