/** The pressure to start from for one rider, with its band of doubt and what the doubt hangs on. Pure. */
import {
  type AirSpring,
  type ForkLoad,
  forkLoad,
  prepareSpring,
  pressureForSag,
  pumpReading,
  Refusal,
  sideFriction,
} from '@legwork/engine'
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

export const doubtful = ['share', 'mass', 'port', 'negative', 'positive', 'lower'] as const
export type DoubtOf = (typeof doubtful)[number]

export interface DoubtPart {
  input: DoubtOf
  /** What one standard uncertainty of it moves the pressure by [Pa]. */
  moves: number
  /** Of the whole doubt; all parts add up to 1. */
  share: number
}

export interface StartPressure {
  /** Gauge at full length [Pa]. */
  pressure: number
  /** Nine times in ten [Pa]. */
  band: [number, number]
  /** Along the leg [N]. */
  load: number
  /** Across it, on the bushings [N]. */
  sideLoad: number
  /** Wanted sag [m]. */
  stroke: number
  /** What of the load the air shut in the lower legs carries there [N]. */
  lowerForce: number
  /** What the doubt hangs on, largest first. */
  doubtOf: readonly DoubtPart[]
}

/**
 * Standard uncertainties (common practice, no source): a share read in one posture, a mass off a bathroom scale; what
 * dimensions of a sheet usually allow, as limits ±: 0.3 mm of the port, 4 % of the negative chamber, 1.5 % of the
 * positive one, 3 % of the room in the lower legs; a limit is √3 standard uncertainties (JCGM 100:2008, 4.3.7).
 */
export const inputDoubt = {
  share: 0.02,
  mass: 1,
  port: 0.0003 / Math.sqrt(3),
  negative: 0.04 / Math.sqrt(3),
  positive: 0.015 / Math.sqrt(3),
  lower: 0.03 / Math.sqrt(3),
} as const satisfies Record<DoubtOf, number>
/** Half of a normal 90 % band in standard uncertainties. */
const ninetyPercent = 1.645

/** An air fork's spring; a coil has no pressure. @throws Refusal naming what the sheet lacks */
export function airSpringOf(sheet: Sheet, spacers: number) {
  const spring = springOf(sheet, { spacers })
  if (spring.kind === 'air') return spring
  throw new TypeError(`sheet ${sheet.name} is of a coil; a pressure is worked out for air springs. Choose its rate.`)
}

/** What presses along the fork and across it [N]. */
export function loadOf({ riderMass, frontShare, frontMass, headAngle }: StartInputs): ForkLoad {
  return forkLoad({ riderMass, frontShare, bikeFrontMass: frontMass, headAngle })
}

/** The same question with one input moved by so many of its standard uncertainties. */
function moved(inputs: StartInputs, spring: AirSpring, input: DoubtOf, by: number): number {
  const u = by * inputDoubt[input]
  const asked = {
    ...inputs,
    ...(input === 'share' ? { frontShare: inputs.frontShare + u } : {}),
    ...(input === 'mass' ? { riderMass: inputs.riderMass + u } : {}),
  }
  const port = (spring.equalisingStroke ?? 0) + u
  const changed: AirSpring = {
    ...spring,
    ...(input === 'port' ? { equalisingStroke: Math.max(0, port) } : {}),
    ...(input === 'negative' ? { negativeVolume: (spring.negativeVolume ?? 0) * (1 + u) } : {}),
    ...(input === 'positive' ? { positiveVolume: spring.positiveVolume * (1 + u) } : {}),
    ...(input === 'lower' && spring.lower ? { lower: { ...spring.lower, volume: spring.lower.volume * (1 + u) } } : {}),
  }
  const { sag: wanted, ambient } = inputs
  return pressureForSag(changed, { load: loadOf(asked).load, sag: wanted, ambient }).pressure
}

/**
 * Start pressure and its 90 % band: u_p² = Σ (∂p/∂input·u_input)² over the rider's share and mass and the dimensions of the
 * spring, slopes by central differences.
 *
 * @throws Refusal where the sheet lacks a dimension, or no allowed pressure carries the load at that sag
 * @source JCGM 100:2008 (GUM), 5.1.2, uncorrelated inputs
 */
export function startPressure(inputs: StartInputs): StartPressure {
  const spring = airSpringOf(inputs.sheet, inputs.spacers)
  const { load, sideLoad } = loadOf(inputs)
  const { pressure, stroke } = pressureForSag(spring, { load, sag: inputs.sag, ambient: inputs.ambient })
  const { maxPressure: _ceiling, ...free } = spring
  const parts = doubtful.map((input) => {
    const moves = Math.abs(moved(inputs, free, input, 1) - moved(inputs, free, input, -1)) / 2
    return { input, moves }
  })
  const total = Math.hypot(...parts.map(({ moves }) => moves))
  const half = ninetyPercent * total
  const doubtOf = parts
    .map((part) => ({ ...part, share: (part.moves / total) ** 2 }))
    .sort((one, other) => other.share - one.share)
  const { lower: _lower, ...bare } = spring
  const process = { ambient: inputs.ambient }
  const lowerForce =
    prepareSpring(spring, pressure, process).force(stroke) - prepareSpring(bare, pressure, process).force(stroke)
  return { pressure, band: [pressure - half, pressure + half], load, sideLoad, stroke, lowerForce, doubtOf }
}

/** What was worked out, or why it could not be: at a light pressure its doubt may reach below nothing. */
export function workedOut(inputs: StartInputs): StartPressure | Refusal {
  try {
    return startPressure(inputs)
  } catch (trouble) {
    if (trouble instanceof Refusal) return trouble
    throw trouble
  }
}

/** Friction of the bushings under the side load, [low, high] [N]; null where the sheet gives no bushings. */
export function bushingFriction({ bushings }: Sheet, sideLoad: number): [number, number] | null {
  return bushings ? sideFriction({ sideLoad, a: bushings.a.value, b: bushings.b.value }).friction : null
}

/** Half of the load's 90 % band, from the same doubt of share and mass [N]. */
export function loadDoubt(inputs: StartInputs): number {
  const { riderMass, frontShare } = inputs
  const { load } = loadOf(inputs)
  const ofShare = loadOf({ ...inputs, frontShare: frontShare + inputDoubt.share }).load - load
  const ofMass = loadOf({ ...inputs, riderMass: riderMass + inputDoubt.mass }).load - load
  return ninetyPercent * Math.hypot(ofShare, ofMass)
}

/** Sag as it was read from both directions [m], in a fork filled to a pressure [Pa gauge]; the wanted one as a share. */
export interface SagRead {
  fromAbove: number
  fromBelow: number
  pressure: number
  spacers: number
  sag: number
  ambient: number
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
export function correctedBySag(sheet: Sheet, read: SagRead): MeasuredSag {
  const { fromAbove, fromBelow, ambient } = read
  const spring = airSpringOf(sheet, read.spacers)
  const mean = (fromAbove + fromBelow) / 2
  const state = prepareSpring(spring, read.pressure, { ambient }).at(mean)
  const friction = (Math.abs(fromAbove - fromBelow) / 2) * state.rate
  const { pressure } = pressureForSag(spring, { load: state.force, sag: read.sag, ambient })
  return { mean, fraction: mean / spring.stroke, friction, load: state.force, pressure }
}

/** What is to be known of a pump: its hose with gauge [m³], how much it reads too high [-]. */
export type PumpError = Pick<Extract<Instrument, { kind: 'pump' }>, 'hoseVolume' | 'offset'>

/** Hose with gauge of a pump that nobody measured [m³]: 3 to 8 ml are usual (common practice, no source). */
export const usualHose = 5e-6

/** What a pump's gauge shows when it is put on at full length, its own error in it [Pa]. */
export function pumpShows(sheet: Sheet, spacers: number, pressure: number, pump: PumpError) {
  const spring = airSpringOf(sheet, spacers)
  const volume = spring.positiveVolume - spacers * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
  return pumpReading({ volume, hoseVolume: pump.hoseVolume, pressure }).reading * (1 + pump.offset)
}

/** What was in the chamber before a pump was put on that then showed this [Pa gauge]. */
export function beforePump(sheet: Sheet, spacers: number, shown: number, pump: PumpError) {
  const spring = airSpringOf(sheet, spacers)
  const volume = spring.positiveVolume - spacers * (spring.spacerVolume ?? 0) - (spring.chamberOil ?? 0)
  return pumpReading({ volume, hoseVolume: pump.hoseVolume, reading: shown / (1 + pump.offset) }).pressure
}

/**
 * How much the rider's pump reads too high against ours: ours is taken off, which leaves its true reading in the chamber;
 * theirs is put on right after and takes its own hose's share.
 *
 * @param read  what both gauges showed [Pa]
 * @returns offset of theirs [-]
 */
export function offsetAgainst(sheet: Sheet, spacers: number, read: { ours: number; theirs: number }, pump: PumpError) {
  const left = read.ours / (1 + pump.offset)
  return read.theirs / pumpShows(sheet, spacers, left, { hoseVolume: usualHose, offset: 0 }) - 1
}
