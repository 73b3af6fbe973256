/** The pressure to start from for one rider, with its band of doubt and what the doubt hangs on. Pure. */
import { forkLoad, gaugeElsewhere, prepareSpring, pressureForSag, pumpReading, sag } from '@legwork/engine'
import { type Instrument, type Sheet, springOf } from '@legwork/trade'

export interface StartInputs {
  sheet: Sheet
  spacers: number
  /** With kit [kg]. */
  riderMass: number
  /** The rider's share on the front wheel [-]. */
  frontShare: number
  /** Sprung mass of the bike on the fork [kg]. */
  frontMass: number
  /** [°] */
  headAngle: number
  /** Wanted, as a share of the stroke [-]. */
  sag: number
  /** [Pa, absolute] */
  ambient: number
}

export type DoubtOf = 'share' | 'mass'

export interface StartPressure {
  /** Gauge at full length [Pa]. */
  pressure: number
  /** Nine times in ten [Pa]. */
  band: [number, number]
  /** Along the leg [N]. */
  load: number
  /** Wanted sag [m]. */
  stroke: number
  /** What of the load the air shut in the lower legs carries there [N]. */
  lowerForce: number
  /** What of the doubt each input brings, largest first; adds up to 1. */
  doubtOf: readonly { input: DoubtOf; share: number }[]
}

/** Standard uncertainties (common practice, no source): a share read in one posture, a mass off a bathroom scale. */
export const inputDoubt = { share: 0.02, mass: 1 } as const
/** Half of a normal 90 % band in standard uncertainties. */
const ninetyPercent = 1.645

/** An air fork's spring; a coil has no pressure. @throws Refusal naming what the sheet lacks */
export function airSpringOf(sheet: Sheet, spacers: number) {
  const spring = springOf(sheet, { spacers })
  if (spring.kind === 'air') return spring
  throw new TypeError(`sheet ${sheet.name} is of a coil; a pressure is worked out for air springs. Choose its rate.`)
}

function pressureOf(inputs: StartInputs): { pressure: number; stroke: number; load: number } {
  const { riderMass, frontShare, frontMass, headAngle } = inputs
  const { load } = forkLoad({ riderMass, frontShare, bikeFrontMass: frontMass, headAngle })
  const spring = airSpringOf(inputs.sheet, inputs.spacers)
  return { ...pressureForSag(spring, { load, sag: inputs.sag, ambient: inputs.ambient }), load }
}

/**
 * Start pressure and its 90 % band: u_p² = (∂p/∂share·u_share)² + (∂p/∂mass·u_mass)², slopes by central differences.
 *
 * @throws Refusal where the sheet lacks a dimension, or no allowed pressure carries the load at that sag
 * @source JCGM 100:2008 (GUM), 5.1.2, uncorrelated inputs
 */
export function startPressure(inputs: StartInputs): StartPressure {
  const { pressure, stroke, load } = pressureOf(inputs)
  const spread = (changed: (by: number) => Partial<StartInputs>, u: number): number =>
    Math.abs(pressureOf({ ...inputs, ...changed(u) }).pressure - pressureOf({ ...inputs, ...changed(-u) }).pressure) / 2
  const { maxPressure: _ceiling, ...sheet } = inputs.sheet
  const free = { sheet: { ...sheet, maxPressure: null } }
  const ofShare = spread((by) => ({ ...free, frontShare: inputs.frontShare + by }), inputDoubt.share)
  const ofMass = spread((by) => ({ ...free, riderMass: inputs.riderMass + by }), inputDoubt.mass)
  const total = Math.hypot(ofShare, ofMass)
  const half = ninetyPercent * total
  const doubtOf = [
    { input: 'share' as const, share: (ofShare / total) ** 2 },
    { input: 'mass' as const, share: (ofMass / total) ** 2 },
  ].sort((one, other) => other.share - one.share)
  const spring = airSpringOf(inputs.sheet, inputs.spacers)
  const { lower: _lower, ...bare } = spring
  const process = { ambient: inputs.ambient }
  const lowerForce =
    prepareSpring(spring, pressure, process).force(stroke) - prepareSpring(bare, pressure, process).force(stroke)
  return { pressure, band: [pressure - half, pressure + half], load, stroke, lowerForce, doubtOf }
}

/** Half of the load's 90 % band, from the same doubt of share and mass [N]. */
export function loadDoubt(inputs: StartInputs): number {
  const { riderMass, frontShare, frontMass, headAngle } = inputs
  const loadOf = (mass: number, share: number): number =>
    forkLoad({ riderMass: mass, frontShare: share, bikeFrontMass: frontMass, headAngle }).load
  const load = loadOf(riderMass, frontShare)
  const ofShare = loadOf(riderMass, frontShare + inputDoubt.share) - load
  const ofMass = loadOf(riderMass + inputDoubt.mass, frontShare) - load
  return ninetyPercent * Math.hypot(ofShare, ofMass)
}

export interface MeasuredSag {
  /** Where friction is out of it [m], and as a share of the stroke. */
  mean: number
  fraction: number
  /** Half of the difference times the stiffness there [N]. */
  friction: number
  /** What the leg really carries [N]. */
  load: number
  /** That gives the wanted sag under it [Pa gauge]. */
  pressure: number
}

/**
 * Sag read from both directions: the mean is the spring's, half the difference is friction; the pressure follows from the
 * load that the spring carries at the mean.
 *
 * @param read  fromAbove, fromBelow [m], in the fork [Pa gauge], wanted share [-]
 * @throws Refusal where no allowed pressure gives the wanted sag
 */
export function correctedBySag(
  sheet: Sheet,
  read: { fromAbove: number; fromBelow: number; pressure: number; spacers: number; sag: number; ambient: number },
): MeasuredSag {
  const { fromAbove, fromBelow, ambient } = read
  const spring = airSpringOf(sheet, read.spacers)
  const mean = (fromAbove + fromBelow) / 2
  const state = prepareSpring(spring, read.pressure, { ambient }).at(mean)
  const friction = (Math.abs(fromAbove - fromBelow) / 2) * state.rate
  const { pressure } = pressureForSag(spring, { load: state.force, sag: read.sag, ambient })
  return { mean, fraction: mean / spring.stroke, friction, load: state.force, pressure }
}

/** What a pump's gauge shows when it is put on at full length, its own error in it [Pa]. */
export function pumpShows(
  sheet: Sheet,
  spacers: number,
  pressure: number,
  pump: Extract<Instrument, { kind: 'pump' }>,
) {
  const spring = airSpringOf(sheet, spacers)
  const volume = spring.positiveVolume - spacers * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
  return pumpReading({ volume, hoseVolume: pump.hoseVolume, pressure }).reading * (1 + pump.offset)
}

/** What was in the chamber before a pump was put on that then showed this [Pa gauge]. */
export function beforePump(sheet: Sheet, spacers: number, shown: number, pump: Extract<Instrument, { kind: 'pump' }>) {
  const spring = airSpringOf(sheet, spacers)
  const volume = spring.positiveVolume - spacers * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
  return pumpReading({ volume, hoseVolume: pump.hoseVolume, reading: shown / (1 + pump.offset) }).pressure
}

/** The same air on the trail: gauge there [Pa]. */
export function onTheTrail(
  pressure: number,
  here: { temperature: number; ambient: number },
  there: { temperature: number; ambient: number },
): number {
  return gaugeElsewhere({ pressure, from: here, to: there })
}

/** The sag that a pressure gives under the load: share of the stroke and stroke [m]. */
export function sagAt(inputs: StartInputs, pressure: number) {
  const { riderMass, frontShare, frontMass, headAngle, ambient } = inputs
  const { load } = forkLoad({ riderMass, frontShare, bikeFrontMass: frontMass, headAngle })
  return sag(airSpringOf(inputs.sheet, inputs.spacers), { pressure, load, ambient })
}
