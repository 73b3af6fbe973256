/** The spring as it comes in: an air spring or a coil, closed: an unknown field is refused. */
import type { Conditions, Process, Spring } from '@legwork/engine'
import { z } from 'zod'
import { count, quantity } from './fields.ts'

const length = quantity('length')
const volume = quantity('volume')
const pressure = quantity('pressure')
const rate = quantity('rate')

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
  closedStroke: length.optional(),
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

const air = z.strictObject({
  kind: z.literal('air'),
  bore: length,
  shaft: length,
  positiveVolume: volume,
  negativeVolume: volume.optional(),
  equalisingStroke: length.optional(),
  positiveShaft: length.optional(),
  spacerVolume: volume.optional(),
  spacers: count.optional(),
  chamberOil: volume.optional(),
  negative: z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('port') }),
      z.strictObject({ kind: z.literal('valve'), pressure }),
      z.strictObject({ kind: z.literal('coil'), rate, length }),
      z.strictObject({ kind: z.literal('none') }),
    ])
    .optional(),
  second: z.strictObject({ volume, pressure }).optional(),
  maxPressure: pressure.optional(),
  ...around,
})
const coil = z.strictObject({ kind: z.literal('coil'), rate, preload: length.optional(), ...around })

/** A field left out is not there at all: the engine tells left out from `undefined`. */
export function withoutGaps<T>(value: unknown): T {
  if (Array.isArray(value)) return value.map((one) => withoutGaps<unknown>(one)) as T // the same shape, gaps apart
  if (value === null || typeof value !== 'object') return value as T // the same value
  const kept = Object.entries(value).filter(([, inner]) => inner !== undefined)
  return Object.fromEntries(kept.map(([key, inner]) => [key, withoutGaps<unknown>(inner)])) as T // the same shape
}

export const springField = z
  .discriminatedUnion('kind', [air, coil])
  .transform((spring): Spring => withoutGaps<Spring>(spring))
export const airSpringField = air.transform((spring) => withoutGaps<Extract<Spring, { kind: 'air' }>>(spring))

export const conditionFields = {
  pressure: pressure.optional(),
  pressureAt: length.optional(),
  ambient: quantity('absolutePressure').optional(),
} satisfies Record<keyof Conditions, unknown>

export const processFields = {
  ...conditionFields,
  exponent: count.optional(),
  startStroke: length.optional(),
} satisfies Record<keyof Process, unknown>
