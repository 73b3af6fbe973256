/** Generic sheets: assumed dimensions to begin with where the maker's sheet is not here yet. */
import reference from '@legwork/engine/reference/demo-units.json' with { type: 'json' }
import { demoUnits } from '../demo/units.ts'
import type { Id } from '../journal/entry.ts'
import { say } from '../words/words.ts'
import { assumed } from './assumed.ts'
import type { Body, DamperKind, LegRole, LegSheet, Sheet, SourcedNumber, UnitKind } from './sheet.ts'

/** A size of which assumed dimensions are here. */
export interface GenericSize {
  key: string
  kind: UnitKind
  body: Body
  damper: DamperKind
  /** [m]; null for a shock. */
  stanchion: number | null
  /** [m] */
  stroke: number
}

interface Lower {
  volume: number
  stanchion: number
  rod: number
}
interface Gas {
  pressure: number
  volume: number
  rod: number
}
type SpringRow = Record<string, unknown> & { stroke: number; lower?: Lower; damperGas?: Gas }

// The file is data of one shape; TypeScript infers a union of sixteen object types from it.
const rows = reference.units as unknown as readonly { unit: string; spring: SpringRow }[]

function rowOf(key: string): SpringRow {
  const found = rows.find((row) => row.unit === key)
  if (!found) throw new Error(`no dimensions of ${key}`)
  return found.spring
}

export const genericSizes: readonly GenericSize[] = demoUnits.map(({ key, kind, body, damper }) => {
  const { stroke, lower } = rowOf(key)
  return { key, kind, body, damper, stroke, stanchion: lower?.stanchion ?? null }
})

/** Half of the smallest step between two sizes of stanchion, with a caliper's doubt [m]. */
const within = 0.0006

/**
 * The sizes that a unit may begin with, the nearest first. Another stanchion is another fork: not offered.
 *
 * @param like  what is known of the unit [m]
 * @example genericSizesFor({ kind: 'fork-air', stanchion: 0.035, stroke: 0.15 })[0]?.key // 'U01'
 */
export function genericSizesFor(like: {
  kind: UnitKind
  body?: Body
  stanchion: number | null
  stroke: number | null
}): readonly GenericSize[] {
  const off = (size: GenericSize): number => (like.stroke === null ? 0 : Math.abs(size.stroke - like.stroke))
  return genericSizes
    .filter((size) => size.kind === like.kind && (like.body === undefined || size.body === like.body))
    .filter(
      ({ stanchion }) =>
        like.stanchion === null || stanchion === null || Math.abs(stanchion - like.stanchion) <= within,
    )
    .sort((one, other) => off(one) - off(other))
}

const dimensions = [
  'bore',
  'shaft',
  'positiveVolume',
  'negativeVolume',
  'equalisingStroke',
  'spacerVolume',
  'rate',
  'preload',
] as const

/** A leg of which nothing but its role is known: everything else is the maker's to say. */
export const emptyLeg = (role: LegRole): LegSheet => ({
  role,
  fixing: null,
  bathOil: null,
  bathOilViscosity: null,
  washer: null,
  footTorque: null,
})

function springFields(row: SpringRow, stroke: number): Sheet['spring'] {
  const fields: { [field: string]: SourcedNumber } = {}
  for (const name of dimensions) {
    const value = row[name]
    if (typeof value === 'number') fields[name] = { value, source: assumed }
  }
  const { bore, positiveVolume } = fields
  // Another travel of the same fork: the room left at its end stays.
  if (bore && positiveVolume)
    fields.positiveVolume = {
      value: positiveVolume.value + (Math.PI / 4) * bore.value ** 2 * (stroke - row.stroke),
      source: assumed,
    }
  if (row.lower) fields.lowerRod = { value: row.lower.rod, source: assumed }
  if (row.damperGas) {
    fields.damperGasPressure = { value: row.damperGas.pressure, source: assumed }
    fields.damperGasVolume = { value: row.damperGas.volume, source: assumed }
    fields.damperGasRod = { value: row.damperGas.rod, source: assumed }
  }
  return fields
}

export interface GenericWishes {
  id: Id
  /** What was measured instead of assumed. */
  stanchion?: SourcedNumber | null
  stroke?: SourcedNumber
  damper?: DamperKind
  /** Which leg holds the spring: never assumed. Null for a shock. */
  roles: { left: LegRole; right: LegRole } | null
}

/**
 * A sheet of assumed dimensions: enough for a first estimate of pressure and sag. Oil, washers, torques, maximum pressure,
 * free length, spacers, clicks and limits are the maker's to say and stay empty.
 *
 * @throws RangeError for a fork without the roles of its legs
 * @example genericSheet(size, { id, roles: { left: 'spring', right: 'damper' } }).generic // true
 */
export function genericSheet(size: GenericSize, wishes: GenericWishes): Sheet {
  const fork = size.kind.startsWith('fork')
  if (fork && !wishes.roles) throw new RangeError('a fork has a left and a right leg: say which holds the spring')
  const row = rowOf(size.key)
  const stroke = wishes.stroke ?? { value: row.stroke, source: assumed }
  const [travel, stanchion] = [Math.round(stroke.value * 1000), Math.round((size.stanchion ?? 0) * 1000)]
  const held = (value: number | undefined): SourcedNumber | null =>
    value === undefined ? null : { value, source: assumed }
  return {
    id: wishes.id,
    name: fork
      ? say(`generic.name.${size.kind === 'fork-coil' ? 'fork-coil' : 'fork-air'}`, { stanchion, travel })
      : say(`generic.name.${size.kind === 'shock-coil' ? 'shock-coil' : 'shock-air'}`, { travel }),
    revision: '0',
    generic: true,
    kind: size.kind,
    body: size.body,
    damper: wishes.damper ?? size.damper,
    stanchion: wishes.stanchion ?? held(row.lower?.stanchion),
    stroke,
    spring: springFields(row, stroke.value),
    springKind: size.kind.endsWith('coil') ? 'coil' : 'air',
    spacers: null,
    lowerVolume: held(row.lower?.volume),
    maxPressure: null,
    freeLength: null,
    bushings: null,
    clicks: { rebound: null, compression: null },
    legs: fork && wishes.roles ? { left: emptyLeg(wishes.roles.left), right: emptyLeg(wishes.roles.right) } : null,
    limits: {},
  }
}
