/** A point of a drawing in mm: along the leg (0 near the feet, growing towards the crown) and from the axis. */
export type Point = readonly [along: number, across: number]

/** What a part is made of; each has one wash. */
export type Material = 'alloy' | 'steel' | 'brass' | 'polymer' | 'oil' | 'air' | 'ink' | 'paper' | 'hand' | 'none'

/** How a cut part is hatched, after ISO 128: neighbours the other way or closer; seals and thin walls are filled instead. */
export type Hatching = 'cast' | 'cast-neighbour' | 'turned' | 'close' | 'spacer' | 'rubber' | 'foam' | 'liquid'

export interface Look {
  readonly material: Material
  /** Of the wash; 1 when left out. */
  readonly strength?: number
  readonly hatching?: Hatching
  readonly outline: 'heavy' | 'fine' | 'none'
}

export type Leg = 'left' | 'right'

/** A body of revolution about a leg's axis, given by its half section (across ≥ 0). */
export interface RevolvedShape extends Look {
  readonly kind: 'revolved'
  readonly name: string
  readonly leg: Leg
  readonly section: readonly Point[]
}

/** A part that isn't round about a leg: `across` counts from the left leg's axis towards the right leg. */
export interface FlatShape extends Look {
  readonly kind: 'flat'
  readonly name: string
  readonly outlinePoints: readonly Point[]
}

/** A line: edge, axis (long-short), part in front or behind (long-short-short). */
export interface LineShape {
  readonly kind: 'line'
  readonly name: string
  /** Across counts from this leg's axis, growing towards the right leg. */
  readonly leg: Leg
  readonly points: readonly Point[]
  readonly dashes: 'solid' | 'axis' | 'phantom'
  readonly weight: 'heavy' | 'fine'
}

export type Shape = RevolvedShape | FlatShape | LineShape

/**
 * Volume of the body a half section sweeps about the axis: 2π·∬ r dA (Pappus), by the polygon's edges.
 *
 * @param section  closed polygon [mm], across ≥ 0, either way round
 * @returns volume [m³]
 * @source second theorem of Pappus; first moment of a polygon about an axis
 * @example volumeOfRevolution([[0, 0], [10, 0], [10, 5], [0, 5]]) // a cylinder of 785.4 mm³: 7.854e-7
 */
export function volumeOfRevolution(section: readonly Point[]): number {
  let moment = 0
  section.forEach(([u0, r0], i) => {
    const [u1, r1] = section[(i + 1) % section.length] ?? [u0, r0]
    moment += (r0 + r1) * (u0 * r1 - u1 * r0)
  })
  return (Math.abs(moment / 6) * 2 * Math.PI) / 1e9
}

/** Volume of all bodies of one name together [m³]. */
export function volumeOf(shapes: readonly Shape[], name: string): number {
  return shapes.reduce(
    (sum, shape) => (shape.kind === 'revolved' && shape.name === name ? sum + volumeOfRevolution(shape.section) : sum),
    0,
  )
}
