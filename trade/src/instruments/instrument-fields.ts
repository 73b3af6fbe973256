/** What is known of each kind of instrument, and what it may be. */
import { figure, type KindName, toSI } from '@legwork/engine'
import type { UsualRange } from '../limits/usual.ts'
import type { Instrument, PlainInstrumentKind } from '../registers.ts'
import { FieldCheck, type FieldProblem } from '../sheets/field-check.ts'

export type InstrumentKind = Instrument['kind']
export const instrumentKinds: readonly InstrumentKind[] = [
  'pump',
  'gauge',
  'wrench',
  'scale',
  'thermometer',
  'measuring-cylinder',
  'caliper',
  'tape',
  'other',
]

export type InstrumentFieldName =
  | 'hoseVolume'
  | 'offset'
  | 'resolution'
  | 'low'
  | 'high'
  | 'class'
  | 'length'
  | 'adapterLength'

export interface InstrumentField {
  name: InstrumentFieldName
  kind: KindName
  /** [SI] */
  from: number
  to: number
  /** Common practice, no source; null where there is none. */
  usual: UsualRange | null
}

const field = (
  name: InstrumentFieldName,
  kind: KindName,
  from: number,
  to: number,
  usual: UsualRange | null = null,
) => ({
  name,
  kind,
  from,
  to,
  usual,
})

const hoseGauge: readonly InstrumentField[] = [
  field('hoseVolume', 'volume', 0, 50e-6, { low: 3e-6, high: 8e-6, measure: 'ml', per: 1e6 }),
  field('offset', 'fraction', -0.5, 0.5, { low: -0.08, high: 0.08, measure: '%', per: 100 }),
  field('resolution', 'pressure', 1, 1e5, {
    low: toSI(0.1, 'psi'),
    high: toSI(2, 'psi'),
    measure: 'psi',
    per: 1 / toSI(1, 'psi'),
  }),
]
const wrench: readonly InstrumentField[] = [
  field('low', 'torque', 0, 500),
  field('high', 'torque', 0.1, 500),
  // ISO 6789-1:2017: 4 % or 6 % by type and range, from memory.
  field('class', 'fraction', 0.001, 0.5, { low: 0.04, high: 0.06, measure: '%', per: 100 }),
  field('length', 'length', 0.01, 2),
  field('adapterLength', 'length', 0, 1),
]
const step: Readonly<Record<PlainInstrumentKind, readonly InstrumentField[]>> = {
  scale: [field('resolution', 'force', 1e-3, 100)],
  thermometer: [field('resolution', 'temperatureDifference', 1e-3, 10)],
  'measuring-cylinder': [field('resolution', 'volume', 1e-9, 1e-4)],
  caliper: [field('resolution', 'length', 1e-6, 1e-3)],
  tape: [field('resolution', 'length', 1e-4, 1e-2)],
  other: [field('resolution', 'number', 0, 1e6)],
}

/** The fields of a kind, in the order in which they are asked. */
export function instrumentFields(kind: InstrumentKind): readonly InstrumentField[] {
  if (kind === 'pump' || kind === 'gauge') return hoseGauge
  return kind === 'wrench' ? wrench : step[kind]
}

/**
 * What is wrong with an instrument; nothing where it may be kept.
 *
 * @example checkInstrument({ kind: 'tape', name: '', resolution: 0.001 })[0]?.field // 'name'
 */
export function checkInstrument(found: {
  kind: InstrumentKind
  name: string
  [field: string]: unknown
}): readonly FieldProblem[] {
  const check = new FieldCheck('instrument')
  check.text(found.name, 'name')
  for (const { name, kind, from, to } of instrumentFields(found.kind)) check.number(found[name], name, from, to, kind)
  const { low, high } = found
  if (typeof low === 'number' && typeof high === 'number' && low >= high)
    check.refuse('high', 'range-order', high, `more than the smallest torque, ${figure(low, 'torque')}`)
  return check.problems
}
