import { acrossAt, roundedEnd, sectionBetween, whereReaches } from './profile-line.ts'
import { type Point, volumeOfRevolution } from './shape.ts'

/** The room closed between a lower leg and its stanchion, at full length [mm]. */
export interface LowerRoom {
  readonly floor: number
  readonly stanchionEnd: number
  readonly outerRadius: number
  readonly innerRadius: number
  readonly cavityRadius: number
  readonly rodRadius: number
  readonly bumperLength: number
  /** The stanchion's open end below the seal head. */
  readonly pocket: number
  readonly overlap: number
  /** The cartridge's bladder backs on to this room's air. */
  readonly bladder: boolean
}

/** Length of the bladder [mm] and its radius while the damper is at full length. */
export const bladderLength = 62
const bladderRestSquared = 30

/** The bladder takes the oil its rod displaces [mm]. */
export function bladderRadius(room: LowerRoom, stroke: number): number {
  return Math.sqrt(bladderRestSquared + (room.rodRadius ** 2 * stroke) / bladderLength)
}

/** Inside of the damper's cartridge [mm]. */
export const cartridgeRadius = (room: LowerRoom) => room.innerRadius - 3.5

/** Radius of the casting's inside at each place of the lower leg, from its floor to the lower bushing. */
export function cavityLine(room: LowerRoom): Point[] {
  const { floor, cavityRadius } = room
  return [...roundedEnd([floor, 11], [floor + 13, cavityRadius], 9), [lowerBushing(room).from - 2, cavityRadius]]
}

export function bumperSection({ floor, rodRadius, bumperLength }: LowerRoom): Point[] {
  const at = (share: number) => floor + bumperLength * share
  const inner = rodRadius
  return [
    [floor, inner],
    [floor, inner + 4.3],
    [at(0.42), inner + 5.2],
    [at(0.65), inner + 3.4],
    [at(0.88), inner + 4],
    [at(1), inner + 2.3],
    [at(1), inner],
  ]
}

export const lowerBushing = (room: LowerRoom) => ({ from: room.stanchionEnd + 12, to: room.stanchionEnd + 32 })
export const upperBushing = (room: LowerRoom) => {
  const lip = room.stanchionEnd + room.overlap
  return { from: lip - 42, to: lip - 22 }
}

/** What stands in the room: bumper, rod and, from its end on, the stanchion as far as it has come in. */
function innerLine(room: LowerRoom, stroke: number): Point[] {
  const bumper = bumperSection(room).slice(1)
  const end = room.stanchionEnd - stroke
  const top = lowerBushing(room).from
  const beforeEnd = bumper.filter(([u]) => u < end)
  return [
    ...beforeEnd,
    [end, beforeEnd.length === bumper.length ? room.rodRadius : acrossAt(bumper, end, 'before')],
    [end, room.outerRadius],
    [top, room.outerRadius],
  ]
}

/** Bath and air of a lower leg as half sections in the lower leg's own frame; `pocket` stays with the stanchion. */
export interface LowerRoomSections {
  /** The bath; a second part of it stands above the lower bushing when the stanchion has pushed it up there. */
  readonly oil: readonly (readonly Point[])[]
  /** The bath's surface [mm along]. */
  readonly level: number
  readonly air: readonly (readonly Point[])[]
  readonly pocket: readonly Point[]
  readonly bladderAir: readonly Point[] | null
}

export function roomSections(room: LowerRoom, stroke: number, oil: number): LowerRoomSections {
  const outer = cavityLine(room)
  const inner = innerLine(room, stroke)
  const top = lowerBushing(room).from - 2
  const below = (level: number) => sectionBetween(outer, inner, room.floor, level)
  const gapFrom = lowerBushing(room).to + 2
  const gapTo = upperBushing(room).from
  const gap = (from: number, to: number) => rectangle(from, to, room.outerRadius, room.outerRadius + 1.8)
  const pushedUp = oil - volumeOfRevolution(below(top))
  const level =
    oil <= 0
      ? room.floor
      : pushedUp > 0
        ? whereReaches((at) => volumeOfRevolution(gap(gapFrom, at)), pushedUp, gapFrom, gapTo)
        : whereReaches((at) => volumeOfRevolution(below(at)), oil, room.floor, top)
  const radius = bladderRadius(room, stroke)
  return {
    oil: oil <= 0 ? [] : pushedUp > 0 ? [below(top), gap(gapFrom, level)] : [below(level)],
    level,
    air: pushedUp > 0 ? [gap(level, gapTo)] : [sectionBetween(outer, inner, level, top), gap(gapFrom, gapTo)],
    pocket: rectangle(room.stanchionEnd, room.stanchionEnd + room.pocket, room.rodRadius, room.innerRadius),
    bladderAir: room.bladder ? rectangle(0, bladderLength, radius, cartridgeRadius(room)) : null,
  }
}

/** All of the room at a stroke, oil and air [m³]. */
export function roomVolume(room: LowerRoom, stroke: number): number {
  const { air, pocket, bladderAir } = roomSections(room, stroke, 0)
  return [...air, pocket, ...(bladderAir ? [bladderAir] : [])].reduce((sum, one) => sum + volumeOfRevolution(one), 0)
}

export function rectangle(from: number, to: number, inner: number, outer: number): Point[] {
  return [
    [from, inner],
    [from, outer],
    [to, outer],
    [to, inner],
  ]
}
