/** ISO metric threads: diameters and the limits of 6H/6g. */
import { figure } from '../quantities/kinds.ts'
import type { Metre, SquareMetre } from '../quantities/si.ts'
import { type Found, refuse, within } from '../refusal/found.ts'

/** Pitch diameter of the basic profile [m]: d₂ = d − 0.649519·P (ISO 724). */
export const pitchDiameter = (diameter: Metre, pitch: Metre): Metre => diameter - 0.649519 * pitch

/** What can't be about a thread. */
export function checkThread(found: Found, diameter: Metre, pitch: Metre): Found {
  let checked = within(
    found,
    '',
    'diameter',
    diameter,
    'length',
    0.001,
    0.09,
    'Give the nominal diameter, like "8 mm" for M8.',
  )
  checked = within(checked, '', 'pitch', pitch, 'length', 0.0002, 0.006, 'Give the pitch, like "1.25 mm".')
  if (checked !== found || pitch * 3 < diameter * 1.05) return checked
  const allowed = `under about a third of diameter (${figure(diameter / 3, 'length')})`
  return refuse(found, 'pitch', 'does-not-fit', figure(pitch, 'length'), allowed, 'Measure over ten turns.')
}

/**
 * Stress area of a thread: π/4·((d₂ + d₃)/2)², d₃ = d − 1.226869·P.
 *
 * @param diameter  nominal [m]
 * @param pitch     [m]
 * @returns [m²]
 * @source ISO 898-1, 9.1.6.1; ISO 724
 * @example stressArea(0.008, 0.00125) // 0.0000366
 */
export function stressArea(diameter: Metre, pitch: Metre): SquareMetre {
  return (Math.PI / 4) * stressDiameter(diameter, pitch) ** 2
}

/** Diameter of the stress area: (d₂ + d₃)/2 [m]. */
export function stressDiameter(diameter: Metre, pitch: Metre): Metre {
  return diameter - ((0.649519 + 1.226869) / 2) * pitch
}

/** Steps of the diameter ranges of ISO 965-1 [mm]. */
const ranges = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90]
/** One decade of R40 as ISO 3 rounds it for these tolerances. */
const steps = [
  100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335, 355,
  375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950, 1000,
]

function preferred(micrometres: number): number {
  const decade = 10 ** Math.floor(Math.log10(micrometres) - 2)
  const scaled = micrometres / decade
  let nearest = 100
  for (const step of steps) if (Math.abs(Math.log(step / scaled)) < Math.abs(Math.log(nearest / scaled))) nearest = step
  return nearest * decade
}

/**
 * Fundamental deviation g by pitch [mm, µm]: the table rounds 15 + 11·P by hand here and there. From memory; those of M5 to
 * M12 are borne out by the printed stripping areas, which they go into.
 */
const deviations = new Map([
  [0.8, 24],
  [1, 26],
  [1.25, 28],
  [1.5, 32],
  [1.75, 34],
  [2, 38],
  [2.5, 42],
  [3, 48],
])

/** Tolerance of the nut's pitch diameter, degree 6 [µm]; from memory, the table gives 1.5 mm up to 22.4 mm one step more than the rule. */
function ofNutPitch(p: number, upper: number, ofBoltPitch: number): number {
  const byRule = preferred(1.32 * ofBoltPitch)
  return p === 1.5 && upper <= 22.4 ? preferred(byRule * 1.055) : byRule
}

export interface ThreadLimits {
  /** Largest minor diameter of the nut thread. */
  nutMinor: Metre
  /** Smallest pitch diameter of the bolt thread. */
  boltPitch: Metre
  /** Smallest outside diameter of the bolt thread. */
  boltMajor: Metre
  /** Largest pitch diameter of the nut thread. */
  nutPitch: Metre
}

/**
 * Limits of a 6H/6g thread.
 *
 * g: es = −(15 + 11·P); T_d = 180·P^⅔ − 3.15/√P; T_d2 = 90·P^0.4·d^0.1 (d the geometric mean of its range);
 * T_D1 = 433·P − 190·P^1.22 below 1 mm, 230·P^0.7 from 1 mm; T_D2 = 1.32·T_d2 [µm, mm], rounded to R40.
 *
 * The formulas are from memory; the sizes M5 to M12 are borne out by printed stripping areas (the tests name them).
 *
 * @source ISO 965-1:1998, clause 13
 */
export function limits6H6g(diameter: Metre, pitch: Metre): ThreadLimits {
  const d = diameter * 1000
  const p = Number((pitch * 1000).toFixed(6))
  const above = ranges.findIndex((edge) => d <= edge)
  const upper = ranges[Math.max(1, above)] ?? 90
  const lower = ranges[Math.max(1, above) - 1] ?? 45
  const mean = Math.sqrt(upper * lower)
  const clearance = deviations.get(Number(p.toFixed(4))) ?? Math.round(15 + 11 * p)
  const ofBoltPitch = 90 * p ** 0.4 * mean ** 0.1
  const ofNutMinor = p < 1 ? 433 * p - 190 * p ** 1.22 : 230 * p ** 0.7
  // The tables of basic sizes, and so the limits, are in whole micrometres.
  const basicPitch = Math.round((d - 0.649519 * p) * 1000) / 1000
  const basicMinor = Math.round((d - 1.082532 * p) * 1000) / 1000
  return {
    nutMinor: (basicMinor + preferred(ofNutMinor) / 1000) / 1000,
    boltPitch: (basicPitch - (clearance + preferred(ofBoltPitch)) / 1000) / 1000,
    boltMajor: (d - (clearance + preferred(180 * p ** (2 / 3) - 3.15 / Math.sqrt(p))) / 1000) / 1000,
    nutPitch: (basicPitch + ofNutPitch(p, upper, ofBoltPitch) / 1000) / 1000,
  }
}
