/** The spring as it comes in: an air spring or a coil, closed: an unknown field is refused. */
import type { Conditions, Process, Spring } from '@legwork/engine'
import { z } from 'zod'
import { count, quantity, taken } from './fields.ts'

const length = quantity('length')
const volume = quantity('volume')
const pressure = quantity('pressure')
const rate = quantity('rate')

/** Air around, absolute. */
export const ambientField = taken(quantity('absolutePressure'), 101_325)

const lowerLeg = z.strictObject({
  oil: volume,
  volume: volume.optional(),
  rod: length.optional(),
  stanchion: length.optional(),
})

/** Air closed in the lower legs. */
export const lowerField = z.strictObject({
  volume,
  stanchion: length,
  rod: length,
  closedAt: quantity('absolutePressure').optional(),
  closedStroke: taken(length, 0),
  legs: z.array(lowerLeg).min(1).max(2),
})

/** Gas behind the damper's oil. */
export const damperGasField = z.strictObject({ pressure, volume, rod: length })

const around = {
  stroke: length,
  lower: lowerField.optional(),
  topOut: z.strictObject({ rate, length }).optional(),
  bumper: z.strictObject({ rate, length, exponent: count }).optional(),
  damperGas: damperGasField.optional(),
}

const negative = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('port') }),
  z.strictObject({ kind: z.literal('valve'), pressure }),
  z.strictObject({ kind: z.literal('coil'), rate, length }),
  z.strictObject({ kind: z.literal('none') }),
])

const air = z.strictObject({
  kind: z.literal('air'),
  bore: length,
  shaft: length,
  positiveVolume: volume,
  negativeVolume: volume.optional(),
  equalisingStroke: taken(length, 0),
  positiveShaft: taken(length, 0),
  spacerVolume: volume.optional(),
  spacers: taken(count, 0),
  chamberOil: taken(volume, 0),
  negative: taken(negative, { kind: 'port' }),
  second: z.strictObject({ volume, pressure }).optional(),
  maxPressure: pressure.optional(),
  ...around,
})
const coil = z.strictObject({ kind: z.literal('coil'), rate, preload: taken(length, 0), ...around })

function hasGap(value: unknown): boolean {
  if (value === undefined) return true
  if (value === null || typeof value !== 'object') return false
  if (Array.isArray(value)) return value.some(hasGap)
  for (const key in value) if (hasGap(Reflect.get(value, key))) return true
  return false
}

/** A field left out is not there at all: the engine tells left out from `undefined`. Without a gap it is the value itself. */
export function withoutGaps<T>(value: unknown): T {
  if (!hasGap(value)) return value as T // the same value
  if (Array.isArray(value)) return value.map((one) => withoutGaps<unknown>(one)) as T // the same shape, gaps apart
  if (value === null || typeof value !== 'object') return value as T // a gap by itself
  const kept = Object.entries(value).filter(([, inner]) => inner !== undefined)
  return Object.fromEntries(kept.map(([key, inner]) => [key, withoutGaps<unknown>(inner)])) as T // the same shape
}

export const springField = z
  .discriminatedUnion('kind', [air, coil])
  .transform((spring): Spring => withoutGaps<Spring>(spring))
export const airSpringField = air.transform((spring) => withoutGaps<Extract<Spring, { kind: 'air' }>>(spring))

export const conditionFields = {
  pressure: pressure.optional(),
  pressureAt: taken(length, 0),
  ambient: ambientField,
} satisfies Record<keyof Conditions, unknown>

export const processFields = {
  ...conditionFields,
  exponent: taken(count, 1),
  startStroke: taken(length, 0),
} satisfies Record<keyof Process, unknown>
