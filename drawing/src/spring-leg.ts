import { airStrength } from './air-wash.ts'
import { forces } from './forces.ts'
import type { AirSpringParameters, ForkParameters } from './fork-parameters.ts'
import type { ForkStations } from './fork-stations.ts'
import { cast, filled, partsOf, steel, turned } from './parts.ts'
import type { Look, Point, Shape } from './shape.ts'

const spacerHole = 3.5
const air = (pressure: number): Look => ({ material: 'air', strength: airStrength(pressure), outline: 'none' })

/** What stands in the left stanchion: seal head, chambers, piston, spacers, cap with its valve. */
export function springLeg(fork: ForkParameters, at: ForkStations): Shape[] {
  const stroke = fork.stroke * 1e3
  const rod = (fork.spring.shaft * 1e3) / 2
  const ri = at.innerRadius
  const fixed = partsOf('left', 0)
  const moving = partsOf('left', stroke)
  const pistonFrom = at.headTo + at.negativeLength
  const pistonTo = pistonFrom + at.pistonLength
  return [
    ...(fork.spring.kind === 'air' ? chambers(fork, fork.spring, at) : coilSpring(fork, at)),
    moving.ring('shaft.left', 0, pistonFrom + 2, 0, rod, steel),
    fixed.ring('seal-head.left', at.headFrom, at.headTo, rod, ri, turned),
    fixed.ring('seal.head.left', at.headFrom + 6.5, at.headFrom + 10, ri - 2.6, ri, filled),
    fixed.ring('seal.rod.left', at.headFrom + 6, at.headFrom + 10, rod, rod + 2.8, filled),
    fixed.ring('clip.left', at.headFrom - 3.5, at.headFrom - 1.5, ri - 3, ri + 0.9, filled),
    moving.ring('piston', pistonFrom, pistonTo, rod, ri, turned),
    moving.ring('shaft-end.left', pistonFrom, pistonTo, 0, rod, steel),
    moving.ring('seal.piston', pistonFrom + 6, pistonFrom + 10, ri - 3.2, ri, filled),
    moving.ring('glide.piston', pistonFrom + 11.5, pistonFrom + 14.5, ri - 1.2, ri, {
      material: 'brass',
      outline: 'fine',
    }),
    fixed.ring('stanchion.left', at.stanchionEnd, at.crownTo, ri, at.outerRadius, filled),
    ...(fork.spring.kind === 'air' && fork.spring.negative.kind === 'air'
      ? [dimple(at, (fork.spring.equalisingStroke ?? 0) * 1e3)]
      : []),
    ...cap(at, fork.spring.kind === 'air' ? fork.pressures.positive : null),
    ...(fork.spring.kind === 'air' ? forces(fork, at) : []),
    moving.ring('nut.left', 2.6, 8.6, 0, rod + 2.5, steel),
    moving.ring('stud.left', -2, 2.6, 0, rod - 1, steel),
    moving.ring('washer.left', 8.6, 10, rod, rod + 3.8, filled),
  ]
}

/** Both chambers, each as long as its volume asks; spacers hang on the cap, oil lies on the piston. */
function chambers(fork: ForkParameters, spring: AirSpringParameters, at: ForkStations): Shape[] {
  const stroke = fork.stroke * 1e3
  const ri = at.innerRadius
  const rod = (spring.shaft * 1e3) / 2
  const inner = ((spring.positiveShaft ?? 0) * 1e3) / 2
  const fixed = partsOf('left', 0)
  const pistonFrom = at.headTo + at.negativeLength + stroke
  const face = pistonFrom + at.pistonLength
  const oilLength = ((spring.chamberOil ?? 0) * 1e9) / (Math.PI * (ri ** 2 - inner ** 2))
  const hole = Math.max(spacerHole, inner)
  const spacerLength = (spring.spacerVolume * 1e9) / (Math.PI * (ri ** 2 - hole ** 2))
  const stack = at.cap - spring.spacers * spacerLength
  const surface = face + oilLength
  const positive: Point[] =
    spring.spacers === 0
      ? [
          [surface, inner],
          [surface, ri],
          [at.cap, ri],
          [at.cap, inner],
        ]
      : [
          [surface, inner],
          [surface, ri],
          [stack, ri],
          [stack, hole],
          [at.cap, hole],
          [at.cap, inner],
        ]
  return [
    ...(spring.negative.kind === 'air'
      ? [fixed.ring('chamber.negative', at.headTo, pistonFrom, rod, ri, air(fork.pressures.negative))]
      : []),
    ...(spring.negative.kind === 'coil'
      ? turns(
          'negative-coil',
          at.headTo,
          Math.min(pistonFrom, at.headTo + spring.negative.length * 1e3),
          ri - 2.2,
          1.5,
          5,
        )
      : []),
    fixed.body('chamber.positive', positive, air(fork.pressures.positive)),
    ...(inner > 0 ? [fixed.ring('positive-shaft', face, at.cap, 0, inner, steel)] : []),
    ...(oilLength > 0
      ? [
          fixed.ring('oil.chamber', face, surface, inner, ri, {
            material: 'oil',
            strength: 0.95,
            hatching: 'liquid',
            outline: 'fine',
          }),
        ]
      : []),
    ...Array.from({ length: spring.spacers }, (_, i) =>
      fixed.ring(`spacer.${i + 1}`, at.cap - (i + 1) * spacerLength, at.cap - i * spacerLength, hole, ri, {
        material: 'polymer',
        hatching: 'spacer',
        outline: 'heavy',
      }),
    ),
  ]
}

function coilSpring(fork: ForkParameters, at: ForkStations): Shape[] {
  const from = at.headTo + at.negativeLength + at.pistonLength + fork.stroke * 1e3
  return turns('coil', from, at.cap, at.innerRadius - 4, 2.6, Math.round(at.positiveLength / 15))
}

/** A coil cut through its axis: one round of wire beside the other. */
function turns(name: string, from: number, to: number, radius: number, wire: number, count: number): Shape[] {
  const fixed = partsOf('left', 0)
  const pitch = (to - from - 2 * wire) / Math.max(1, count - 1)
  return Array.from({ length: count }, (_, i) => {
    const middle = from + wire + i * pitch
    const round: Point[] = Array.from({ length: 16 }, (_unused, k) => {
      const turn = (k / 16) * 2 * Math.PI
      return [middle + wire * Math.cos(turn), radius + wire * Math.sin(turn)]
    })
    return fixed.body(`${name}.${i + 1}`, round, { material: 'steel', hatching: 'close', outline: 'fine' })
  })
}

/** Where the piston's seal passes at the equalising stroke, the wall is hollowed and both chambers meet. */
function dimple(at: ForkStations, equalising: number): Shape {
  const middle = at.headTo + at.negativeLength + 8 + equalising
  const ri = at.innerRadius
  return {
    kind: 'revolved',
    name: 'port',
    leg: 'left',
    section: [
      [middle - 7, ri],
      [middle - 3.5, ri + 0.75],
      [middle + 3.5, ri + 0.75],
      [middle + 7, ri],
    ],
    material: 'paper',
    outline: 'none',
  }
}

/** Longer than a plug: between two crowns the cap is a plug below, a tube up to the valve, and a screw on top. */
const waistedFrom = 56

function capOutline(at: ForkStations, bore: number): Point[] {
  const { cap: from, crownTo: top, innerRadius: ri, outerRadius: ro } = at
  const waist: Point[] =
    top - from < waistedFrom
      ? []
      : [
          [from + 18, ri],
          [from + 18, 5],
          [top - 14, 5],
          [top - 14, ri],
        ]
  return [[from, bore], [from, ri], ...waist, [top, ri], [top, ro + 2], [top + 5, ro + 2], [top + 5, bore]]
}

function cap(at: ForkStations, pressure: number | null): Shape[] {
  const fixed = partsOf('left', 0)
  const ri = at.innerRadius
  const top = at.crownTo
  const sealAt = top - at.cap < waistedFrom ? top - 16 : at.cap + 8
  return [
    fixed.body('cap.left', capOutline(at, pressure === null ? 0 : valveBore), cast),
    fixed.ring('seal.cap.left', sealAt, sealAt + 3, ri - 2.4, ri, filled),
    ...(pressure === null ? [] : valve(at, pressure)),
  ]
}

const valveBore = 2.2

/** A valve core in its stem: the pin that the pump presses down, its seal, and the passage up to it. */
function valve({ cap: face, crownTo: top }: ForkStations, pressure: number): Shape[] {
  const fixed = partsOf('left', 0)
  return [
    fixed.body(
      'valve',
      [
        [top - 16, 0],
        [top - 16, valveBore],
        [top + 5, valveBore],
        [top + 5, 3.4],
        [top + 13, 3.4],
        [top + 13, 0],
      ],
      { material: 'brass', outline: 'heavy' },
    ),
    fixed.ring('valve-passage', face, top - 10, 0, valveBore, { ...air(pressure), outline: 'fine' }),
    fixed.ring('valve-pin', top - 13, top + 11, 0, 0.6, steel),
    fixed.ring('seal.valve', top - 11, top - 9, 0.6, valveBore, filled),
  ]
}
