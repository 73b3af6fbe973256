import { type Dimension, fromSI, type MeasureName, measures } from './measures.ts'

/** What a field holds: its dimension, how an unreadable value is explained, and the measure messages use. */
export interface Kind {
  readonly dimension: Dimension
  readonly plain: MeasureName | null
  /** How to write one, quoted in messages. */
  readonly example: string
  /** The SI unit as `units` says it. */
  readonly unit: string
}

export const kinds = {
  length: { dimension: 'length', plain: 'mm', example: '"120 mm"', unit: 'm' },
  altitude: { dimension: 'length', plain: 'm', example: '"1200 m"', unit: 'm' },
  volume: { dimension: 'volume', plain: 'ml', example: '"20 ml"', unit: 'm³' },
  mass: { dimension: 'mass', plain: 'kg', example: '"84 kg"', unit: 'kg' },
  force: { dimension: 'force', plain: 'N', example: '"350 N"', unit: 'N' },
  pressure: { dimension: 'pressure', plain: 'bar', example: '"80 psi"', unit: 'Pa' },
  absolutePressure: { dimension: 'pressure', plain: 'hPa', example: '"1013 hPa"', unit: 'Pa' },
  stress: { dimension: 'pressure', plain: 'MPa', example: '"640 MPa"', unit: 'Pa' },
  temperature: { dimension: 'temperature', plain: '°C', example: '"20 °C"', unit: 'K' },
  temperatureDifference: { dimension: 'temperature-difference', plain: 'K difference', example: '"10 K"', unit: 'K' },
  angle: { dimension: 'angle', plain: '°', example: '"65°"', unit: '°' },
  duration: { dimension: 'duration', plain: 's', example: '"24 h"', unit: 's' },
  rate: { dimension: 'rate', plain: 'N/mm', example: '"410 lb/in"', unit: 'N/m' },
  torque: { dimension: 'torque', plain: 'N·m', example: '"5 N·m"', unit: 'N·m' },
  viscosity: { dimension: 'viscosity', plain: 'mm²/s', example: '"15 mm²/s"', unit: 'm²/s' },
  damping: { dimension: 'damping', plain: 'N·s/m', example: '"300 N·s/m"', unit: 'N·s/m' },
  energy: { dimension: 'energy', plain: 'J', example: '"20 J"', unit: 'J' },
  flow: { dimension: 'flow', plain: 'cm³/min', example: '"1 cm³/min"', unit: 'm³/s' },
  speed: { dimension: 'speed', plain: 'km/h', example: '"1 km/h"', unit: 'm/s' },
  turns: { dimension: 'turns', plain: 'turns', example: '"1/2 turn"', unit: 'turns' },
  fraction: { dimension: 'number', plain: '%', example: '"30 %" or 0.3', unit: '1' },
  number: { dimension: 'number', plain: null, example: '2', unit: '1' },
} as const satisfies Record<string, Kind>

export type KindName = keyof typeof kinds

/** Four significant digits, no exponent for everyday sizes. */
function rounded(value: number): string {
  return String(Number(value.toPrecision(4)))
}

/**
 * A value as a message shows it: in one plain measure of its kind, four digits.
 *
 * @param value  SI
 * @param kind   what it is
 * @returns e.g. `40 mm`
 * @example figure(0.04, 'length') // "40 mm"
 */
export function figure(value: number, kind: KindName): string {
  const { plain } = kinds[kind]
  if (!Number.isFinite(value)) return String(value)
  if (plain === null) return rounded(value)
  const label = measures[plain].label
  return `${rounded(fromSI(value, plain))}${label === '°' ? '' : ' '}${label}`
}
