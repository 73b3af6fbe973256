import type { ForkParameters } from './fork-parameters.ts'
import type { ForkStations } from './fork-stations.ts'
import { castNeighbour, flat, line, partsOf } from './parts.ts'
import type { Leg, Look, Point, Shape } from './shape.ts'

/** Distance of the legs as drawn [mm]: the one length that isn't to scale, shown by break lines. */
export const legGap = 98

const arch: Look = { material: 'alloy', strength: 0.5, outline: 'fine' }

/** Clamps of the crown round both stanchions, or round the spring leg's alone. */
export function crownClamps(at: ForkStations, legs: readonly Leg[]): Shape[] {
  const { crownFrom: from, crownTo: to, outerRadius: ro } = at
  return legs.flatMap((leg) => [
    partsOf(leg, 0).body(
      `crown.clamp.${leg}`,
      [
        [from, ro],
        [from, ro + 6],
        [from + 4, ro + 8],
        [to - 3, ro + 8],
        [to, ro + 6],
        [to, ro],
      ],
      castNeighbour,
    ),
  ])
}

/** Between the legs: web of the crown, the steerer pressed into it, and breaks where the drawing is shortened. */
export function crownWeb(at: ForkStations): Shape[] {
  const { crownFrom: from, crownTo: to, outerRadius: ro } = at
  const middle = legGap / 2
  const [near, far] = [ro, legGap - ro]
  const end = to + 16
  const steererWall: Look = { material: 'steel', hatching: 'close', outline: 'heavy' }
  const breaks = [near + (middle - 19 - near) / 2, far - (far - middle - 19) / 2]
  return [
    flat(
      'crown.web',
      [
        [from, near],
        [from, far],
        [to, far],
        [to, far - 4],
        [to - 5, middle + 21],
        [to - 5, middle - 21],
        [to, near + 4],
        [to, near],
      ],
      castNeighbour,
    ),
    flat('steerer', box(from + 8, end, middle - 19, middle + 19), { material: 'paper', outline: 'none' }),
    flat('steerer.wall', box(from + 8, end, middle - 19, middle - 16.5), steererWall),
    flat('steerer.wall', box(from + 8, end, middle + 16.5, middle + 19), steererWall),
    line(
      'steerer.foot',
      [
        [from + 8, middle - 19],
        [from + 8, middle + 19],
      ],
      'heavy',
    ),
    line('steerer.break', zigzagAcross(end, middle - 21.5, middle + 21.5)),
    ...breaks.flatMap((across) => [
      flat('crown.break', box(from - 3, to + 3, across - 1.5, across + 1.5), { material: 'paper', outline: 'none' }),
      line('crown.break', zigzagAlong(from - 4, to + 4, across - 1.5)),
      line('crown.break', zigzagAlong(from - 4, to + 4, across + 1.5)),
    ]),
  ]
}

const box = (from: number, to: number, low: number, high: number): Point[] => [
  [from, low],
  [from, high],
  [to, high],
  [to, low],
]

function zigzagAlong(from: number, to: number, across: number): Point[] {
  const middle = (from + to) / 2
  return [
    [from, across],
    [middle - 3, across],
    [middle - 1.5, across - 2.5],
    [middle + 1.5, across + 2.5],
    [middle + 3, across],
    [to, across],
  ]
}

function zigzagAcross(along: number, from: number, to: number): Point[] {
  const middle = (from + to) / 2
  return [
    [along, from],
    [along, middle - 4.5],
    [along + 2.5, middle - 2.5],
    [along - 2.5, middle + 2.5],
    [along, middle + 4.5],
    [along, to],
  ]
}

/** The arch lies in front of the section, the axle behind the cut feet. */
export function archAndAxle(fork: ForkParameters, at: ForkStations): Shape[] {
  const stroke = fork.stroke * 1e3
  const middle = legGap / 2
  const lowest = at.outerRadius + 6.5
  const half = (side: 1 | -1): Point[] => {
    const across = (fromLeg: number) => (side === 1 ? fromLeg : legGap - fromLeg)
    const a = at.lip - 30 + stroke
    const edge = middle - 2.5
    return [
      ...curve([a + 2, lowest], [a + 8, lowest + 8], [a + 30, lowest + 7], [a + 30, edge]),
      [a + 35, edge] as const,
      [a + 37.5, edge - 2.5] as const,
      [a + 40, edge + 2.5] as const,
      [a + 42.5, edge] as const,
      ...curve([a + 48, edge], [a + 48, lowest + 8], [a + 44, lowest + 2], [a + 29, lowest - 2.5]),
    ].map(([u, r]): Point => [u, across(r)])
  }
  return [
    flat('arch', half(1), arch),
    flat('arch', half(-1), arch),
    ...[16, 31].map((u) =>
      line(
        'axle',
        [
          [u + stroke, at.outerRadius],
          [u + stroke, legGap - at.outerRadius],
        ],
        'fine',
        'phantom',
      ),
    ),
  ]
}

/** A Bézier curve as points, so that a shape stays a plain list. */
function curve(a: Point, b: Point, c: Point, d: Point, points = 14): Point[] {
  return Array.from({ length: points }, (_, i) => {
    const t = i / (points - 1)
    const w = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3] as const
    const at = (k: 0 | 1) => w[0] * a[k] + w[1] * b[k] + w[2] * c[k] + w[3] * d[k]
    return [at(0), at(1)]
  })
}
