/** Curves of a spring for a picture: asked of the registry, read between their points. */
import { answerTo, numberAt, rowsAt } from './asked-of.ts'

export interface StrokeForce {
  stroke: number
  force: number
}

/** The curve of a spring, finely drawn; nothing where it is refused. */
export function curveOf(asked: Record<string, unknown>): StrokeForce[] {
  const answer = answerTo('spring-curve', { points: 121, ...asked })
  return rowsAt(answer, 'points').map((point) => ({
    stroke: numberAt(point, ['stroke']),
    force: numberAt(point, ['force']),
  }))
}

/** Force of a drawn curve at a stroke, straight between its points. */
export function forceOn(points: readonly StrokeForce[], stroke: number): number {
  const next = points.findIndex((point) => point.stroke >= stroke)
  const [before, after] = [points[next - 1], points[next]]
  if (!after) return points.at(-1)?.force ?? 0
  if (!before) return after.force
  const share = (stroke - before.stroke) / (after.stroke - before.stroke)
  return before.force + share * (after.force - before.force)
}

/** The conditions of a question that a curve is asked with. */
export function conditionsOf(input: unknown): Record<string, unknown> {
  const { spring, pressure, pressureAt, ambient } = Object(input)
  return { spring, pressure, pressureAt, ambient }
}
