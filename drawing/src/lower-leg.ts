import { airStrength } from './air-wash.ts'
import type { ForkParameters } from './fork-parameters.ts'
import type { ForkStations } from './fork-stations.ts'
import { bumperSection, cavityLine, lowerBushing, roomSections, upperBushing } from './lower-room.ts'
import { cast, filled, partsOf, rubber } from './parts.ts'
import { roundedEnd, softStep } from './profile-line.ts'
import type { Leg, Look, Point, Shape } from './shape.ts'

/** One lower leg: its bath and air, casting, bushings, foam ring and wiper. */
export function lowerLeg(fork: ForkParameters, at: ForkStations, leg: Leg): Shape[] {
  const stroke = fork.stroke * 1e3
  const room = at.rooms[leg]
  const lower = partsOf(leg, stroke)
  const upper = partsOf(leg, 0)
  const { oil, level, air, pocket } = roomSections(room, stroke, fork.legs[leg].oil)
  const closedAir: Look = { material: 'air', strength: airStrength(fork.pressures[leg]), outline: 'none' }
  const ro = at.outerRadius
  const lip = at.lip
  const bushings = { lower: lowerBushing(room), upper: upperBushing(room) }
  const bronzeFilled: Look = { material: 'brass', outline: 'fine' }
  return [
    ...air.map((section) => lower.body(`chamber.lower.${leg}`, section, closedAir)),
    upper.body(`chamber.lower.${leg}`, pocket, closedAir),
    ...oil.map((section) =>
      lower.body(`oil.${leg}`, section, { material: 'oil', strength: 0.95, hatching: 'liquid', outline: 'none' }),
    ),
    ...oil
      .slice(-1)
      .map((section) =>
        lower.body(`oil-level.${leg}`, levelLine(section, level), { material: 'ink', outline: 'none' }),
      ),
    lower.body(`bumper.${leg}`, bumperSection(room), rubber),
    lower.body(`casting.${leg}`, castingSection(at, leg), cast),
    lower.ring(`bushing.lower.${leg}`, bushings.lower.from, bushings.lower.to, ro + 0.05, ro + 1.1, bronzeFilled),
    lower.ring(`bushing.upper.${leg}`, bushings.upper.from, bushings.upper.to, ro + 0.05, ro + 1.1, bronzeFilled),
    lower.ring(`foam.${leg}`, lip - 19.5, lip - 9.6, ro + 0.2, ro + 3.5, {
      material: 'oil',
      strength: 0.55,
      hatching: 'foam',
      outline: 'fine',
    }),
    lower.body(`wiper.${leg}`, wiperSection(lip, ro), filled),
  ]
}

/** The surface of the bath, where it stands free. */
function levelLine(oil: readonly Point[], level: number): Point[] {
  const across = oil.filter(([u]) => Math.abs(u - level) < 1e-6).map(([, r]) => r)
  const [inner, outer] = [Math.min(...across), Math.max(...across)]
  return [
    [level - 0.35, inner],
    [level - 0.35, outer],
    [level + 0.35, outer],
    [level + 0.35, inner],
  ]
}

function castingSection(at: ForkStations, leg: Leg): Point[] {
  const room = at.rooms[leg]
  const { foot, lip, outerRadius: ro } = at
  const wall = Math.max(ro + 3.3, ...Object.values(at.rooms).map((one) => one.cavityRadius + 1.7))
  const lower = lowerBushing(room)
  const upper = upperBushing(room)
  const outside: Point[] = [
    ...roundedEnd([foot, 10.5], [foot + 36, wall - 0.3], 12),
    [lip - 53, wall + 0.2],
    ...softStep([lip - 51, wall + 0.2], [lip - 25, ro + 7]),
    [lip - 4, ro + 7.1],
    [lip - 1.6, ro + 6.7],
    [lip - 1, ro + 5.7],
  ]
  const inside: Point[] = [
    [lip - 1, ro + 4.7],
    [lip - 9, ro + 4.7],
    [lip - 9, ro + 3.5],
    [lip - 20, ro + 3.5],
    [lip - 20, ro + 1.1],
    [upper.from, ro + 1.1],
    [upper.from, ro + 1.8],
    [lower.to + 2, ro + 1.8],
    [lower.to + 2, ro + 1.1],
    [lower.from - 2, ro + 1.1],
    ...cavityLine(room).reverse(),
    [room.floor, room.rodRadius + 0.6],
    [foot, room.rodRadius + 0.6],
  ]
  return [...outside, ...inside]
}

/** A lip each way: one keeps dirt out, one keeps oil in. */
function wiperSection(lip: number, ro: number): Point[] {
  return [
    [lip - 9, ro + 1.1],
    [lip - 9, ro + 4.6],
    [lip + 1, ro + 4.6],
    [lip + 1, ro + 6.1],
    [lip + 2.6, ro + 5.9],
    [lip + 3.4, ro + 2.9],
    [lip + 7, ro + 0.1],
    [lip + 4.6, ro],
    [lip + 1.5, ro + 2.1],
    [lip - 2, ro + 1.9],
    [lip - 5, ro],
    [lip - 6.4, ro + 0.1],
  ]
}
