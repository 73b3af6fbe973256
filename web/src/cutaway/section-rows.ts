import { type ForkParameters, forkStations, type Leg, roomSections } from '@legwork/drawing'
import { chamberFigures, lowerFigure } from './chamber-figures.ts'

/** A line of the section's table; a figure that the part has none of is left out. */
export interface SectionRow {
  readonly part:
    | 'positive'
    | 'negative'
    | 'lower.left'
    | 'lower.right'
    | 'oil.left'
    | 'oil.right'
    | 'spacers'
    | 'bushings'
    | 'ring'
  /** Gauge [Pa]. */
  readonly pressure?: number
  /** [m³] */
  readonly volume?: number
  /** Along the leg [N]: pushes it longer, or pulls it shorter. */
  readonly force?: number
  /** Level above the leg's floor, distance of the bushings, stroke of the ring [m]. */
  readonly length?: number
  readonly count?: number
}

const drawnLegs = ['left', 'right'] as const
/** The fork's own name of a leg that is drawn below (`left`) or above. */
const ownLeg = ({ springLeg = 'left' }: ForkParameters, drawn: Leg): Leg =>
  (drawn === 'left') === (springLeg === 'left') ? 'left' : 'right'

/** Where the bath stands above the floor of its lower leg [m]. */
export function oilLevel(fork: ForkParameters, leg: Leg): number {
  const room = forkStations(fork).rooms[leg]
  return (roomSections(room, fork.stroke * 1e3, fork.legs[leg].oil).level - room.floor) / 1e3
}

/** Everything the section shows, in figures; SI. */
export function sectionRows(fork: ForkParameters): SectionRow[] {
  const chambers = chamberFigures(fork)
  const { spring, ring, bushingsApart } = fork
  return [
    ...(chambers ? [{ part: 'positive' as const, ...chambers.positive }] : []),
    ...(chambers ? [{ part: 'negative' as const, ...chambers.negative }] : []),
    ...drawnLegs.flatMap((leg): SectionRow[] => {
      const found = lowerFigure(fork, leg)
      return found ? [{ part: `lower.${ownLeg(fork, leg)}`, ...found }] : []
    }),
    ...drawnLegs.map(
      (leg): SectionRow => ({
        part: `oil.${ownLeg(fork, leg)}`,
        volume: fork.legs[leg].oil,
        length: oilLevel(fork, leg),
      }),
    ),
    ...(spring.kind === 'air'
      ? [{ part: 'spacers' as const, count: spring.spacers, volume: spring.spacers * spring.spacerVolume }]
      : []),
    ...(bushingsApart === undefined ? [] : [{ part: 'bushings' as const, length: bushingsApart }]),
    ...(typeof ring === 'number' ? [{ part: 'ring' as const, length: ring }] : []),
  ]
}
