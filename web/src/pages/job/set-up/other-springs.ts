/** What a coil fork or a shock needs at the sag that is wanted. Pure. */
import { coilRate, forkLoad, pressureForSag, sag, shockLoad } from '@legwork/engine'
import { type Bike, middleShare, postureOf, type Rider, type Sheet, springOf, targetSag } from '@legwork/trade'

export type LoadAsked =
  | {
      calculation: 'fork-load'
      input: { riderMass: number; frontShare: number; bikeFrontMass: number; headAngle: number }
    }
  | { calculation: 'shock-load'; input: { rearSprungMass: number; leverage: number } }

export type LoadMissing = 'mass' | 'front-mass' | 'head-angle' | 'rear-mass' | 'leverage'

/** The question whose answer presses on the unit, or what is not known for it. */
export function loadAsked(sheet: Sheet, rider: Rider | null, bike: Bike | null): LoadAsked | readonly LoadMissing[] {
  if (sheet.kind === 'shock-air' || sheet.kind === 'shock-coil') {
    const { rearSprungMass = null, leverage = null } = bike ?? {}
    if (rearSprungMass !== null && leverage !== null)
      return { calculation: 'shock-load', input: { rearSprungMass, leverage } }
    return [
      ...(rearSprungMass === null ? ['rear-mass' as const] : []),
      ...(leverage === null ? ['leverage' as const] : []),
    ]
  }
  const riderMass = rider?.mass ?? null
  const { headAngle = null, frontMass = null } = bike ?? {}
  if (riderMass !== null && headAngle !== null && frontMass !== null) {
    const frontShare = rider?.frontShare ?? middleShare(postureOf(rider?.posture ?? null))
    return { calculation: 'fork-load', input: { riderMass, frontShare, bikeFrontMass: frontMass, headAngle } }
  }
  return [
    ...(riderMass === null ? ['mass' as const] : []),
    ...(frontMass === null ? ['front-mass' as const] : []),
    ...(headAngle === null ? ['head-angle' as const] : []),
  ]
}

/** Along the leg or shaft [N]. */
export const loadOfAsked = (asked: LoadAsked): number =>
  (asked.calculation === 'fork-load' ? forkLoad(asked.input) : shockLoad(asked.input)).load

/** The middle of what is usual for what it is built for, in whole percent [-]. */
export function usualSag(sheet: Sheet): number {
  const { low, high } = targetSag(sheet)
  return Math.round((low + high) * 50) / 100
}

export type OtherSpring =
  | { kind: 'air'; pressure: number }
  /** Where the fitted coil rests [m], and the rate that would rest at the wanted sag [N/m]. */
  | { kind: 'coil'; rests: number; rate: number }

/**
 * The pressure of an air spring, or the coil, for a sag under a load.
 *
 * @param load    along the leg or shaft [N]
 * @param wanted  share of the stroke [-]
 * @throws Refusal where the sheet lacks a dimension or no spring answers
 */
export function springFor(sheet: Sheet, load: number, wanted: number, ambient: number): OtherSpring {
  const spring = springOf(sheet)
  if (spring.kind === 'air')
    return { kind: 'air', pressure: pressureForSag(spring, { load, sag: wanted, ambient }).pressure }
  return {
    kind: 'coil',
    rests: sag(spring, { load, ambient }).stroke,
    rate: coilRate(coilQuestion(sheet, load, wanted)).rate,
  }
}

/** As the calculation `coil-rate` takes it. */
export function coilQuestion(sheet: Sheet, load: number, wanted: number) {
  const spring = springOf(sheet)
  return {
    load,
    sag: wanted * spring.stroke,
    preload: spring.kind === 'coil' ? (spring.preload ?? 0) : 0,
    ...(spring.damperGas ? { damperGas: spring.damperGas } : {}),
    ...(spring.lower ? { lower: spring.lower } : {}),
  }
}
