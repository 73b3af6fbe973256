import type { Look, Point, Shape } from '@legwork/drawing'

const pointsOf = (shape: Shape): readonly Point[] =>
  shape.kind === 'revolved' ? shape.section : shape.kind === 'flat' ? shape.outlinePoints : shape.points

function samePoints(one: readonly Point[], other: readonly Point[]): boolean {
  if (one.length !== other.length) return false
  return one.every(([u, r], index) => {
    const there = other[index]
    return there !== undefined && there[0] === u && there[1] === r
  })
}

/** A look's strength is all that changes in one part from one stroke to the next. */
const strengthOf = (shape: Shape): Look['strength'] => (shape.kind === 'line' ? undefined : shape.strength)

/**
 * The shapes of this moment, the ones that did not change as the very objects of the moment before: who draws them need
 * not look at them again.
 *
 * @example keptShapes(forkShapes(fork), before)[0] === before[0] // true where the first shape stood still
 */
export function keptShapes(now: readonly Shape[], before: readonly Shape[]): Shape[] {
  return now.map((shape, index) => {
    const was = before[index]
    if (was === undefined || was.kind !== shape.kind || was.name !== shape.name) return shape
    return strengthOf(was) === strengthOf(shape) && samePoints(pointsOf(was), pointsOf(shape)) ? was : shape
  })
}
