import { figure } from '../quantities/kinds.ts'
import type { Metre, Newton, Pascal, SquareMetre } from '../quantities/si.ts'
import { refuseOne, stopAt, within } from '../refusal/found.ts'
import { checkThread, limits6H6g } from './thread.ts'

export interface StripQuestion {
  readonly diameter: Metre
  readonly pitch: Metre
  /** Length over which the threads engage. */
  readonly engagement: Metre
  readonly shearStrength: { readonly external: Pascal; readonly internal: Pascal }
}

export interface ThreadStrip {
  /** Sheared area of the bolt's and of the nut's thread. */
  area: { external: SquareMetre; internal: SquareMetre }
  force: { external: Newton; internal: Newton }
}

/**
 * Force that strips a 6H/6g thread:
 * external π·(L/P)·D1max·(P/2 + 0.57735·(d2min − D1max)), internal π·(L/P)·dmin·(P/2 + 0.57735·(dmin − D2max)), times shear strength.
 *
 * @param question  thread and engagement [m], shear strengths [Pa]
 * @returns areas [m²] and forces [N] of both threads
 * @throws Refusal naming every field that can't be
 * @source FED-STD-H28/2B; Machinery's Handbook; limits ISO 965-1
 * @example threadStrip({ diameter: 0.006, pitch: 0.001, engagement: 0.006, shearStrength: { external: 400e6, internal: 200e6 } }).area.external // 0.000051875
 */
export function threadStrip(question: StripQuestion): ThreadStrip {
  const { diameter, pitch, engagement, shearStrength } = question
  let found = checkThread(null, diameter, pitch)
  found = within(found, '', 'engagement', engagement, 'length', 0.0002, 0.2, 'Measure how far the threads engage.')
  const next = 'Give the shear strength of the material, about 0.6 of its tensile strength.'
  found = within(found, 'shearStrength.', 'external', shearStrength.external, 'stress', 1e7, 3e9, next)
  found = within(found, 'shearStrength.', 'internal', shearStrength.internal, 'stress', 1e7, 3e9, next)
  stopAt(found)
  const { nutMinor, boltPitch, boltMajor, nutPitch } = limits6H6g(diameter, pitch)
  const turns = (Math.PI * engagement) / pitch
  const external = turns * nutMinor * (pitch / 2 + 0.57735 * (boltPitch - nutMinor))
  const internal = turns * boltMajor * (pitch / 2 + 0.57735 * (boltMajor - nutPitch))
  if (!(external > 0 && internal > 0)) {
    refuseOne(
      'pitch',
      'no-answer',
      figure(pitch, 'length'),
      'coarse enough that 6H and 6g threads overlap',
      'Check diameter and pitch.',
    )
  }
  return {
    area: { external, internal },
    force: { external: external * shearStrength.external, internal: internal * shearStrength.internal },
  }
}
