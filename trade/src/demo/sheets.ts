/** Sheets of the demo units: the engine's dimensions with a source on every value. All invented. */
import { toSI } from '@legwork/engine'
import reference from '@legwork/engine/reference/demo-units.json' with { type: 'json' }
import type { Id } from '../journal/entry.ts'
import type { LegSheet, Sheet, Source, SourcedNumber } from '../sheets/sheet.ts'
import type { DemoUnit } from './units.ts'

interface Dimensions {
  unit: string
  load: number
  sag: number
  pressure?: number
  headAngle?: number
  bikeFrontMass?: number
  leverage?: number
  rearSprungMass?: number
  spring: Record<string, unknown>
}

// The file is data of one shape; TypeScript infers a union of sixteen object types from it.
const dimensions = reference.units as unknown as readonly Dimensions[]

/** The dimensions behind a demo unit. @throws when there is no such unit */
export function demoDimensions(key: string): Dimensions {
  const found = dimensions.find((row) => row.unit === key)
  if (!found) throw new Error(`no demo unit ${key}`)
  return found
}

const springFields = [
  'bore',
  'shaft',
  'positiveVolume',
  'negativeVolume',
  'equalisingStroke',
  'spacerVolume',
  'rate',
  'preload',
] as const

const torquesOf = ({ body }: DemoUnit, sourced: (value: number) => SourcedNumber): NonNullable<Sheet['torques']> => ({
  axle: sourced(12),
  caliper: sourced(8),
  ...(body === 'dual-crown' ? { lowerClamp: sourced(7), upperClamp: sourced(6) } : {}),
})

/** One sheet for a demo unit, every value marked as a demonstration. */
export function demoSheet(unit: DemoUnit, id: Id): Sheet {
  const source: Source = {
    kind: 'makers-sheet',
    document: `${unit.sheet.name} (demonstration, invented)`,
    revision: unit.sheet.revision,
    page: '4',
    person: null,
    at: null,
    instrument: null,
  }
  const sourced = (value: number): SourcedNumber => ({ value, source })
  const optional = (value: unknown): SourcedNumber | null => (typeof value === 'number' ? sourced(value) : null)
  const { spring } = demoDimensions(unit.key)
  const lower = spring.lower as { volume: number; stanchion: number; rod: number } | undefined // shape of the file
  const gas = spring.damperGas as { pressure: number; volume: number; rod: number } | undefined // shape of the file
  const fields: { [field: string]: SourcedNumber } = {}
  for (const field of springFields) {
    const value = optional(spring[field])
    if (value) fields[field] = value
  }
  if (lower) fields.lowerRod = sourced(lower.rod)
  if (gas) {
    fields.damperGasPressure = sourced(gas.pressure)
    fields.damperGasVolume = sourced(gas.volume)
    fields.damperGasRod = sourced(gas.rod)
  }
  const { chassis } = unit
  if (chassis) fields.capTorque = sourced(unit.kind === 'fork-coil' ? 20 : 25)
  const leg = (index: 0 | 1): LegSheet | null =>
    chassis && {
      role: index === 0 ? 'spring' : 'damper',
      fixing: index === 0 ? 'nut-on-shaft' : 'bolt-behind-knob',
      sources: { role: source, fixing: source },
      bathOil: sourced(chassis.bathOil[index]),
      bathOilViscosity: sourced(46e-6),
      washer: { value: index === 0 ? 'crush washer 8 mm' : 'crush washer 10 mm', source },
      footTorque: sourced(chassis.footTorque[index]),
    }
  const [left, right] = [leg(0), leg(1)]
  return {
    id,
    name: unit.sheet.name,
    revision: unit.sheet.revision,
    generic: false,
    kind: unit.kind,
    body: unit.body,
    damper: unit.damper,
    stanchion: optional(lower?.stanchion),
    stroke: sourced(spring.stroke as number), // every unit of the file has it
    spring: fields,
    springKind: spring.kind === 'coil' ? 'coil' : 'air',
    spacers: optional(spring.spacers),
    lowerVolume: optional(lower?.volume),
    maxPressure: optional(chassis?.maxPressure ?? (unit.kind === 'shock-air' ? toSI(300, 'psi') : null)),
    freeLength: optional(chassis?.freeLength),
    bushings: chassis ? { a: sourced(0.23), b: sourced(0.115) } : null,
    clicks: { rebound: sourced(unit.clicks.rebound), compression: optional(unit.clicks.compression) },
    legs: left && right ? { left, right } : null,
    ...(chassis ? { torques: torquesOf(unit, sourced) } : {}),
    limits: chassis
      ? {
          clearance: { watch: 0.12e-3, fail: 0.2e-3, source },
          friction: { watch: 25, fail: 45, source },
          'short-of-length': { watch: 0.002, fail: 0.005, source },
        }
      : {},
  }
}
