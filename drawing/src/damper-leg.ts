import { airStrength } from './air-wash.ts'
import type { ForkParameters } from './fork-parameters.ts'
import type { ForkStations } from './fork-stations.ts'
import { bladderLength, bladderRadius, cartridgeRadius } from './lower-room.ts'
import { bronze, cast, filled, line, partsOf, steel, turned } from './parts.ts'
import type { Look, Point, Shape } from './shape.ts'

const oil: Look = { material: 'oil', strength: 0.38, outline: 'none' }

/** What stands in the right stanchion: a closed cartridge with piston, base valve and bladder; cap and knobs. */
export function damperLeg(fork: ForkParameters, at: ForkStations): Shape[] {
  const stroke = fork.stroke * 1e3
  const room = at.rooms.right
  const rod = room.rodRadius
  const ri = at.innerRadius
  const tube = cartridgeRadius(room)
  const base = at.damperCap - 93
  const bladderFrom = base + 15
  const bladderTo = bladderFrom + bladderLength
  const pistonAt = at.stanchionEnd + 54
  const radius = Math.min(tube - 0.5, bladderRadius(room, stroke))
  const fixed = partsOf('right', 0)
  const moving = partsOf('right', stroke)
  const legAir: Look = {
    material: 'air',
    strength: airStrength(room.bladder ? fork.pressures.right : 0),
    outline: 'none',
  }
  const shims = (from: number, radii: number[], step: number, shift: number, name: string) =>
    radii.map((r, i) => {
      const u = from + i * step + shift
      return line(
        name,
        [
          [u, -r],
          [u, r],
        ],
        'heavy',
        'solid',
        'right',
      )
    })
  return [
    fixed.ring('air.stanchion.right', at.stanchionEnd + room.pocket + 3, at.damperCap, tube + 1.3, ri, {
      material: 'air',
      strength: airStrength(0),
      outline: 'none',
    }),
    fixed.ring('oil.cartridge', at.stanchionEnd + 24, base + 8, 0, tube, oil),
    fixed.ring(room.bladder ? 'chamber.lower.right' : 'air.bladder', bladderFrom, bladderTo, radius, tube, legAir),
    fixed.ring('oil.bladder', bladderFrom, bladderTo, 4, radius, oil),
    fixed.body('bladder', bladderWall(bladderFrom, bladderTo, radius), filled),
    fixed.ring('stem', base + 8, at.damperCap, 0, 4, steel),
    fixed.ring('base-valve', base, base + 12, 4, tube, turned),
    ...shims(
      base - 2.8,
      [10.5, 8.4, 6.2].map((r) => Math.min(r, tube - 2)),
      -2.3,
      0,
      'base-shim',
    ),
    moving.ring('shaft.right', 6, pistonAt + 16, 0, rod, steel),
    ...[-0.3, 0.3].map((share) =>
      line(
        'shaft-bore.right',
        [
          [6 + stroke, rod * share],
          [pistonAt + 4 + stroke, rod * share],
        ],
        'fine',
        'solid',
        'right',
      ),
    ),
    moving.ring('piston.damper', pistonAt, pistonAt + 11, rod, tube - 0.2, bronze),
    ...shims(
      pistonAt + 13.3,
      [10.2, 8.2, 6].map((r) => Math.min(r, tube - 2)),
      2.1,
      stroke,
      'shim',
    ),
    ...shims(
      pistonAt - 2,
      [9.6, 7.2].map((r) => Math.min(r, tube - 2)),
      -2,
      stroke,
      'shim',
    ),
    moving.ring('piston-nut', pistonAt + 18, pistonAt + 22, 0, rod + 1.2, steel),
    fixed.ring('seal-head.right', at.stanchionEnd + 8, at.stanchionEnd + 24, rod, tube, turned),
    fixed.ring('seal.rod.right', at.stanchionEnd + 14, at.stanchionEnd + 18, rod, rod + 2.6, filled),
    fixed.ring('cartridge', at.stanchionEnd + 6, at.damperCap, tube, tube + 1.3, filled),
    fixed.ring('cartridge-foot', at.stanchionEnd + room.pocket, at.stanchionEnd + 8, rod + 2, ri, cast),
    fixed.ring('stanchion.right', at.stanchionEnd, at.crownTo, ri, at.outerRadius, filled),
    ...damperCap(at),
    ...foot(fork, at),
  ]
}

/** The membrane tapers at both ends, where it is tied. */
function bladderWall(from: number, to: number, radius: number): Point[] {
  const outer: Point[] = [
    [from, 4],
    [from + 1.5, radius * 0.7 + 1.2],
    [from + 5, radius],
    [to - 5, radius],
    [to - 1.5, radius * 0.7 + 1.2],
    [to, 4],
  ]
  return [...outer, ...outer.map(([u, r]): Point => [u, r - 1.1]).reverse()]
}

function damperCap(at: ForkStations): Shape[] {
  const fixed = partsOf('right', 0)
  const { innerRadius: ri, crownTo: top, outerRadius: ro } = at
  return [
    fixed.body(
      'cap.right',
      [
        [at.damperCap - 3, 4],
        [at.damperCap - 3, ri],
        [top, ri],
        [top, ro + 2],
        [top + 5, ro + 2],
        [top + 5, 4],
      ],
      cast,
    ),
    fixed.ring('adjuster', at.damperCap - 3, top + 5, 0, 4, steel),
    fixed.body(
      'knob.compression',
      [
        [top + 5, 0],
        [top + 5, 13],
        [top + 7, 14],
        [top + 12, 13.4],
        [top + 13, 11],
        [top + 13, 0],
      ],
      { material: 'alloy', outline: 'heavy' },
    ),
    fixed.ring('seal.cap.right', top - 16, top - 13, ri - 2.4, ri, filled),
  ]
}

function foot(fork: ForkParameters, at: ForkStations): Shape[] {
  const stroke = fork.stroke * 1e3
  const rod = at.rooms.right.rodRadius
  const moving = partsOf('right', stroke)
  return [
    moving.ring('foot-bolt', 5, 22, 0, rod + 0.6, steel),
    moving.ring('nut.right', 3, 8.6, 0, 7.5, steel),
    moving.ring('washer.right', 8.6, 10, rod + 0.6, 8.8, filled),
    moving.body(
      'knob.rebound',
      [
        [-8, 0],
        [-8, 8.5],
        [-6.5, 9.5],
        [1, 9.5],
        [3, 6],
        [3, 0],
      ],
      { material: 'alloy', outline: 'heavy' },
    ),
    ...[-6, -3, 0, 3, 6].map((r) =>
      line(
        'knob.rebound',
        [
          [-6.8 + stroke, r],
          [0.6 + stroke, r],
        ],
        'fine',
        'solid',
        'right',
      ),
    ),
  ]
}
