import {
  type FlatShape,
  type LineShape,
  type Look,
  lineDashes,
  lineStrokes,
  outlinesOf,
  type Place,
  type RevolvedShape,
  type Shape,
  strokes,
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

const placesOf = (places: readonly Place[]) => places.map(([x, y]) => `${px(x)} ${px(y)}`).join('L')

/** The outline of a shape as it is drawn. */
function pathOf(shape: Shape, both: boolean): string {
  const end = shape.kind === 'line' ? '' : 'Z'
  return outlinesOf(shape, both)
    .map((places) => `M${placesOf(places)}${end}`)
    .join('')
}

interface CutProps extends Look {
  name: string
  path: string
  id: string
}

/** Drawn anew only where its outline or its wash changed: most of a fork stands still while its stroke is moved. */
const Cut = memo(function Cut({ name, path, id, material, strength, hatching, outline }: CutProps) {
  const width = strokes[outline]
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
      strokeWidth={lineStrokes[weight]}
      strokeDasharray={lineDashes[style]?.join(' ')}
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
