/** A quantity as a person reads it: number and measure apart, in the measures they chose. */
import { formatQuantity, type KindName, type MeasureName, measures as table } from '@legwork/engine'
import type { Measures, Reading } from '@legwork/trade'

export interface Shown {
  number: string
  /** Empty for a bare number. */
  unit: string
}

const fixed: Partial<Record<KindName, MeasureName>> = {
  altitude: 'm',
  volume: 'ml',
  mass: 'kg',
  force: 'N',
  absolutePressure: 'hPa',
  stress: 'MPa',
  temperatureDifference: 'K difference',
  angle: '°',
  duration: 'min',
  rate: 'N/mm',
  viscosity: 'mm²/s',
  damping: 'N·s/m',
  energy: 'J',
  flow: 'cm³/min',
  turns: 'turns',
  fraction: '%',
}

/**
 * The measure a person reads and writes a kind of quantity in; null for a bare number.
 *
 * @example measureFor('pressure', { pressure: 'bar', torque: 'N·m', temperature: '°C', length: 'mm' }) // 'bar'
 */
export function measureFor(kind: KindName, person: Measures): MeasureName | null {
  if (kind === 'pressure') return person.pressure
  if (kind === 'torque') return person.torque
  if (kind === 'temperature') return person.temperature
  if (kind === 'length') return person.length
  return fixed[kind] ?? null
}

const kindOfReading: Record<Reading['measure'], KindName> = {
  m: 'length',
  Pa: 'pressure',
  'm³': 'volume',
  N: 'force',
  s: 'duration',
  N·m: 'torque',
  K: 'temperature',
  clicks: 'number',
  count: 'number',
  'm²/s': 'viscosity',
  '1': 'number',
}

/** What kind of quantity a reading is. */
export const kindOf = (measure: Reading['measure']): KindName => kindOfReading[measure]

/** Thin spaces between thousands from 10 000 on. */
function grouped(number: string): string {
  const [whole = '', ...rest] = number.split('.')
  const digits = whole.replace('−', '')
  if (digits.length < 5) return number
  return [whole.replace(/\B(?=(\d{3})+$)/g, '\u2009'), ...rest].join('.')
}

/**
 * Number and unit of an SI value.
 *
 * @param value    SI
 * @param measure  null for a bare number
 * @param digits   after the point, instead of the measure's own
 * @returns the true minus, thin spaces from 10 000; an en dash where there is no number
 * @example shown(88 * 6894.757, 'psi') // { number: '88', unit: 'psi' }
 */
export function shown(value: number, measure: MeasureName | null, digits?: number): Shown {
  if (measure === null) {
    if (!Number.isFinite(value)) return { number: '–', unit: '' }
    const number = digits === undefined ? String(Number(value.toPrecision(4))) : value.toFixed(digits)
    return { number: grouped(number.replace('-', '−')), unit: '' }
  }
  const unit = table[measure].label
  const written = formatQuantity(value, measure, digits === undefined ? {} : { digits })
  return { number: grouped(written.slice(0, written.length - unit.length).trim()), unit }
}
