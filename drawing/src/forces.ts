import type { ForkParameters } from './fork-parameters.ts'
import type { ForkStations } from './fork-stations.ts'
import { flat } from './parts.ts'
import type { FlatShape, Point } from './shape.ts'

/** Under this a force is no arrow [N]. */
const least = 20
/** Of the arrow [mm]: what a newton is long, the head it has at least, half the widths of stem and head. */
const arrow = { perNewton: 0.03, head: 8, stem: 0.9, wing: 3.1 }

/** How long the arrow of a force is, as far as its chamber has room [mm]. */
export const arrowLength = (force: number, room: number): number => Math.min(room, arrow.head + arrow.perNewton * force)

/** Pressed on the piston by both chambers: arrows as long as the forces, their tips on its faces. */
export function forces({ spring, stroke, pressures }: ForkParameters, at: ForkStations): FlatShape[] {
  if (spring.kind !== 'air') return []
  const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2
  const positive = pressures.positive * (circle(spring.bore) - circle(spring.positiveShaft ?? 0))
  const negative = pressures.negative * (circle(spring.bore) - circle(spring.shaft))
  const foot = at.headTo + at.negativeLength + stroke * 1e3
  const face = foot + at.pistonLength
  const beside = -(at.innerRadius + (spring.shaft * 1e3) / 2) / 2
  return [
    ...drawn('force.positive', positive, [face, 0], 1, at.cap - face - 4),
    // On the side that no words point to.
    ...(spring.negative.kind === 'air'
      ? drawn('force.negative', negative, [foot, beside], -1, foot - at.headTo - 3)
      : []),
  ]
}

/** `away`: where the tail lies, seen from the tip. */
function drawn(name: string, force: number, [tip, across]: Point, away: 1 | -1, room: number): FlatShape[] {
  if (force < least || room < arrow.head) return []
  const length = arrowLength(force, room)
  const at = (along: number, beside: number): Point => [tip + away * along, across + beside]
  const { head, stem, wing } = arrow
  const outline = [
    at(0.4, 0),
    at(head, wing),
    at(head, stem),
    at(length, stem),
    at(length, -stem),
    at(head, -stem),
    at(head, -wing),
  ]
  return [flat(name, outline, { material: 'ink', outline: 'none' })]
}
