import { figure } from '../quantities/kinds.ts'
import type { Metre } from '../quantities/si.ts'
import { refuseOne, stopAt, within } from '../refusal/found.ts'

/** Holes H6–H9 and shafts e7, f6–f8, g5–g6, h5–h9. */
export const isoHoles = ['H6', 'H7', 'H8', 'H9'] as const
export const isoShafts = ['e7', 'f6', 'f7', 'f8', 'g5', 'g6', 'h5', 'h6', 'h7', 'h8', 'h9'] as const
export type IsoHole = (typeof isoHoles)[number]
export type IsoShaft = (typeof isoShafts)[number]

/** One step of nominal sizes: over the one before, up to and with `upTo` [mm]; everything else in µm. */
interface Step {
  readonly upTo: number
  /** IT5, IT6, IT7, IT8, IT9. */
  readonly grades: readonly [number, number, number, number, number]
  /** Upper deviation of a shaft; h is 0. */
  readonly e: number
  readonly f: number
  readonly g: number
}

const steps: readonly Step[] = [
  { upTo: 3, grades: [4, 6, 10, 14, 25], e: -14, f: -6, g: -2 },
  { upTo: 6, grades: [5, 8, 12, 18, 30], e: -20, f: -10, g: -4 },
  { upTo: 10, grades: [6, 9, 15, 22, 36], e: -25, f: -13, g: -5 },
  { upTo: 18, grades: [8, 11, 18, 27, 43], e: -32, f: -16, g: -6 },
  { upTo: 30, grades: [9, 13, 21, 33, 52], e: -40, f: -20, g: -7 },
  { upTo: 50, grades: [11, 16, 25, 39, 62], e: -50, f: -25, g: -9 },
  { upTo: 80, grades: [13, 19, 30, 46, 74], e: -60, f: -30, g: -10 },
]

export interface FitQuestion {
  /** Nominal diameter. */
  readonly size: Metre
  readonly hole: IsoHole
  readonly shaft: IsoShaft
}

export interface Fit {
  /** From the nominal size, [lower, upper]. */
  deviations: { hole: [Metre, Metre]; shaft: [Metre, Metre] }
  /** Diametral, [least, most]. */
  clearance: [Metre, Metre]
}

/** A class written with a letter and a grade, of those known. */
function classOf<Known extends string>(field: string, came: unknown, known: readonly Known[]): Known {
  const one = known.find((name) => name === came)
  if (one !== undefined) return one
  const next = 'Read the class from the drawing; others are not in this table.'
  return refuseOne(field, 'not-a-choice', String(came), `one of ${known.join(', ')}`, next)
}

/**
 * Limits of a hole and a shaft of ISO 286, and the clearance between them.
 *
 * Hole H: 0 … IT; shaft: upper deviation es, lower es − IT. Least clearance −es, most IT_hole − es + IT_shaft.
 *
 * @param question  nominal size [m], 3–80 mm; hole H6–H9; shaft e7, f6–f8, g5–g6, h5–h9
 * @returns deviations and clearance [m]
 * @throws Refusal for a size or a class outside the table
 * @source ISO 286-1 and -2 (rows over 18 to 50 mm and grades 6–8 seen, the others from memory)
 * @example fitIso286({ size: 0.035, hole: 'H8', shaft: 'f7' }).clearance.map((metre) => Math.round(metre * 1e6)) // [25,89]
 */
export function fitIso286(question: FitQuestion): Fit {
  const { size } = question
  stopAt(within(null, '', 'size', size, 'length', 0.003, 0.08, 'Give the nominal diameter.'))
  const hole = classOf('hole', question.hole, isoHoles)
  const shaft = classOf('shaft', question.shaft, isoShafts)
  // A size written in millimetres comes back a hair off: 50 mm must stay in the step that ends with it.
  const step = steps.find(({ upTo }) => size * 1000 <= upTo * (1 + 1e-12))
  if (!step) {
    return refuseOne('size', 'out-of-range', figure(size, 'length'), 'from 3 mm to 80 mm', 'Give the nominal diameter.')
  }
  const tolerance = (name: string) => (step.grades[Number(name.slice(1)) - 5] ?? 0) * 1e-6
  const letter = shaft.slice(0, 1)
  const upper = (letter === 'e' ? step.e : letter === 'f' ? step.f : letter === 'g' ? step.g : 0) * 1e-6
  const wide = tolerance(hole)
  return {
    deviations: { hole: [0, wide], shaft: [upper - tolerance(shaft), upper] },
    clearance: [Math.abs(upper), wide - upper + tolerance(shaft)],
  }
}
