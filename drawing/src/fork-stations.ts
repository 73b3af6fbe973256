import type { ForkTable } from './fork-parameters.ts'
import { type LowerRoom, roomVolume } from './lower-room.ts'
import { whereReaches } from './profile-line.ts'

/** Where things stand along a fork at full length [mm]; the stanchions stay, the lower legs move by the stroke. */
export interface ForkStations {
  readonly foot: number
  readonly outerRadius: number
  readonly innerRadius: number
  readonly stanchionEnd: number
  readonly lip: number
  /** The crown that the steerer is pressed into, the lower one of two. */
  readonly crownFrom: number
  readonly lowerCrownTo: number
  /** Where the upper one of two crowns begins; null with one. */
  readonly upperCrownFrom: number | null
  /** Upper end of the stanchions: of the only crown, or of the upper one. */
  readonly crownTo: number
  /** Face of the cap in the spring leg: the upper end of the positive chamber. */
  readonly cap: number
  readonly damperCap: number
  /** Seal head of the air spring. */
  readonly headFrom: number
  readonly headTo: number
  /** Length of the negative chamber and of the positive one, nothing in it, at full length. */
  readonly negativeLength: number
  readonly positiveLength: number
  readonly pistonLength: number
  readonly rooms: { readonly left: LowerRoom; readonly right: LowerRoom }
}

/** Of the drawing, not of a unit: what no sheet gives. All [mm]. */
const drawn = {
  foot: 10,
  floor: 22,
  clearance: 22,
  leastClearance: 4,
  mostClearance: 90,
  bushingsApart: 0.099,
  overBushings: 54,
  headLength: 17,
  pocket: 5,
  pistonLength: 16,
  crownLength: 36,
  betweenCrowns: 58,
  upperCrownLength: 22,
  aboveWiper: 8,
}

const damperRod = (rod: number) => (rod > 0 ? (rod * 1e3) / 2 : 4)

/** The newest first; a what-if and the setting it is held against, and a few before them. */
const found: { key: string; stations: ForkStations }[] = []
const kept = 6

/** Everything that the stations hang on: neither spacers nor oil nor pressures are among it. */
function keyOf({ stanchion, travel, spring, legs, crowns, bushingsApart }: ForkTable): string {
  const own = spring.kind === 'air' ? [spring.positiveShaft, spring.positiveVolume, spring.negative] : []
  const { left, right } = legs
  const rooms = [left.volume, left.rod, right.volume, right.rod]
  return JSON.stringify([stanchion, travel, spring.kind, spring.bore, spring.shaft, own, rooms, crowns, bushingsApart])
}

/**
 * Lengths that are chosen so that every chamber, turned about its axis, holds the volume of the table. They don't hang on
 * the stroke: while it is moved, the same table's are found once.
 */
export function forkStations(fork: ForkTable): ForkStations {
  const key = keyOf(fork)
  const before = found.find((one) => one.key === key)
  if (before) return before.stations
  const stations = foundStations(fork)
  found.unshift({ key, stations })
  found.length = Math.min(found.length, kept)
  return stations
}

function foundStations(fork: ForkTable): ForkStations {
  const outerRadius = (fork.stanchion * 1e3) / 2
  const innerRadius = (fork.spring.bore * 1e3) / 2
  const travel = fork.travel * 1e3
  const springRod = (fork.spring.shaft * 1e3) / 2
  const overlap = (fork.bushingsApart ?? drawn.bushingsApart) * 1e3 + drawn.overBushings
  const room = (leg: 'left' | 'right', clearance: number): LowerRoom => ({
    floor: drawn.floor,
    stanchionEnd: drawn.floor + travel + clearance,
    outerRadius,
    innerRadius,
    cavityRadius: outerRadius + 1.5,
    rodRadius: leg === 'left' ? springRod : damperRod(fork.legs.right.rod),
    bumperLength: Math.min(17, Math.max(2, clearance - 2)),
    pocket: drawn.pocket,
    overlap,
    bladder: leg === 'right' && fork.legs.right.rod === 0,
  })
  const clearanceFor = (leg: 'left' | 'right') => {
    const wanted = fork.legs[leg].volume
    if (wanted === null) return drawn.clearance
    return whereReaches((at) => roomVolume(room(leg, at), 0), wanted, drawn.leastClearance, drawn.mostClearance)
  }
  const clearance = Math.max(clearanceFor('left'), clearanceFor('right'))
  const fitted = (leg: 'left' | 'right'): LowerRoom => fitRoom(room(leg, clearance), fork.legs[leg].volume)
  const stanchionEnd = drawn.floor + travel + clearance
  const lip = stanchionEnd + overlap
  const lengths = chamberLengths(fork)
  const lowerCrownTo = Math.max(
    lip + travel + drawn.aboveWiper + drawn.crownLength,
    stanchionEnd + drawn.pocket + drawn.headLength + lengths.whole + 14,
  )
  const crownFrom = lowerCrownTo - drawn.crownLength
  const upperCrownFrom = fork.crowns === 2 ? lowerCrownTo + drawn.betweenCrowns : null
  const crownTo = upperCrownFrom === null ? lowerCrownTo : upperCrownFrom + drawn.upperCrownLength
  // A short air spring stands higher in the stanchion, its cap still in the crown.
  const unshifted = stanchionEnd + drawn.pocket
  const cap = Math.max(unshifted + drawn.headLength + lengths.whole, crownFrom - 12)
  const headFrom = cap - lengths.whole - drawn.headLength
  return {
    foot: drawn.foot,
    outerRadius,
    innerRadius,
    stanchionEnd,
    lip,
    crownFrom,
    lowerCrownTo,
    upperCrownFrom,
    crownTo,
    cap,
    damperCap: crownTo - 22,
    headFrom,
    headTo: headFrom + drawn.headLength,
    negativeLength: lengths.negative,
    positiveLength: lengths.positive,
    pistonLength: drawn.pistonLength,
    rooms: { left: fitted('left'), right: fitted('right') },
  }
}

/** What the leg's room lacks or has too much goes into the wall first, then into the floor. */
function fitRoom(room: LowerRoom, wanted: number | null): LowerRoom {
  if (wanted === null) return room
  const radius = whereReaches(
    (cavityRadius) => roomVolume({ ...room, cavityRadius }, 0),
    wanted,
    room.outerRadius + 0.3,
    room.outerRadius + 2.4,
  )
  const walled = { ...room, cavityRadius: radius }
  const floor = -whereReaches((at) => roomVolume({ ...walled, floor: -at }, 0), wanted, -(room.floor + 60), -14)
  return Math.abs(roomVolume(walled, 0) - wanted) < wanted * 1e-6 ? walled : { ...walled, floor }
}

function chamberLengths({ spring, travel }: ForkTable): { negative: number; positive: number; whole: number } {
  const area = (outer: number, inner = 0) => (Math.PI / 4) * (outer ** 2 - inner ** 2) * 1e6
  if (spring.kind === 'coil') {
    const positive = travel * 1e3 + 62
    return { negative: 20, positive, whole: 20 + drawn.pistonLength + positive }
  }
  const negative =
    spring.negative.kind === 'air'
      ? (spring.negative.volume * 1e9) / area(spring.bore, spring.shaft)
      : spring.negative.kind === 'coil'
        ? spring.negative.length * 1e3
        : 4
  const positive = (spring.positiveVolume * 1e9) / area(spring.bore, spring.positiveShaft)
  return { negative, positive, whole: negative + drawn.pistonLength + positive }
}
