import { rectangle } from './lower-room.ts'
import type { FlatShape, Leg, LineShape, Look, Point, RevolvedShape } from './shape.ts'

/** Makes the parts of one leg; `shift` moves those of the lower leg with the stroke. */
export function partsOf(leg: Leg, shift: number) {
  const moved = (section: readonly Point[]): Point[] => section.map(([u, r]) => [u + shift, r])
  const revolved = (name: string, section: readonly Point[], look: Look): RevolvedShape => ({
    kind: 'revolved',
    name,
    leg,
    section: moved(section),
    ...look,
  })
  return {
    body: revolved,
    ring: (name: string, from: number, to: number, inner: number, outer: number, look: Look) =>
      revolved(name, rectangle(from, to, inner, outer), look),
  }
}

export const cast: Look = { material: 'alloy', hatching: 'cast', outline: 'heavy' }
export const castNeighbour: Look = { material: 'alloy', hatching: 'cast-neighbour', outline: 'heavy' }
export const turned: Look = { material: 'alloy', hatching: 'turned', outline: 'heavy' }
export const bronze: Look = { material: 'brass', hatching: 'close', outline: 'heavy' }
export const steel: Look = { material: 'steel', outline: 'heavy' }
export const rubber: Look = { material: 'polymer', hatching: 'rubber', outline: 'heavy' }
/** Seals and walls too thin to hatch are filled. */
export const filled: Look = { material: 'ink', outline: 'none' }

export const line = (
  name: string,
  points: readonly Point[],
  weight: LineShape['weight'] = 'fine',
  dashes: LineShape['dashes'] = 'solid',
  leg: Leg = 'left',
): LineShape => ({ kind: 'line', name, points, weight, dashes, leg })

export const flat = (name: string, outlinePoints: readonly Point[], look: Look): FlatShape => ({
  kind: 'flat',
  name,
  outlinePoints,
  ...look,
})
