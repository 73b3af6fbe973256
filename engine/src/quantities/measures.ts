/**
 * The measures people write, with exact factors to SI.
 *
 * @source pound 0.45359237 kg, foot 0.3048 m, standard gravity 9.80665 m/s²: exact by definition (international yard and pound, 1959)
 */
const pound = 0.45359237
const inch = 0.0254
const poundForce = pound * 9.80665

export interface Measure {
  /** What is measured; two measures of one dimension can be turned into each other. */
  readonly dimension: Dimension
  /** SI = number · factor + offset. */
  readonly factor: number
  readonly offset: number
  /** How it is shown. */
  readonly label: string
  /** How people type it, the label included. */
  readonly spellings: readonly string[]
}

export type Dimension =
  | 'length'
  | 'volume'
  | 'mass'
  | 'force'
  | 'pressure'
  | 'temperature'
  | 'temperature-difference'
  | 'angle'
  | 'duration'
  | 'rate'
  | 'torque'
  | 'viscosity'
  | 'damping'
  | 'energy'
  | 'flow'
  | 'speed'
  | 'turns'
  | 'number'

function measure(dimension: Dimension, factor: number, label: string, ...others: string[]): Measure {
  return { dimension, factor, offset: 0, label, spellings: [label, ...others] }
}

export const measures = {
  m: measure('length', 1, 'm'),
  cm: measure('length', 1e-2, 'cm'),
  mm: measure('length', 1e-3, 'mm'),
  µm: measure('length', 1e-6, 'µm', 'μm', 'um'),
  km: measure('length', 1e3, 'km'),
  in: measure('length', inch, 'in', 'inch', '"'),
  ft: measure('length', 0.3048, 'ft'),
  'm³': measure('volume', 1, 'm³', 'm3'),
  l: measure('volume', 1e-3, 'l', 'L'),
  ml: measure('volume', 1e-6, 'ml', 'mL', 'cc', 'cm3', 'cm³'),
  kg: measure('mass', 1, 'kg'),
  g: measure('mass', 1e-3, 'g'),
  lb: measure('mass', pound, 'lb', 'lbs'),
  N: measure('force', 1, 'N'),
  kN: measure('force', 1e3, 'kN'),
  lbf: measure('force', poundForce, 'lbf'),
  Pa: measure('pressure', 1, 'Pa'),
  hPa: measure('pressure', 100, 'hPa', 'mbar'),
  kPa: measure('pressure', 1e3, 'kPa'),
  MPa: measure('pressure', 1e6, 'MPa', 'N/mm²', 'N/mm2'),
  GPa: measure('pressure', 1e9, 'GPa'),
  bar: measure('pressure', 1e5, 'bar'),
  psi: measure('pressure', poundForce / inch ** 2, 'psi'),
  K: measure('temperature', 1, 'K'),
  '°C': { ...measure('temperature', 1, '°C', 'C', 'degC', '℃'), offset: 273.15 },
  '°F': { ...measure('temperature', 5 / 9, '°F', 'F', 'degF', '℉'), offset: 273.15 - 160 / 9 },
  'K difference': measure('temperature-difference', 1, 'K', '°C', 'C', 'degC'),
  '°F difference': measure('temperature-difference', 5 / 9, '°F', 'F', 'degF'),
  '°': measure('angle', 1, '°', 'deg'),
  s: measure('duration', 1, 's'),
  ms: measure('duration', 1e-3, 'ms'),
  min: measure('duration', 60, 'min'),
  h: measure('duration', 3600, 'h'),
  d: measure('duration', 86_400, 'd', 'days', 'day'),
  'N/m': measure('rate', 1, 'N/m'),
  'N/mm': measure('rate', 1e3, 'N/mm'),
  'lb/in': measure('rate', poundForce / inch, 'lb/in', 'lbf/in'),
  N·m: measure('torque', 1, 'N·m', 'N.m', 'Nm', 'N⋅m', 'N m'),
  in·lbf: measure(
    'torque',
    poundForce * inch,
    'in·lbf',
    'in-lb',
    'in-lbf',
    'in·lb',
    'in.lb',
    'in.lbf',
    'in lb',
    'in⋅lbf',
  ),
  ft·lbf: measure(
    'torque',
    poundForce * 0.3048,
    'ft·lbf',
    'ft-lb',
    'ft-lbf',
    'ft·lb',
    'ft.lb',
    'ft.lbf',
    'ft lb',
    'ft⋅lbf',
  ),
  'm²/s': measure('viscosity', 1, 'm²/s', 'm2/s'),
  'mm²/s': measure('viscosity', 1e-6, 'mm²/s', 'mm2/s', 'cSt'),
  'N·s/m': measure('damping', 1, 'N·s/m', 'N.s/m', 'Ns/m'),
  J: measure('energy', 1, 'J'),
  'm³/s': measure('flow', 1, 'm³/s', 'm3/s'),
  'cm³/min': measure('flow', 1e-6 / 60, 'cm³/min', 'cm3/min', 'ml/min'),
  'm/s': measure('speed', 1, 'm/s'),
  'km/h': measure('speed', 1 / 3.6, 'km/h', 'kph'),
  turns: measure('turns', 1, 'turns', 'turn'),
  '%': measure('number', 1e-2, '%'),
} as const satisfies Record<string, Measure>

export type MeasureName = keyof typeof measures

/**
 * A number in a measure, as SI.
 *
 * @param number   in the measure
 * @param measure  a name of the table
 * @returns SI (temperatures [K], angles [°])
 * @source exact definitions, see the table
 * @example toSI(80, 'psi') // 551580.583
 */
export function toSI(number: number, measure: MeasureName): number {
  const { factor, offset } = measures[measure]
  return number * factor + offset
}

/**
 * An SI number in a measure.
 *
 * @param value    SI
 * @param measure  a name of the table
 * @returns the number in that measure
 * @source exact definitions, see the table
 * @example fromSI(551580.583, 'psi') // 80.0000
 */
export function fromSI(value: number, measure: MeasureName): number {
  const { factor, offset } = measures[measure]
  return (value - offset) / factor
}
