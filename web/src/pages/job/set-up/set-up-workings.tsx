/** How the figures of Set up were worked out, each as one question to one calculation. */
import type { AirSpring } from '@legwork/engine'
import { type Instrument, type Sheet, type SourceKind, say } from '@legwork/trade'
import { QuantityText } from '../../../figures/quantity-text.tsx'
import type { Workings } from '../../../figures/workings.tsx'
import { postureText } from '../posture.ts'
import { springRows } from '../spring-rows.tsx'
import { airSpringOf, type StartInputs } from '../start-pressure.ts'
import { bench, type Standing, type WhatIf } from './what-if.ts'

type Row = Workings['inputs'][number]

const plainSource = (kind: SourceKind) =>
  ({ kind, document: null, revision: null, page: null, person: null, at: null, instrument: null }) as const

const force = (name: string, value: number): Row => ({
  name,
  shown: <QuantityText value={value} kind="force" digits={0} />,
  source: plainSource('worked-out'),
})
const pressureRow = (name: string, value: number): Row => ({
  name,
  shown: <QuantityText value={value} kind="pressure" />,
})
const outside = (ambient: number): Row => ({
  name: say('set-up.row.ambient'),
  shown: <QuantityText value={ambient} kind="absolutePressure" />,
  source: plainSource('handbook'),
})

/** Who sits on it and how: the rows every load rests on. */
export function riderRows(inputs: StartInputs, posture: string | null): Row[] {
  const { riderMass, frontShare, frontMass, headAngle } = inputs
  return [
    {
      name: say('set-up.row.mass'),
      shown: <QuantityText value={riderMass} kind="mass" />,
      source: plainSource('rider-said'),
    },
    {
      name: say('set-up.row.share', { posture: postureText(posture) }),
      shown: <QuantityText value={frontShare} kind="fraction" />,
      source: plainSource('common-practice'),
    },
    {
      name: say('set-up.row.front-mass'),
      shown: <QuantityText value={frontMass} kind="mass" digits={2} />,
      source: plainSource('common-practice'),
    },
    {
      name: say('set-up.row.head-angle'),
      shown: <QuantityText value={headAngle} kind="angle" />,
      source: plainSource('measured-here'),
    },
  ]
}

const ideal = () => [say('set-up.leaves-out.friction'), say('set-up.leaves-out.ideal')]

export function loadWorkings(inputs: StartInputs, posture: string | null, path: 'load' | 'sideLoad'): Workings {
  const { riderMass, frontShare, frontMass, headAngle } = inputs
  return {
    title: path === 'load' ? say('set-up.row.load') : say('set-up.side-load'),
    formula: path === 'load' ? '(m·share + m_bike)·g·sin(head angle)' : '(m·share + m_bike)·g·cos(head angle)',
    inputs: riderRows(inputs, posture),
    leavesOut: [say('set-up.leaves-out.posture')],
    asked: {
      calculation: 'fork-load',
      input: { riderMass, frontShare, bikeFrontMass: frontMass, headAngle },
      path,
    },
  }
}

export function pressureWorkings(inputs: StartInputs, load: number): Workings {
  const { sheet, spacers, sag, ambient } = inputs
  const spring = airSpringOf(sheet, spacers)
  return {
    title: say('set-up.where-from-plain'),
    formula: say('set-up.formula.balance'),
    inputs: [
      force(say('set-up.row.load'), load),
      {
        name: say('set-up.sag-wanted'),
        shown: <QuantityText value={sag} kind="fraction" />,
        source: plainSource('common-practice'),
      },
      ...springRows(sheet, spring),
      outside(ambient),
    ],
    leavesOut: ideal(),
    asked: { calculation: 'pressure-for-sag', input: { spring, load, sag, ambient }, path: 'pressure' },
  }
}

export function sagWorkings(
  sheet: Sheet,
  { spring, pressure, ambient }: Standing,
  load: number,
  friction: number,
  path: 'stroke' | 'fraction' | 'low' | 'high',
): Workings {
  return {
    title: say('set-up.sag-rests'),
    formula: 'F(x; p) = load',
    inputs: [
      pressureRow(say('set-up.control.pressure'), pressure),
      force(say('set-up.row.load'), load),
      ...(friction > 0 ? [force(say('set-up.bushing-friction'), friction)] : []),
      ...springRows(sheet, spring),
      outside(ambient),
    ],
    leavesOut: friction > 0 ? [say('set-up.leaves-out.ideal')] : ideal(),
    asked: { calculation: 'sag', input: { spring, pressure, load, friction, ambient }, path },
  }
}

export function frictionWorkings({ a, b }: NonNullable<Sheet['bushings']>, sideLoad: number, index: 0 | 1): Workings {
  const length = (name: string, held: typeof a): Row => ({
    name,
    shown: <QuantityText value={held.value} kind="length" />,
    source: held.source,
  })
  return {
    title: say('set-up.bushing-friction'),
    formula: 'F = μ·P·(1 + 2a/b)',
    inputs: [
      force(say('set-up.side-load'), sideLoad),
      length(say('set-up.row.bushing-a'), a),
      length(say('set-up.row.bushing-b'), b),
      {
        name: say('set-up.row.mu'),
        shown: <span translate="no">{index === 0 ? '0.04' : '0.10'}</span>,
        source: plainSource('common-practice'),
      },
    ],
    leavesOut: [say('set-up.leaves-out.mu')],
    asked: {
      calculation: 'side-friction',
      input: { sideLoad, a: a.value, b: b.value },
      path: `friction[${String(index)}]`,
    },
  }
}

/** What stands in the positive chamber at full length: what a hose takes its share of. */
const chamber = (spring: AirSpring): number =>
  spring.positiveVolume - (spring.spacers ?? 0) * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)

export type PumpOf = Pick<Extract<Instrument, { kind: 'pump' }>, 'hoseVolume' | 'offset' | 'name'>

export function pumpWorkings(sheet: Sheet, spacers: number, pressure: number, pump: PumpOf): Workings {
  const volume = chamber(airSpringOf(sheet, spacers))
  const percent = Math.round(Math.abs(pump.offset) * 1000) / 10
  return {
    title: say('set-up.pumps', { pump: pump.name }),
    formula: 'reading = p·V/(V + V_hose)',
    inputs: [
      pressureRow(say('set-up.control.pressure'), pressure),
      { name: say('set-up.row.chamber'), shown: <QuantityText value={volume} kind="volume" /> },
      { name: say('set-up.row.hose'), shown: <QuantityText value={pump.hoseVolume} kind="volume" /> },
    ],
    leavesOut: [say('set-up.leaves-out.hose')],
    asked: {
      calculation: 'pump-reading',
      input: { volume, hoseVolume: pump.hoseVolume, pressure },
      path: 'reading',
      ...(pump.offset === 0
        ? {}
        : {
            times: {
              by: 1 + pump.offset,
              because: say(pump.offset > 0 ? 'work.pump-high' : 'work.pump-low', { pump: pump.name, percent }),
            },
          }),
    },
  }
}

export function thereWorkings(
  inputs: StartInputs,
  pressure: number,
  load: number,
  there: WhatIf['there'],
  path: 'pressure' | 'strokeThere',
): Workings {
  const spring = airSpringOf(inputs.sheet, inputs.spacers)
  return {
    title: say('set-up.there'),
    formula: 'p_there = (p + p_a)·T_there/T − p_a,there',
    inputs: [
      pressureRow(say('set-up.control.pressure'), pressure),
      { name: say('set-up.row.here'), shown: <QuantityText value={bench.temperature} kind="temperature" /> },
      { name: say('set-up.trail.altitude'), shown: <QuantityText value={there.altitude} kind="altitude" /> },
      { name: say('set-up.trail.temperature'), shown: <QuantityText value={there.temperature} kind="temperature" /> },
      ...(path === 'strokeThere' ? springRows(inputs.sheet, spring) : []),
    ],
    leavesOut: [say('set-up.leaves-out.weather')],
    asked: { calculation: 'ambient-shift', input: { spring, pressure, load, from: bench, to: there }, path },
  }
}

/** A fast hit from the sag, near the end; `share` of where the spring ends, in tenths. */
export function endForceWorkings(
  sheet: Sheet,
  { spring, pressure, ambient }: Standing,
  startStroke: number,
  exponent: number,
): Workings {
  return {
    title: say('set-up.end-force'),
    formula: 'F = (p⁺ − p_a)·A⁺ − (p⁻ − p_a)·A⁻ + Σ (p_L − p_a)·A_L,  p·Vᵏ',
    inputs: [
      pressureRow(say('set-up.control.pressure'), pressure),
      { name: say('set-up.sag-rests'), shown: <QuantityText value={startStroke} kind="length" /> },
      { name: say('set-up.row.exponent'), shown: <span translate="no">{exponent}</span> },
      ...springRows(sheet, spring),
      outside(ambient),
    ],
    leavesOut: ideal(),
    asked: {
      calculation: 'spring-curve',
      input: { spring, pressure, ambient, exponent, startStroke, points: 11 },
      path: 'points[9].force',
    },
  }
}

/** Where the stroke ends: by the spring, or before it by what oil leaves of the room in a lower leg. */
export function endWorkings(sheet: Sheet, { spring, pressure, ambient }: Standing): Workings {
  return {
    title: say('set-up.what-if.ends'),
    formula: 'min(stroke, 0.999·(V_L − oil)/A_L)',
    inputs: springRows(sheet, spring),
    leavesOut: [say('set-up.leaves-out.bumper')],
    asked: { calculation: 'spring-curve', input: { spring, pressure, ambient, points: 2 }, path: 'fullStroke' },
  }
}
