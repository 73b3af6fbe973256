/** Springs as the engine takes them: SI, gauge pressures, stroke 0 at full extension. */
export type NegativeSpring =
  | { kind: 'port' }
  | { kind: 'valve'; pressure: number }
  | { kind: 'coil'; rate: number; length: number }
  | { kind: 'none' }

export interface LowerLeg {
  oil: number
  volume?: number
  rod?: number
  stanchion?: number
}
export interface LowerLegs {
  volume: number
  stanchion: number
  rod: number
  closedAt?: number
  closedStroke?: number
  legs: readonly LowerLeg[]
}
interface EndParts {
  stroke: number
  lower?: LowerLegs
  topOut?: { rate: number; length: number }
  bumper?: { rate: number; length: number; exponent: number }
  damperGas?: { pressure: number; volume: number; rod: number }
}
export interface AirSpring extends EndParts {
  kind: 'air'
  bore: number
  shaft: number
  positiveVolume: number
  negativeVolume: number
  equalisingStroke?: number
  positiveShaft?: number
  spacerVolume?: number
  spacers?: number
  chamberOil?: number
  negative?: NegativeSpring
  second?: { volume: number; pressure: number }
  maxPressure?: number
}
export interface CoilSpring extends EndParts {
  kind: 'coil'
  rate: number
  preload?: number
}
export type Spring = AirSpring | CoilSpring
