/** Every quantity of a sheet: what kind it is and what it may be, wide enough for any unit, narrow enough for a slip of a power of ten. */
import type { KindName } from '@legwork/engine'

export interface SheetQuantity {
  kind: KindName
  /** [SI] */
  low: number
  high: number
  whole?: true
}

const of = (kind: KindName, low: number, high: number): SheetQuantity => ({ kind, low, high })

/** In the order in which they are read and shown; `legs` stands for either leg. */
export const sheetQuantities: Readonly<Record<string, SheetQuantity>> = {
  stanchion: of('length', 0.02, 0.06),
  stroke: of('length', 0.02, 0.3),
  freeLength: of('length', 0.02, 0.4),
  maxPressure: of('pressure', 2e5, 4e6),
  'spring.bore': of('length', 0.01, 0.08),
  'spring.shaft': of('length', 0.004, 0.06),
  'spring.positiveShaft': of('length', 0, 0.06),
  'spring.positiveVolume': of('volume', 5e-6, 2e-3),
  'spring.negativeVolume': of('volume', 1e-6, 1e-3),
  'spring.equalisingStroke': of('length', 0, 0.05),
  'spring.spacerVolume': of('volume', 1e-6, 1e-4),
  'spring.chamberOil': of('volume', 0, 5e-5),
  'spring.rate': of('rate', 1_000, 300_000),
  'spring.preload': of('length', 0, 0.05),
  'spring.lowerRod': of('length', 0, 0.03),
  'spring.damperGasPressure': of('pressure', 1e5, 4e6),
  'spring.damperGasVolume': of('volume', 1e-6, 2e-4),
  'spring.damperGasRod': of('length', 0.004, 0.03),
  'spring.capTorque': of('torque', 1, 60),
  spacers: { kind: 'number', low: 0, high: 20, whole: true },
  lowerVolume: of('volume', 1e-5, 2e-3),
  'bushings.a': of('length', 0.01, 0.6),
  'bushings.b': of('length', 0.01, 0.6),
  'clicks.rebound': of('number', 1, 60),
  'clicks.compression': of('number', 1, 60),
  'torques.axle': of('torque', 1, 60),
  'torques.caliper': of('torque', 1, 30),
  'torques.lowerClamp': of('torque', 1, 30),
  'torques.upperClamp': of('torque', 1, 30),
  'legs.bathOil': of('volume', 0, 5e-4),
  'legs.bathOilViscosity': of('viscosity', 1e-6, 1e-3),
  'legs.footTorque': of('torque', 0.5, 30),
}

/** Names of the spring's own fields. */
export const springFieldNames: readonly string[] = Object.keys(sheetQuantities)
  .filter((path) => path.startsWith('spring.'))
  .map((path) => path.slice('spring.'.length))

/**
 * What stands at a place of a sheet; null where no quantity stands there.
 *
 * @example quantityAt('legs.left.bathOil')?.kind // 'volume'
 */
export function quantityAt(path: string): SheetQuantity | null {
  return sheetQuantities[path.replace(/^legs\.(left|right)\./, 'legs.')] ?? null
}
