/** Shapes as they lie in the drawing: crown right, the right leg above the left one; x along, y down the page [mm]. */
import { legGap } from './chassis.ts'
import type { Leg, Point, RevolvedShape, Shape } from './shape.ts'

/** A place in the drawing: x along, y down the page [mm]. */
export type Place = readonly [x: number, y: number]
export interface Extent {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Where a leg's axis lies in the drawing, down the page [mm]. */
export const axisOf = (leg: Leg, both: boolean): number => (leg === 'left' && both ? legGap : 0)

/** Both halves of the section, above and below the axis; a part that fills the axis has no seam along it. */
function revolvedOutlines({ section }: RevolvedShape, axis: number): Place[][] {
  const onAxis = section.filter(([, r]) => r === 0).length > 1
  if (onAxis) {
    const edge = section.filter(([, r]) => r > 0)
    const whole = [...edge, ...edge.map(([u, r]): Point => [u, -r]).reverse()]
    return [whole.map(([u, r]): Place => [u, axis - r])]
  }
  return [section.map(([u, r]): Place => [u, axis - r]), section.map(([u, r]): Place => [u, axis + r])]
}

/**
 * The outlines of a shape: closed rings, of a line its one open path.
 *
 * @example outlinesOf(shape, true).length // 2 for a ring about its axis: above it and below it
 */
export function outlinesOf(shape: Shape, both: boolean): Place[][] {
  if (shape.kind === 'revolved') return revolvedOutlines(shape, axisOf(shape.leg, both))
  if (shape.kind === 'flat') return [shape.outlinePoints.map(([u, v]): Place => [u, axisOf('left', both) - v])]
  const axis = axisOf(shape.leg, both)
  return [shape.points.map(([u, v]): Place => [u, axis - v])]
}

/** What the shapes take up in the drawing [mm], with a margin. */
export function extentOf(shapes: readonly Shape[], both: boolean): Extent {
  const places = shapes.flatMap((shape) => outlinesOf(shape, both)).flat()
  const along = places.map(([x]) => x)
  const down = places.map(([, y]) => y)
  const [x, y] = [Math.min(...along) - 2, Math.min(...down) - 2]
  return { x, y, width: Math.max(...along) + 2 - x, height: Math.max(...down) + 2 - y }
}
