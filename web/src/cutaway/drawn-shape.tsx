import {
  type FlatShape,
  type LineShape,
  type Look,
  legGap,
  type Point,
  type RevolvedShape,
  type Shape,
} from '@legwork/drawing'
import { memo } from 'react'
import { px } from '../charts/number-text.ts'

const fills: Record<Look['material'], string> = {
  alloy: 'var(--alloy)',
  steel: 'var(--steel)',
  brass: 'var(--brass)',
  polymer: 'var(--polymer)',
  oil: 'var(--oil)',
  air: 'var(--air)',
  ink: 'var(--ink)',
  paper: 'var(--paper)',
  hand: 'var(--hand)',
  none: 'none',
}

/** Where a leg's axis lies in the drawing, down the page [mm]. */
export const axisOf = (leg: 'left' | 'right', both: boolean): number => (leg === 'left' && both ? legGap : 0)

const ring = (points: readonly Point[], y: (across: number) => number): string =>
  `M${points.map(([along, across]) => `${px(along)} ${px(y(across))}`).join('L')}Z`

/** Both halves of the section, above and below the axis. */
function revolvedPath(shape: RevolvedShape, axis: number): string {
  const onAxis = shape.section.filter(([, r]) => r === 0).length > 1
  // A part that fills the axis has no seam along it.
  if (onAxis) {
    const edge = shape.section.filter(([, r]) => r > 0)
    const whole = [...edge, ...edge.map(([u, r]): Point => [u, -r]).reverse()]
    return ring(whole, (r) => axis - r)
  }
  return ring(shape.section, (r) => axis - r) + ring(shape.section, (r) => axis + r)
}

/** The outline of a shape as it is drawn. */
function pathOf(shape: Shape, both: boolean): string {
  if (shape.kind === 'revolved') return revolvedPath(shape, axisOf(shape.leg, both))
  if (shape.kind === 'flat') return ring(shape.outlinePoints, (across) => axisOf('left', both) - across)
  const axis = axisOf(shape.leg, both)
  return `M${shape.points.map(([along, across]) => `${px(along)} ${px(axis - across)}`).join('L')}`
}

const dashes: Record<LineShape['dashes'], string | undefined> = {
  solid: undefined,
  axis: '7 1.5 1 1.5',
  phantom: '7 1.2 1 1.2 1 1.2',
}

interface CutProps extends Look {
  name: string
  path: string
  id: string
}

/** Drawn anew only where its outline or its wash changed: most of a fork stands still while its stroke is moved. */
const Cut = memo(function Cut({ name, path, id, material, strength, hatching, outline }: CutProps) {
  const width = outline === 'heavy' ? 0.75 : outline === 'fine' ? 0.4 : 0
  return (
    <g data-shape={name}>
      <path
        d={path}
        fill={fills[material]}
        fillOpacity={strength ?? 1}
        stroke={width > 0 ? 'var(--ink)' : 'none'}
        strokeWidth={width}
      />
      {hatching && <path d={path} fill={`url(#${id}-${hatching})`} />}
    </g>
  )
})

const Line = memo(function Line({
  name,
  path,
  style,
  weight,
}: {
  name: string
  path: string
  style: LineShape['dashes']
  weight: LineShape['weight']
}) {
  return (
    <path
      data-shape={name}
      d={path}
      fill="none"
      stroke="var(--ink)"
      strokeWidth={weight === 'heavy' ? 0.75 : 0.3}
      strokeDasharray={dashes[style]}
    />
  )
})

function look(shape: RevolvedShape | FlatShape): Look {
  const { material, strength, hatching, outline } = shape
  return {
    material,
    outline,
    ...(strength === undefined ? {} : { strength }),
    ...(hatching === undefined ? {} : { hatching }),
  }
}

/** One shape of the section; `id` leads to the drawing's hatchings. The very same shape is not looked at again. */
export const DrawnShape = memo(function DrawnShape({ shape, both, id }: { shape: Shape; both: boolean; id: string }) {
  const path = pathOf(shape, both)
  if (shape.kind === 'line') return <Line name={shape.name} path={path} style={shape.dashes} weight={shape.weight} />
  return <Cut name={shape.name} path={path} id={id} {...look(shape)} />
})

/** What the shapes take up in the drawing [mm], with a margin. */
export function extentOf(
  shapes: readonly Shape[],
  both: boolean,
): { x: number; y: number; width: number; height: number } {
  const points = shapes.flatMap((shape): Point[] => {
    if (shape.kind === 'flat') return shape.outlinePoints.map(([u, v]): Point => [u, axisOf('left', both) - v])
    const axis = axisOf(shape.leg, both)
    if (shape.kind === 'line') return shape.points.map(([u, v]): Point => [u, axis - v])
    return shape.section.flatMap(([u, r]): Point[] => [
      [u, axis - r],
      [u, axis + r],
    ])
  })
  const along = points.map(([u]) => u)
  const across = points.map(([, v]) => v)
  const [x, y] = [Math.min(...along) - 2, Math.min(...across) - 2]
  return { x, y, width: Math.max(...along) + 2 - x, height: Math.max(...across) + 2 - y }
}
