import type { ForkParameters } from './fork-parameters.ts'
import type { ForkStations } from './fork-stations.ts'
import { castNeighbour, flat, line, partsOf } from './parts.ts'
import type { Leg, Look, Point, Shape } from './shape.ts'

/** Distance of the legs as drawn [mm]: the one length that isn't to scale, shown by break lines. */
export const legGap = 98

const arch: Look = { material: 'alloy', strength: 0.5, outline: 'fine' }

/** Wall of a crown round its stanchion: thinner on a thick one, so that the breaks beside it are seen. */
const clampOuter = (at: ForkStations): number => Math.min(at.outerRadius + 8, 26)

/** Crowns along the legs, the lower one first. */
const crownsOf = ({ crownFrom, lowerCrownTo, upperCrownFrom, crownTo }: ForkStations) => [
  { name: 'crown', from: crownFrom, to: lowerCrownTo },
  ...(upperCrownFrom === null ? [] : [{ name: 'upper-crown', from: upperCrownFrom, to: crownTo }]),
]

/** Clamps of the crowns round both stanchions, or round the spring leg's alone. */
export function crownClamps(at: ForkStations, legs: readonly Leg[]): Shape[] {
  const ro = at.outerRadius
  const outer = clampOuter(at)
  return crownsOf(at).flatMap(({ name, from, to }) =>
    legs.map((leg) =>
      partsOf(leg, 0).body(
        `${name}.clamp.${leg}`,
        [
          [from, ro],
          [from, outer - 2],
          [from + 4, outer],
          [to - 3, outer],
          [to, outer - 2],
          [to, ro],
        ],
        castNeighbour,
      ),
    ),
  )
}

/** Half of the steerer's outside diameter of 38 mm at its foot, and its wall. */
const steerer = { radius: 19, wall: 2.5 }

/** Between the legs: webs of the crowns, the steerer pressed into the lower one, breaks where the drawing is shortened. */
export function crownWeb(at: ForkStations): Shape[] {
  const middle = legGap / 2
  const end = at.crownTo + 16
  const foot = at.crownFrom + 8
  const { radius, wall } = steerer
  const steererWall: Look = { material: 'steel', hatching: 'close', outline: 'heavy' }
  return [
    ...crownsOf(at).map(({ name, from, to }) => flat(`${name}.web`, webOutline(at, from, to), castNeighbour)),
    flat('steerer', box(foot, end, middle - radius, middle + radius), { material: 'paper', outline: 'none' }),
    flat('steerer.wall', box(foot, end, middle - radius, middle - radius + wall), steererWall),
    flat('steerer.wall', box(foot, end, middle + radius - wall, middle + radius), steererWall),
    line(
      'steerer.foot',
      [
        [foot, middle - radius],
        [foot, middle + radius],
      ],
      'heavy',
    ),
    line('steerer.break', zigzagAcross(end, middle - radius - 2.5, middle + radius + 2.5)),
    ...crownsOf(at).flatMap(({ name, from, to }) => breaksOf(at, name, from, to)),
  ]
}

function webOutline({ outerRadius: ro }: ForkStations, from: number, to: number): Point[] {
  const middle = legGap / 2
  const [near, far] = [ro, legGap - ro]
  return [
    [from, near],
    [from, far],
    [to, far],
    [to, far - 4],
    [to - 5, middle + steerer.radius + 2],
    [to - 5, middle - steerer.radius - 2],
    [to, near + 4],
    [to, near],
  ]
}

/** In the middle of what is left between a clamp and the steerer. */
function breaksOf(at: ForkStations, name: string, from: number, to: number): Shape[] {
  const near = (clampOuter(at) + legGap / 2 - steerer.radius) / 2
  const half = 1
  return [near, legGap - near].flatMap((across) => [
    flat(`${name}.break`, box(from - 3, to + 3, across - half, across + half), { material: 'paper', outline: 'none' }),
    line(`${name}.break`, zigzagAlong(from - 4, to + 4, across - half)),
    line(`${name}.break`, zigzagAlong(from - 4, to + 4, across + half)),
  ])
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
