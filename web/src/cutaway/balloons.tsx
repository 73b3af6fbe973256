/** Balloons over a spring leg: each ties a row of the page to a part of the drawing. */
import type { ForkParameters } from '@legwork/drawing'
import { inARow } from '../charts/in-a-row.ts'
import { px } from '../charts/number-text.ts'
import { useOwnWidth } from '../charts/use-own-width.ts'
import { type BalloonPart, balloonAnchors } from './balloon-places.ts'

export interface Balloon {
  /** A letter of a row, or the number of a step. */
  sign: string
  part: BalloonPart
}

interface BalloonsProps {
  fork: ForkParameters
  balloons: readonly Balloon[]
  /** The drawing's own paper [mm]. */
  paper: { x: number; y: number; width: number; height: number }
}

const radius = 12
/** Room over the drawing that the balloons take [px]. */
export const balloonRoom = 30

/** Laid over the drawing, a row of balloons above it with their leaders down into the parts. */
export function Balloons({ fork, balloons, paper }: BalloonsProps) {
  const [place, width] = useOwnWidth(876)
  const scale = width / paper.width
  const height = paper.height * scale + balloonRoom
  const anchors = balloonAnchors(fork)
  const ends = balloons.map(({ part }) => {
    const [along, across] = anchors[part]
    return { x: (along - paper.x) * scale, y: balloonRoom + (-across - paper.y) * scale }
  })
  const row = inARow(
    ends.map(({ x }) => Math.min(width - radius - 1, Math.max(radius + 1, x - 14))),
    2 * radius + 6,
    width - radius - 1,
  )
  return (
    <div className="balloons-over" ref={place} aria-hidden="true">
      <svg
        width={width}
        height={height}
        viewBox={`0 0 ${px(width)} ${px(height)}`}
        aria-hidden="true"
        focusable="false"
      >
        {balloons.map(({ sign, part }, index) => {
          const x = row[index] ?? 0
          const end = ends[index] ?? { x, y: radius }
          const length = Math.hypot(end.x - x, end.y - radius - 1)
          const from = {
            x: x + ((end.x - x) * radius) / length,
            y: radius + 1 + ((end.y - radius - 1) * radius) / length,
          }
          return (
            <g key={`${sign} ${part}`}>
              <path
                d={`M${px(from.x)} ${px(from.y)}L${px(end.x)} ${px(end.y)}`}
                stroke="var(--ink)"
                strokeWidth={0.8}
                fill="none"
              />
              <circle cx={px(end.x)} cy={px(end.y)} r={2.4} fill="var(--ink)" />
              <circle cx={px(x)} cy={radius + 1} r={radius} fill="var(--paper)" stroke="var(--ink)" strokeWidth={1.2} />
              <text x={px(x)} y={radius + 6} textAnchor="middle" fontSize={14} fontWeight={600} fill="var(--ink)">
                {sign}
              </text>
            </g>
          )
        })}
      </svg>
    </div>
  )
}
