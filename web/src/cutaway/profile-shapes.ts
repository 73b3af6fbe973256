/** A unit laid down, small, from the outside: crown right, feet left; all of one page to one scale. Pure. */
import type { Body, UnitKind } from '@legwork/trade'

export interface ProfileOf {
  kind: UnitKind
  body: Body
  /** [m]; a usual one where it is not known. */
  stanchion: number | null
  /** [m] */
  stroke: number
}

export type ProfileFill = 'steel' | 'alloy' | 'ink' | 'none'
export interface ProfileShape {
  name: string
  d: string
  fill: ProfileFill
  /** [px] */
  width: number
}

const round = (value: number): number => Math.round(value * 100) / 100
const circle = (x: number, y: number, r: number): string =>
  `M${round(x - r)} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`
const box = (x0: number, y0: number, x1: number, y1: number): string =>
  `M${round(x0)} ${round(y0)}H${round(x1)}V${round(y1)}H${round(x0)}Z`

function zigzag(from: number, to: number, y: number, half: number, turns: number): string {
  const points = Array.from({ length: turns + 1 }, (_, i) => {
    const x = from + ((to - from) * i) / turns
    return `${round(x)} ${round(y + (i % 2 ? half : -half))}`
  })
  return `M${points.join('L')}`
}

/** Of a fork's lower leg beyond the travel, and of a stanchion above its wiper [m]: proportions of the drawing, no data. */
const lowerBeyond = 0.19
const stanchionBeyond = 0.008
const crown = 0.034
const upperStanchion = 0.118
const legApart = 0.062

function forkShapes({ kind, body, stanchion, stroke }: ProfileOf, scale: number, middle: number): ProfileShape[] {
  const px = (metres: number) => metres * 1000 * scale
  const radius = px((stanchion ?? 0.035) / 2)
  const outer = px((stanchion ?? 0.035) / 2 + 0.0046)
  const foot = 2
  const wiper = foot + px(lowerBeyond + stroke)
  const crownAt = wiper + px(stroke + stanchionBeyond)
  const crownTo = crownAt + px(crown)
  const dual = body === 'dual-crown'
  const end = dual ? px(upperStanchion) : 0
  const legs = [-1, 1].flatMap((side): ProfileShape[] => {
    const y = middle + side * px(legApart)
    const name = side < 0 ? 'upper leg' : 'lower leg'
    const coil = kind === 'fork-coil' && side > 0
    return [
      { name: `${name}, stanchion`, d: box(wiper - 2, y - radius, crownTo + end, y + radius), fill: 'steel', width: 1 },
      ...(coil
        ? [{ name: 'coil', d: zigzag(wiper + 2, crownAt - 1, y, radius - 0.8, 11), fill: 'none', width: 0.9 } as const]
        : []),
      {
        name: `${name}, lower`,
        d: `M${foot + 3} ${round(y - outer)}H${round(wiper - 5)}l2 -1.5h4V${round(y + outer + 1.5)}h-4l-2 -1.5H${foot + 3}Q${foot} ${round(y + outer)} ${foot} ${round(y)}T${foot + 3} ${round(y - outer)}Z`,
        fill: 'alloy',
        width: 1.1,
      },
    ]
  })
  const reach = px(legApart)
  const edge = reach + radius + 2
  const arch = `M${round(wiper - 7)} ${round(middle - reach + outer)}Q${round(wiper + 4)} ${round(middle - reach + outer + 3)} ${round(wiper + 4)} ${round(middle)}T${round(wiper - 7)} ${round(middle + reach - outer)}`
  const upper = crownTo + end - px(crown)
  const shapes: ProfileShape[] = [
    ...legs,
    { name: 'arch', d: arch, fill: 'none', width: 1 },
    { name: 'crown', d: box(crownAt, middle - edge, crownTo, middle + edge), fill: 'alloy', width: 1.1 },
  ]
  if (dual)
    shapes.push({
      name: 'upper crown',
      d: box(upper, middle - edge, upper + px(crown) * 0.8, middle + edge),
      fill: 'alloy',
      width: 1.1,
    })
  const [from, to] = dual ? [crownTo, upper] : [crownTo, crownTo + px(crown) * 1.9]
  const steerer = px(0.025)
  shapes.push({
    name: 'steerer',
    d: `M${round(from)} ${round(middle - steerer)}H${round(to)}M${round(from)} ${round(middle + steerer)}H${round(to)}`,
    fill: 'none',
    width: 1,
  })
  return shapes
}

/** Eye to eye of a shock: a base and so much of the stroke [m] (drawing only; a usual proportion, no source). */
const shockLength = (stroke: number): number => 0.085 + 2.2 * stroke

function shockShapes({ kind, body, stroke }: ProfileOf, scale: number, middle: number): ProfileShape[] {
  // A shock is a third of a fork: drawn a quarter larger, so that its parts can be told apart.
  const px = (metres: number) => metres * 1000 * scale * 1.25
  const from = 8
  const to = from + px(shockLength(stroke))
  const shaftTo = from + px(stroke) + 6
  const coil = kind === 'shock-coil'
  const eyes = [from, to].flatMap((x): ProfileShape[] => [
    { name: 'eye', d: circle(x, middle, 4.6), fill: 'alloy', width: 1.1 },
    { name: 'bolt', d: circle(x, middle, 1.6), fill: 'ink', width: 0 },
  ])
  const can = from + px(stroke) * 0.55 + 5
  return [
    { name: 'shaft', d: box(from + 4.6, middle - 2, shaftTo, middle + 2), fill: 'steel', width: 1 },
    { name: 'body', d: box(shaftTo, middle - 5, to - 4.6, middle + 5), fill: 'steel', width: 1.1 },
    ...eyes,
    coil
      ? { name: 'coil', d: zigzag(from + 7, to - 9, middle, 7.2, 9), fill: 'none', width: 1.5 }
      : { name: 'air can', d: box(can, middle - 8.5, to - 11, middle + 8.5), fill: 'alloy', width: 1.1 },
    ...(body === 'piggyback'
      ? ([
          { name: 'reservoir', d: box(to - 24, middle - 17, to - 4, middle - 10.5), fill: 'alloy', width: 1.1 },
        ] as const)
      : []),
  ]
}

/**
 * The shapes of a profile, in drawing order.
 *
 * @param scale   [px/mm]
 * @param middle  height of its centre line [px]
 */
export function profileShapes(of: ProfileOf, scale: number, middle: number): readonly ProfileShape[] {
  return of.kind === 'fork-air' || of.kind === 'fork-coil'
    ? forkShapes(of, scale, middle)
    : shockShapes(of, scale, middle)
}
