/** The sag that is usually wanted of a unit, by what it is built for (common practice, no source). */
import type { Sheet } from './sheet.ts'

export type BuiltFor = 'cross-country' | 'trail' | 'hard-riding' | 'downhill'

export interface TargetSag {
  builtFor: BuiltFor
  /** Share of the stroke [-]. */
  low: number
  high: number
}

const ofForks: Readonly<Record<BuiltFor, readonly [number, number]>> = {
  'cross-country': [0.15, 0.2],
  trail: [0.15, 0.22],
  'hard-riding': [0.16, 0.22],
  downhill: [0.18, 0.25],
}

const ofShocks: Readonly<Record<BuiltFor, readonly [number, number]>> = {
  'cross-country': [0.2, 0.25],
  trail: [0.25, 0.3],
  'hard-riding': [0.28, 0.33],
  downhill: [0.28, 0.35],
}

type Build = Pick<Sheet, 'kind' | 'body' | 'stanchion' | 'stroke'>

/** A fork tells by its crowns, stanchions and travel; a shock only by its reservoir and its stroke. */
function builtFor({ kind, body, stanchion, stroke }: Build): BuiltFor {
  if (kind === 'fork-air' || kind === 'fork-coil') {
    if (body === 'dual-crown') return 'downhill'
    const diameter = stanchion?.value ?? 0.035
    if (stroke.value >= 0.155 && diameter >= 0.0355) return 'hard-riding'
    return stroke.value <= 0.125 && diameter <= 0.033 ? 'cross-country' : 'trail'
  }
  if (body !== 'piggyback') return stroke.value < 0.045 ? 'cross-country' : 'trail'
  return stroke.value >= 0.07 ? 'downhill' : 'hard-riding'
}

/**
 * Range of sag usually wanted, standing with the hips over the cranks: a plausibility check and a zone on a chart, no law.
 *
 * @param sheet  kind, body, stanchion [m], stroke [m]
 * @returns share of the stroke [-], and what it was judged to be built for
 * @source common practice, no source
 * @example targetSag(sheet) // a fork of 35 mm and 150 mm: { builtFor: 'trail', low: 0.15, high: 0.22 }
 */
export function targetSag(sheet: Build): TargetSag {
  const use = builtFor(sheet)
  const fork = sheet.kind === 'fork-air' || sheet.kind === 'fork-coil'
  const [low, high] = (fork ? ofForks : ofShocks)[use]
  return { builtFor: use, low, high }
}
