import { Lettering } from './lettering.tsx'
import { px } from './number-text.ts'

export type At = readonly [x: number, y: number]

interface DimensionProps {
  from: At
  to: At
  words: string
  /** Where the words stand, looking from `from` to `to`: to the right of the line or to the left. */
  side?: 'right' | 'left'
  /** How far the thin lines reach back to the part, to the other side of the words [px]; 0 for none. */
  reach?: number
  fontSize?: number
}

/** A dimension line with slender filled arrows; a short one keeps its arrows small. Its words stand upright beside it. */
export function Dimension({ from, to, words, side = 'right', reach = 0, fontSize = 15 }: DimensionProps) {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  if (length < 0.5) return null
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  // On a screen, whose y points down, this normal lies to the right of the line.
  const turn = side === 'right' ? 1 : -1
  const [nx, ny] = [-uy * turn, ux * turn]
  const head = Math.min(9, length / 3)
  const arrow = ([x, y]: At, way: number) =>
    `M${px(x)} ${px(y)}L${px(x + way * ux * head + nx * 2.2)} ${px(y + way * uy * head + ny * 2.2)}` +
    `L${px(x + way * ux * head - nx * 2.2)} ${px(y + way * uy * head - ny * 2.2)}z`
  const back = ([x, y]: At) =>
    reach === 0 ? '' : `M${px(x + nx * 5)} ${px(y + ny * 5)}L${px(x - nx * reach)} ${px(y - ny * reach)}`
  const middle: At = [(from[0] + to[0]) / 2 + nx * 7, (from[1] + to[1]) / 2 + ny * 7]
  const anchor = nx > 0.5 ? 'start' : nx < -0.5 ? 'end' : 'middle'
  // Lettering stands on its baseline: all of it below the line, none above.
  const drop = ny > 0.5 ? fontSize * 0.85 : ny < -0.5 ? 0 : fontSize * 0.35
  return (
    <>
      <path
        d={`M${px(from[0])} ${px(from[1])}L${px(to[0])} ${px(to[1])}${back(from)}${back(to)}`}
        stroke="var(--ink)"
        strokeWidth={0.8}
        fill="none"
      />
      <path d={arrow(from, 1) + arrow(to, -1)} fill="var(--ink)" />
      <Lettering x={px(middle[0])} y={px(middle[1] + drop)} textAnchor={anchor} fontSize={fontSize} halo>
        {words}
      </Lettering>
    </>
  )
}

interface ArrowProps {
  from: At
  to: At
  /** Heavy: a force; fine: a way something moves. */
  look?: 'force' | 'way'
  stroke?: string
}

/** A force or a way, with a slender filled head. */
export function Arrow({ from, to, look = 'force', stroke = 'var(--ink)' }: ArrowProps) {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  if (length < 1) return null
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  const [head, half, width] =
    look === 'force' ? [Math.min(16, length * 0.6), 6, 4] : [Math.min(9, length * 0.6), 2.4, 1]
  const neck: At = [to[0] - ux * head, to[1] - uy * head]
  return (
    <>
      <path d={`M${px(from[0])} ${px(from[1])}L${px(neck[0])} ${px(neck[1])}`} stroke={stroke} strokeWidth={width} />
      <path
        d={`M${px(to[0])} ${px(to[1])}L${px(neck[0] - uy * half)} ${px(neck[1] + ux * half)}L${px(neck[0] + uy * half)} ${px(neck[1] - ux * half)}z`}
        fill={stroke}
      />
    </>
  )
}
