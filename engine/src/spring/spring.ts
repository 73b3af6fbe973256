/** What a spring is made of, in SI. Volumes at full extension (x = 0); pressures gauge at x = 0 unless said. */
import type { CubicMetre, Metre, NewtonPerMetre, Pascal } from '../quantities/si.ts'

/** How the negative chamber is fed; a port joins it to the positive chamber at `equalisingStroke`. */
export type Negative =
  | { readonly kind: 'port' }
  /** Filled by a valve of its own; also a blocked port, a trapped or leaking chamber. Gauge at x = 0. */
  | { readonly kind: 'valve'; readonly pressure: Pascal }
  | { readonly kind: 'coil'; readonly rate: NewtonPerMetre; readonly length: Metre }
  | { readonly kind: 'none' }

/** A second positive chamber behind a floating piston; gauge at x = 0 with the piston at rest. */
export interface SecondChamber {
  readonly volume: CubicMetre
  readonly pressure: Pascal
}

/** One lower leg; what it leaves out it takes from `LowerAir`. */
export interface LowerLeg {
  readonly oil: CubicMetre
  readonly volume?: CubicMetre
  readonly rod?: Metre
  readonly stanchion?: Metre
}

/** Air closed in the lower legs. */
export interface LowerAir {
  readonly volume: CubicMetre
  readonly stanchion: Metre
  /** The spring leg's is the air shaft; 0 for an open bath or a cartridge whose bladder backs on to the leg's air. */
  readonly rod: Metre
  /** Absolute; the air around by default. */
  readonly closedAt?: Pascal
  readonly closedStroke?: Metre
  readonly legs: readonly LowerLeg[]
}

/** Pulls back near full length: force −rate·max(0, length − x). */
export interface TopOut {
  readonly rate: NewtonPerMetre
  readonly length: Metre
}

/** Over the last `length` of the stroke: rate·length·(δ/length)^exponent. */
export interface Bumper {
  readonly rate: NewtonPerMetre
  readonly length: Metre
  readonly exponent: number
}

/** Gas behind the damper's oil, pushing its rod out; gauge at x = 0. */
export interface DamperGas {
  readonly pressure: Pascal
  readonly volume: CubicMetre
  readonly rod: Metre
}

interface Around {
  readonly stroke: Metre
  readonly lower?: LowerAir
  readonly topOut?: TopOut
  readonly bumper?: Bumper
  readonly damperGas?: DamperGas
}

export interface AirSpring extends Around {
  readonly kind: 'air'
  readonly bore: Metre
  /** What passes the negative chamber's seal. */
  readonly shaft: Metre
  readonly positiveVolume: CubicMetre
  /** Needed for a port or a valve; not used with `coil` or `none`. */
  readonly negativeVolume?: CubicMetre
  readonly equalisingStroke?: Metre
  /** What stands in the positive chamber. */
  readonly positiveShaft?: Metre
  readonly spacerVolume?: CubicMetre
  readonly spacers?: number
  readonly chamberOil?: CubicMetre
  readonly negative?: Negative
  readonly second?: SecondChamber
  readonly maxPressure?: Pascal
}

export interface CoilSpring extends Around {
  readonly kind: 'coil'
  readonly rate: NewtonPerMetre
  readonly preload?: Metre
}

export type Spring = AirSpring | CoilSpring

/** Where and how a spring is looked at. */
export interface Conditions {
  /** Gauge, as shown at `pressureAt`; a coil needs none. */
  readonly pressure?: Pascal
  /** Stroke at which the gauge showed `pressure`; 0 by default. */
  readonly pressureAt?: Metre
  /** Air around, absolute; 101,325 Pa by default. */
  readonly ambient?: Pascal
}

/** Conditions and how fast the gas is squeezed. */
export interface Process extends Conditions {
  /** 1 slow (default) … 1.4; 1.3 is usual for riding. */
  readonly exponent?: number
  /** Slow to here, fast from here; 0 by default. */
  readonly startStroke?: Metre
}
